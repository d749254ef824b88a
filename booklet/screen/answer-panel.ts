import {
  type Answer,
  cautionsFor,
  type Found,
  type Head,
  type NotPossible,
  planJob,
  type Setting,
  type Target,
  type Way,
  wayOf,
} from "../../src/index.ts";
import {
  type AtRadius,
  cautionItemsBesides,
  holesUsedWords,
  passedOverItems,
  proofShort,
  reasonItems,
  routeItems,
  targetWords,
  triedWords,
  wayShort,
} from "../../src/words/index.ts";
import { type Child, el } from "./el.ts";
import { nearSection } from "./near-section.ts";
import { button, itemList, kindLine, part } from "./pieces.ts";
import { wayPanel } from "./way-panel.ts";

/** What can be done with an answer. */
export interface Acts {
  /** The way that leads, by its own words; null for the best. */
  readonly way: string | null;
  take(way: Way): void;
  /** Lists every way that the head has; null where they are listed. */
  readonly listAll: (() => void) | null;
  work(way: Way): void;
  readonly radius: AtRadius | null;
  readonly radiusForm: HTMLElement;
}

/** An answer to a count or an angle: the way that leads in large figures, and what else there is. */
export function answerPanel(answer: Answer, head: Head, acts: Acts): Child {
  return answer.exact ? foundPanel(answer, head, acts) : notPossiblePanel(answer, head, acts);
}

/** The way of an answer that leads; null where the head has none, not even a near one that was taken. */
export function leading(answer: Answer, name: string | null): Way | null {
  const ways = [...answer.settings, ...(name === null ? [] : answer.near)].map(wayOf);
  return ways.find((way) => wayShort(way) === name) ?? (answer.exact ? (ways[0] ?? null) : null);
}

function foundPanel(answer: Found, head: Head, acts: Acts): Child {
  const way = leading(answer, acts.way) ?? wayOf(answer.settings[0]);
  const others = answer.settings.filter((each) => each !== way.setting);
  return [
    el("h2", {}, targetWords(answer.target)),
    kindLine(way),
    wayPart(way, answer, head, acts),
    othersPart(others, acts),
    itemList(passedOverItems(answer, head)),
  ];
}

/** The way set up, with its proof, and what to mind. */
function wayPart(way: Way, answer: Answer, head: Head, acts: Acts): Child {
  const { setting } = way;
  const proof = setting.exact ? [{ term: "Proof", text: proofShort(setting) }] : [];
  return [
    wayPanel(way, head, [...holesItems(way, answer, head), ...proof], () => acts.work(way)),
    el("div", { class: "mind" }, itemList(cautionItemsBesides(cautionsFor(way, head)))),
  ];
}

const mostHolesNamed = 60;

function holesItems({ setting }: Way, { target }: Answer, head: Head) {
  if (!setting.exact || setting.method !== "direct" || setting.proof.moves > mostHolesNamed) return [];
  const plan = planJob(head, target, { setting });
  return plan.planned ? [{ term: "Holes used", text: holesUsedWords(plan.places, plan.way) }] : [];
}

/** How many other ways are listed unless all are asked for. */
const mostOthers = 6;

function othersPart(others: readonly Setting[], { take, listAll }: Acts): Child {
  if (others.length === 0 && listAll === null) return null;
  return part(
    "Other ways",
    el(
      "ul",
      { class: "ways" },
      (listAll === null ? others : others.slice(0, mostOthers)).map((setting) =>
        el(
          "li",
          {},
          button(wayShort(wayOf(setting)), () => take(wayOf(setting))),
        ),
      ),
    ),
    listAll !== null && button("Every way that this head has", listAll),
  );
}

/** What an impossible count says first of all. */
export function notPossibleLine(target: Target): HTMLElement {
  return el("h2", { class: "not" }, `${targetWords(target)}: NOT POSSIBLE exactly with what this head has`);
}

function notPossiblePanel(answer: NotPossible, head: Head, acts: Acts): Child {
  const way = leading(answer, acts.way);
  // The near ways stand above these, each to be taken.
  const routes = answer.routes.filter(({ kind }) => kind !== "near");
  return [
    notPossibleLine(answer.target),
    way !== null && [kindLine(way), wayPart(way, answer, head, acts)],
    nearSection(answer, acts),
    routes.length > 0 && part("What would help, the least effort first", itemList(routeItems({ ...answer, routes }))),
    part("Why not", itemList(reasonItems(answer.impossible.reasons, head)), el("p", {}, triedWords(answer))),
  ];
}
