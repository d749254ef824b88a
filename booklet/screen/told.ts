import { countsFromAngle, whatMoveGives } from "../../src/index.ts";
import { countsByEyeItems, type Item, moveGivesItems } from "../../src/words/index.ts";
import type { ReadByEye } from "./by-eye.ts";
import type { Desk } from "./desk.ts";
import { type Child, el } from "./el.ts";
import { button, itemList } from "./pieces.ts";
import type { MoveTyped } from "./question.ts";

/** What is told of what was asked. */
export interface Told {
  readonly panel: Child;
  /** The same in a line, to be read aloud. */
  readonly short: string;
  /** All of it, where the panel is its first line only. */
  readonly rest?: () => Child;
}

/** What count a move gives. */
export function moveTold(desk: Desk, move: MoveTyped): Told {
  const set = { wormRatio: desk.head().head.wormRatio, ...move };
  const items = moveGivesItems(set, whatMoveGives(set), 1);
  return {
    panel: [el("h2", {}, "WHAT THE MOVE GIVES"), el("div", { class: "gives" }, itemList(items))],
    short: aloudOf(items),
  };
}

/** The most counts that are offered to be asked. */
const mostOffered = 20;

/** What counts an angle read by eye could mean, each to be asked. */
export function byEyeTold({ angle, either, eitherWritten, teeth }: ReadByEye, ask: (text: string) => void): Told {
  const counts = countsFromAngle(angle, either, teeth);
  const items = countsByEyeItems(counts, eitherWritten);
  const [could, ...others] = items;
  return {
    panel: [
      el("h2", {}, "WHAT THE ANGLE COULD MEAN"),
      el("div", { class: "gives" }, itemList(could ? [could] : [])),
      el(
        "div",
        { class: "row" },
        counts.slice(0, mostOffered).map(({ divisions }) => button(`Ask ${divisions}`, () => ask(String(divisions)))),
      ),
      itemList(others),
    ],
    short: aloudOf(items),
  };
}

function aloudOf(items: readonly Item[]): string {
  return items.map(({ term, text }) => `${term}: ${text}`).join(". ");
}
