import type { Head } from "../head/head.ts";
import type { NearBy } from "../setting/near-setting.ts";
import type { SettingBy } from "../setting/setting.ts";
import { crankItems, crankShort, stopPinIn, turnsOf } from "./crank-items.ts";
import { circleFigure, type Figure, moveFigures } from "./figures.ts";
import type { Item } from "./item.ts";
import type { MethodWords } from "./method-words.ts";
import { counted } from "./numbers.ts";
import { plateName } from "./plates.ts";

/** What is said of wide range indexing. */
export const wideRangeWords: MethodWords<"wide-range"> = {
  name: "Two cranks",
  kinds: { "wide-range": { name: "Two cranks", title: "WIDE RANGE INDEXING, both cranks", mark: "W", section: "wide-range" } },
  isExpected: ({ smallCrank }) => smallCrank !== undefined,
  setUp: wideRangeItems,
  figures: wideRangeFigures,
  short: (setting, plate) => {
    const { turns, spaces, circle } = setting.small;
    const small = `small crank ${turns} + ${spaces} of ${circle}`;
    return largeCrankStays(setting) ? small : `${crankShort(setting)}${plate}, then ${small}`;
  },
  proof: (_, { crankTurns, smallTurns = null }) =>
    `: ${turnsOf(crankTurns)} of the large crank and ${turnsOf(smallTurns)} of the small one bring the work back to its start`,
};

/** Whether the large crank is not moved at all. */
export function largeCrankStays({ circle, turns }: SettingBy<"wide-range">): boolean {
  return circle === null && turns === 0;
}

/** The large crank, where it moves at all, then the small one, always forward. */
function wideRangeItems(setting: SettingBy<"wide-range">, head: Head): readonly Item[] {
  const { turns, spaces, circle, armsEnclose } = setting.small;
  const atRest: Item = { term: "Large crank", text: "stays where it is, its pin in a hole of any circle" };
  return [
    ...(largeCrankStays(setting) ? [atRest] : crankItems(setting)),
    stopPinIn(head),
    {
      term: "Small crank",
      text: `then ${counted(turns, "turn")} + ${counted(spaces, "space")} of its ${circle}`,
      inFigures: true,
    },
    { term: "Its arms", text: `enclose ${counted(armsEnclose, "hole")}, the pin's own among them`, inFigures: true },
  ];
}

/** Two parts to a move: the large crank, then the small one. */
function wideRangeFigures(setting: SettingBy<"wide-range">): readonly Figure[] {
  const { turns, spaces, circle } = setting.small;
  return [
    ...(largeCrankStays(setting) ? [] : [circleFigure(setting), ...moveFigures(setting, "")]),
    { head: "SMALL TURNS", figure: String(turns), under: "of the small crank" },
    { head: "SMALL SPACES", figure: String(spaces), under: `of its ${circle}` },
  ];
}

/** The circles of both cranks: `100 (plate L) and 100 of the small crank`. */
export function onBoth(setting: NearBy<"both-cranks">): string {
  const large = setting.circle === null ? "whole turns" : `${setting.circle} (plate ${plateName(setting)})`;
  return `${large} and ${setting.small.circle} of the small crank`;
}

/** Every place by both cranks, as a title. */
export const bothTitle = "WIDE RANGE INDEXING, the nearest holes of both cranks";

/** What the hand sets on it, in figures. */
export function bothFigures(setting: NearBy<"both-cranks">): readonly Figure[] {
  const smallCircle = { head: "SMALL CIRCLE", figure: String(setting.small.circle), under: "nearest holes" };
  return [...(setting.circle === null ? [] : [circleFigure(setting)]), smallCircle];
}

/** How it is set up. */
export function bothItems(setting: NearBy<"both-cranks">, head: Head): readonly Item[] {
  return [
    { term: "Circles", text: onBoth(setting), inFigures: true },
    stopPinIn(head),
    { term: "Set", text: "every place by itself: the large crank to its hole, then the small one; no error adds to the next" },
  ];
}
