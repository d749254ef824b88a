import { type CheckedHead, checkHead, type Fault, type Head } from "../../src/index.ts";
import { headLine } from "../../src/words/index.ts";
import type { Desk, View } from "./desk.ts";
import { el, fill } from "./el.ts";
import { headForm } from "./head-form.ts";
import { fingerprint } from "./heads.ts";
import { button, choice, field } from "./pieces.ts";

/** Chooses the head that answers, or describes another. */
export function headView(desk: Desk, taken: () => void): View {
  const node = el("div", {});

  function show() {
    const { head } = desk.head();
    const heads = desk.heads();
    const chosen = choice(
      heads.map((each) => [fingerprint(each), headLine(each)]),
      fingerprint(head),
      () => take(heads.find((each) => fingerprint(each) === chosen.value) ?? head),
    );
    fill(node, el("h2", {}, "THE HEAD THAT ANSWERS"), field("Head", chosen), opener(take), editor(head, take));
  }

  function take(head: Head) {
    desk.take(head);
    taken();
    show();
  }

  return { node, show };
}

/** Opens a head file, one that was saved here or written by hand, and answers with its head. */
function opener(take: (head: Head) => void): HTMLElement {
  const refused = el("div", { class: "refused", role: "alert" });
  const file = el("input", { type: "file", accept: ".json,application/json", onchange: open });

  async function open() {
    const text = await file.files?.[0]?.text();
    if (text === undefined) return;
    const read = headIn(text);
    if (read.ok) take(read.head);
    else fill(refused, faultLines(read.faults));
    // So that the same file can be chosen again once it is mended.
    file.value = "";
  }

  return el("div", {}, field("Open a head file", file), refused);
}

function faultLines(faults: readonly Fault[]): readonly HTMLElement[] {
  return faults.map(({ place, problem }) => el("p", {}, place === "" ? problem : `${place}: ${problem}`));
}

function headIn(text: string): CheckedHead {
  try {
    return checkHead(JSON.parse(text));
  } catch {
    return { ok: false, faults: [{ code: "unreadable", place: "", problem: "this is no head file, which is JSON" }] };
  }
}

/** The description of a head to edit, its faults at their places; a head without faults can be taken and saved. */
function editor(head: Head, take: (head: Head) => void): HTMLElement {
  const form = headForm(head, check);
  const elsewhere = el("div", { class: "refused" });
  const use = button("Answer with this head, and keep it", () => withHead(take), "main");
  const save = button("Save it as a file", () => withHead(saveFile));

  function check(): boolean {
    const checked = checkHead(form.spec());
    const faults: readonly Fault[] = checked.ok ? [] : checked.faults;
    fill(elsewhere, faultLines(form.tell(faults)));
    use.disabled = !checked.ok;
    save.disabled = !checked.ok;
    return checked.ok;
  }

  function withHead(act: (head: Head) => void) {
    const checked = checkHead(form.spec());
    if (checked.ok) act(checked.head);
  }

  check();
  return el("div", {}, form.node, elsewhere, el("p", { class: "row" }, use, save));
}

function saveFile(head: Head): void {
  const url = URL.createObjectURL(new Blob([`${JSON.stringify(head, null, 2)}\n`], { type: "application/json" }));
  el("a", { href: url, download: `${head.id}.json` }).click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}
