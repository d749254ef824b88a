import "./older-engines.ts";
import { defineHead } from "../../src/index.ts";
import { headLine } from "../../src/words/index.ts";
import { askView } from "./ask-view.ts";
import { deskFor, type View } from "./desk.ts";
import { el, fill } from "./el.ts";
import { headView } from "./head-view.ts";
import { jobView } from "./job-view.ts";
import { repairView } from "./repair-view.ts";
import { staysAwake } from "./wake.ts";

/** What the maker of the page filled in. */
interface Filled {
  readonly head: Parameters<typeof defineHead>[0];
  readonly version: string;
  readonly digest: string;
}

const { head, version, digest } = JSON.parse(document.getElementById("filled")?.textContent ?? "") as Filled;
const desk = deskFor(defineHead(head));
const views: Readonly<Record<string, { readonly words: string; readonly view: View }>> = {
  ask: { words: "Ask", view: askView(desk) },
  job: { words: "Job", view: jobView(desk) },
  repair: { words: "Repair", view: repairView(desk) },
  head: { words: "Head", view: headView(desk, nameHead) },
};
const headName = el("a", { href: "#head", class: "name" });
const main = el("main", {});
const links = Object.entries(views).map(([name, { words }]) => el("a", { href: `#${name}` }, words));

function nameHead(): void {
  fill(headName, headLine(desk.head().head));
  document.title = `Turns & Holes: ${desk.head().head.name}`;
}

/** Shows the view that the end of the address names. */
function show(): void {
  const said = new URLSearchParams(location.hash.slice(1));
  const [name = ""] = said.keys();
  const shown = Object.hasOwn(views, name) ? name : "ask";
  const view = views[shown]?.view;
  if (view === undefined) return;
  staysAwake(false);
  for (const link of links) {
    if (link.hash === `#${shown}`) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
  if (main.firstChild !== view.node) {
    fill(main, view.node);
    scrollTo(0, 0);
  }
  view.show(said);
}

document.body.append(
  el("header", {}, el("h1", {}, "Turns & Holes"), headName, el("nav", { "aria-label": "Parts" }, links)),
  main,
  el("footer", {}, `Edition ${version}, ${digest}. Everything is worked out in this page; nothing leaves it.`),
);
nameHead();
addEventListener("hashchange", show);
show();
