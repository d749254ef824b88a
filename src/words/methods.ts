import type { Head } from "../head/head.ts";
import type { KindOf } from "../setting/kind.ts";
import type { Proof } from "../setting/proof.ts";
import type { Crank, Method, SettingBy } from "../setting/setting.ts";
import { compoundFigures, crankFigures, dialFigures, directFigures, type Figure, wideRangeFigures } from "./figures.ts";
import { trainItems, trainShort } from "./gear-train-words.ts";
import type { Item } from "./item.ts";
import { counted, mixed } from "./numbers.ts";
import { directNouns, plateName } from "./plates.ts";

/** Where a kind of setting stands in a book: geared and compound rows apart, so that none is read as simple. */
export type Section = "direct" | "simple" | "wide-range" | "dial" | "geared" | "compound";

/** What a kind of setting is called. */
export interface KindWords {
  /** In a list: `One pair`. */
  readonly name: string;
  /** At the head of an answer. */
  readonly title: string;
  /** The letter before its rows in a table. */
  readonly mark: string;
  readonly section: Section;
}

/** What is said of the settings of one method. */
export interface MethodWords<M extends Method> {
  /** As in a list of methods: `Simple`. */
  readonly name: string;
  /** What its kinds of setting are called, and where they stand in a book. */
  readonly kinds: Readonly<Record<KindOf<M>, KindWords>>;
  /** Whether a head can be said to lack it: nobody asks why a head without a direct plate does no direct indexing. */
  isExpected(head: Head): boolean;
  /** The setting, item by item in the order of work. */
  setUp(setting: SettingBy<M>, head: Head): readonly Item[];
  /** What the hand sets, in figures, in the order of work. */
  figures(setting: SettingBy<M>, head: Head): readonly Figure[];
  /** The move in few words: `0 + 5 of 15 (plate 1)`. `plate` is to stand after its circle, or is empty. */
  short(setting: SettingBy<M>, plate: string): string;
  /** What all the moves together come to, after `127 moves, 1 turn of the work`. */
  proof(setting: SettingBy<M>, proof: Proof): string;
}

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
  "wide-range": {
    name: "Two cranks",
    kinds: { "wide-range": { name: "Two cranks", title: "WIDE RANGE INDEXING, both cranks", mark: "W", section: "wide-range" } },
    isExpected: ({ smallCrank }) => smallCrank !== undefined,
    setUp: wideRangeItems,
    figures: wideRangeFigures,
    short: (setting, plate) => {
      const { turns, spaces, circle } = setting.small;
      const small = `small crank ${turns} + ${spaces} of ${circle}`;
      return setting.circle === null && setting.turns === 0 ? small : `${crankShort(setting)}${plate}, then ${small}`;
    },
    proof: (_, { crankTurns, smallTurns = null }) =>
      `: ${turnsOf(crankTurns)} of the large crank and ${turnsOf(smallTurns)} of the small one bring the work back to its start`,
  },
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

/** The plate held still; where there are gears, none may be on. */
export function stopPinIn({ gears }: Pick<Head, "gears">): Item {
  return { term: "Plate stop pin", text: gears.length === 0 ? "IN" : "IN, and no gears on" };
}

function crankShort({ turns, circle, spaces }: Crank): string {
  return circle === null ? `${counted(turns, "turn")} + 0` : `${turns} + ${spaces} of ${circle}`;
}

/** The plate on the spindle, by its holes or what it has for them; with a row of holes, each place by both. */
function directItems(setting: SettingBy<"direct">, { wormRatio }: Head): readonly Item[] {
  const { plate, circle, spaces, vernierHoles = 1 } = setting;
  const { what, place, places } = directNouns(setting);
  const worm: Item = { term: "Worm", text: "out of mesh; the spindle is moved by hand" };
  const on: Item = {
    term: `${what[0]?.toUpperCase()}${what.slice(1)}`,
    text: `${plate}, ${circle / vernierHoles} ${places}`,
    inFigures: true,
  };
  return [
    ...(wormRatio === null ? [] : [worm]),
    on,
    ...(vernierHoles === 1
      ? [{ term: "Move", text: counted(spaces, "space"), inFigures: true } as const]
      : [
          { term: "Row of holes", text: `${vernierHoles}, each 1/${vernierHoles} of a space on`, inFigures: true } as const,
          {
            term: "Move",
            text: `${counted(Math.floor(spaces / vernierHoles), "space")} + ${spaces % vernierHoles} of the row`,
            inFigures: true,
          } as const,
          { term: "Each place", text: `turn to its ${place}, then on until the pin drops through its hole of the row` },
        ]),
  ];
}

/** Plate, crank and arms. */
function crankItems(setting: Crank): readonly Item[] {
  const { turns, spaces, circle } = setting;
  const move = `${counted(turns, "turn")} + ${counted(spaces, "space")}`;
  if (circle === null) {
    return [
      { term: "Plate", text: "any, any circle: the pin comes back to the same hole" },
      { term: "Crank", text: move, inFigures: true },
    ];
  }
  return [
    { term: "Plate", text: `${plateName(setting)}, circle of ${circle} holes`, inFigures: true },
    { term: "Crank", text: move, inFigures: true },
    { term: "Sector arms", text: `enclose ${setting.armsEnclose} holes, the pin's own among them`, inFigures: true },
  ];
}

/** The large crank, where it moves at all, then the small one, always forward. */
function wideRangeItems(setting: SettingBy<"wide-range">, head: Head): readonly Item[] {
  const { turns, spaces, circle, armsEnclose } = setting.small;
  const stays: Item = { term: "Large crank", text: "stays where it is, its pin in a hole of any circle" };
  return [
    ...(setting.circle === null && setting.turns === 0 ? [stays] : crankItems(setting)),
    stopPinIn(head),
    {
      term: "Small crank",
      text: `then ${counted(turns, "turn")} + ${counted(spaces, "space")} of its ${circle}`,
      inFigures: true,
    },
    { term: "Its arms", text: `enclose ${counted(armsEnclose, "hole")}, the pin's own among them`, inFigures: true },
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

function turnsOf(turns: Proof["crankTurns"]): string {
  const shown = turns === null ? "0" : mixed(turns, " ");
  return `${shown} turn${shown === "1" ? "" : "s"}`;
}
