import { InputError, type Way } from "../../src/index.ts";
import { type Figure, type Item, wayTitle } from "../../src/words/index.ts";
import { type Child, el, fill } from "./el.ts";

/** Terms with what is said of them; an item without a term goes on with the one before. */
export function itemList(items: readonly Item[]): HTMLElement {
  const list = el("dl", { class: "items" });
  for (const { term, text } of items) {
    if (term !== "") list.append(el("dt", {}, term));
    list.append(el("dd", {}, text));
  }
  return list;
}

/** What the hand sets, in figures to be read from the machine. */
export function tiles(figures: readonly Figure[]): HTMLElement {
  return el(
    "ul",
    { class: "tiles" },
    figures.map(({ head, figure, under }) =>
      el(
        "li",
        { class: figure.length > 5 ? "long" : "" },
        el("span", { class: "over" }, head, " "),
        el("b", {}, figure),
        el("span", { class: "under" }, " ", under),
      ),
    ),
  );
}

/** What kind of way it is, and whether it is exact, so that a near one can never be taken for it. */
export function kindLine(way: Way): HTMLElement {
  const title = wayTitle(way);
  return way.setting.exact
    ? el("p", { class: "kind" }, `${title}: exact`)
    : el("p", { class: "kind not" }, `NEAR ONLY, NOT EXACT: ${title}`);
}

/** A part with a heading of its own. */
export function part(title: string, ...children: readonly Child[]): HTMLElement {
  return el("section", {}, el("h3", {}, title), children);
}

/** What is seldom looked at, behind its name. */
export function disclosure(title: string, ...children: readonly Child[]): HTMLDetailsElement {
  return el("details", {}, el("summary", {}, title), children);
}

let fields = 0;

/** A field with its label above it, and what is said of it below. */
export function field<Control extends HTMLElement>(label: string, control: Control, note: Child = null): HTMLElement {
  fields += 1;
  control.id = `field-${fields}`;
  return el("div", { class: "field" }, el("label", { for: control.id }, label), control, note);
}

/** A choice among a few words. */
export function choice(
  options: readonly (readonly [value: string, words: string])[],
  chosen: string,
  onchange: () => void,
): HTMLSelectElement {
  const select = el(
    "select",
    { onchange },
    options.map(([value, words]) => el("option", { value }, words)),
  );
  select.value = chosen;
  return select;
}

/** A button that does something. */
export function button(words: Child, onclick: () => void, kind = ""): HTMLButtonElement {
  return el("button", { type: "button", class: kind, onclick }, words);
}

/** A form that does one thing; what is wrong with what was typed is said below it. */
export function form(words: string, act: () => void, ...children: readonly Child[]): HTMLFormElement {
  const refused = el("p", { class: "refused", role: "alert" });
  return el(
    "form",
    {
      onsubmit: (event) => {
        event.preventDefault();
        fill(refused);
        try {
          act();
        } catch (error) {
          fill(refused, refusalOf(error));
        }
      },
    },
    children,
    el("button", {}, words),
    refused,
  );
}

/** What is wrong with what was given, in its sentence; any other error is our own fault and goes on. */
export function refusalOf(error: unknown): string {
  if (error instanceof InputError) return error.message;
  throw error;
}
