import type { Head } from "../head/head.ts";
import type { Method, SettingBy } from "../setting/setting.ts";
import { capital } from "./capital.ts";
import { crankItems, crankShort, stopPinIn, turnsOf } from "./crank-items.ts";
import { directNouns } from "./direct-nouns.ts";
import { compoundFigures, crankFigures, dialFigures, directFigures } from "./figures.ts";
import { trainItems, trainShort } from "./gear-train-words.ts";
import type { Item } from "./item.ts";
import type { MethodWords } from "./method-words.ts";
import { counted } from "./numbers.ts";
import { plateName } from "./plates.ts";
import { rowItems } from "./row-words.ts";
import { wideRangeWords } from "./wide-range-words.ts";

/** What is said of each method: a new method has its words here. */
export const methodWords: { readonly [M in Method]: MethodWords<M> } = {
  direct: {
    name: "Direct",
    kinds: { direct: { name: "Direct", title: "DIRECT INDEXING", mark: "D", section: "direct" } },
    isExpected: ({ directPlates }) => directPlates.length > 0,
    setUp: directItems,
    figures: directFigures,
    short: (setting) => {
      const { spaces, circle, plate } = setting;
      return `${counted(spaces, "space")} of ${circle} on the ${directNouns(setting).what} ${plate}`;
    },
    proof: (setting) => `, and the pin is in its first ${directNouns(setting).place} again`,
  },
  simple: {
    name: "Simple",
    kinds: { simple: { name: "Simple", title: "SIMPLE INDEXING", mark: "S", section: "simple" } },
    isExpected: () => true,
    setUp: (setting, head) =>
      setting.circle === null && head.plates.length === 0
        ? [{ term: "Dial", text: `${counted(setting.turns, "turn")} + 0 marks: back at the same mark after every move` }]
        : [...crankItems(setting), stopPinIn(head)],
    figures: crankFigures,
    short: (setting, plate) => `${crankShort(setting)}${plate}`,
    proof: ({ circle }, proof) => {
      const hole = circle === null || proof.crankTurns?.includes("/") ? "the start" : "the start hole";
      return `: ${turnsOf(proof.crankTurns)} of the crank bring you back to ${hole}`;
    },
  },
  "wide-range": wideRangeWords,
  compound: {
    name: "Compound",
    kinds: { compound: { name: "Compound", title: "COMPOUND INDEXING", mark: "C", section: "compound" } },
    isExpected: () => true,
    setUp: compoundItems,
    figures: compoundFigures,
    short: (setting, plate) => {
      const { second } = setting;
      return `${crankShort(setting)} ${second.direction === "with" ? "+" : "−"} ${second.spaces} of ${second.circle}${plate}`;
    },
    proof: (_, proof) => {
      const place = proof.pinTurns?.includes("/")
        ? "the work back to its start, the pins to other holes"
        : "you back to the start holes";
      return `: ${turnsOf(proof.crankTurns)} of the crank in all bring ${place}`;
    },
  },
  differential: {
    name: "Differential",
    kinds: {
      "one-pair": { name: "One pair", title: "DIFFERENTIAL INDEXING, one pair of gears", mark: "G", section: "geared" },
      "two-pair": { name: "Two pairs", title: "DIFFERENTIAL INDEXING, two pairs of gears", mark: "G", section: "geared" },
      block: { name: "Several teeth", title: "DIFFERENTIAL INDEXING", mark: "G", section: "geared" },
      "may-foul": {
        name: "May foul",
        title: "DIFFERENTIAL INDEXING, two pairs of gears that may foul",
        mark: "G",
        section: "geared",
      },
    },
    isExpected: () => true,
    setUp: (setting, head) => [
      ...crankItems(setting),
      { term: "Plate stop pin", text: "OUT: the gears turn the plate" },
      ...trainItems(setting.gears, head),
    ],
    figures: crankFigures,
    short: (setting, plate) => `${crankShort(setting)}${plate}, ${trainShort(setting.gears)}`,
    proof: ({ gears }, proof) =>
      `: the pin goes ${turnsOf(proof.pinTurns)} over the plate, the plate ${turnsOf(proof.plateTurns)} ${gears.direction} the crank; ${turnsOf(proof.crankTurns)} of the crank in all, and the work is back at its start`,
  },
  dial: {
    name: "Dial",
    kinds: { dial: { name: "By the dial", title: "BY THE DIAL, every position on a mark", mark: "H", section: "dial" } },
    isExpected: ({ dial }) => dial !== null,
    setUp: dialItems,
    figures: dialFigures,
    short: ({ turns, spaces, circle }) => `by the dial, ${turns} + ${spaces} of its ${circle} parts`,
    proof: (_, proof) => `: ${turnsOf(proof.crankTurns)} of the handwheel bring you back to the start mark`,
  },
};

/** The plate on the spindle, by its holes or what it has for them; with a row of holes, each place by both. */
function directItems(setting: SettingBy<"direct">, { wormRatio }: Head): readonly Item[] {
  const { plate, circle, spaces, vernierHoles = 1 } = setting;
  const { what, places } = directNouns(setting);
  const worm: Item = { term: "Worm", text: "out of mesh; the spindle is moved by hand" };
  const on: Item = {
    term: capital(what),
    text: `${plate}, ${circle / vernierHoles} ${places}`,
    inFigures: true,
  };
  return [
    ...(wormRatio === null ? [] : [worm]),
    on,
    ...(vernierHoles === 1 ? [{ term: "Move", text: counted(spaces, "space"), inFigures: true } as const] : rowItems(setting)),
  ];
}

/** Two parts to each move; one that goes back comes first, so that the worm is last moved forward. */
function compoundItems(setting: SettingBy<"compound">): readonly Item[] {
  const { turns, spaces, circle, second } = setting;
  const back = second.direction === "against";
  const alone: Item = {
    term: back ? "Then the crank" : "First, the crank",
    text: `${counted(turns, "turn")} + ${counted(spaces, "space")} of ${circle}, forward`,
  };
  const both: Item = {
    term: back ? "First, both" : "Then both",
    text: `draw the rear pin from the circle of ${second.circle}; crank and plate together ${back ? "BACK the other way" : "ON the same way"} ${counted(second.spaces, "space")} of ${second.circle}; rear pin in again`,
  };
  const slack: Item = {
    term: "",
    text: "The crank forward after it takes up the slack of the worm: always in this order.",
  };
  return [
    { term: "Plate", text: `${plateName(setting)}, circle of ${circle} holes`, inFigures: true },
    { term: "Sector arms", text: `enclose ${setting.armsEnclose} holes, the pin's own among them`, inFigures: true },
    ...(back ? [both, alone, slack] : [alone, both]),
    {
      term: "Plate stop pin",
      text: `OUT: the rear pin holds the plate, in the circle of ${second.circle} on the same face`,
    },
  ];
}

function dialItems({ turns, spaces }: SettingBy<"dial">, { dial }: Head): readonly Item[] {
  const lines = dial?.vernierLines ?? 1;
  const vernier = lines > 1 ? ` + ${counted(spaces % lines, "line")} of the vernier` : "";
  return [
    {
      term: "Dial",
      text: `${counted(turns, "turn")} + ${counted(Math.floor(spaces / lines), "mark")}${vernier} from each to the next`,
      inFigures: true,
    },
    { term: "One zero", text: "Set every position from one zero, not each from the last." },
  ];
}
