import type { Caution } from "../machine/caution.ts";
import { foulingWords } from "./gear-train-words.ts";
import type { Item } from "./item.ts";
import { givesWords } from "./setting-words.ts";

/** A caution of one code. */
export type Coded<Code extends Caution["code"]> = Extract<Caution, { readonly code: Code }>;

/** What to mind on the way through a job, in words; general workshop practice, no source. */
const said: { readonly [Code in Caution["code"]]: (caution: Coded<Code>) => Item } = {
  "one-way": ({ hand, to }) => {
    const back = hand === "spindle" ? "well back" : "back half a turn or more";
    return { term: "One way", text: `Turn the ${hand} one way only. Past the ${to}: go ${back} and come up to it again.` };
  },
  "lock-spindle": () => ({ term: "Lock", text: "Unlock the spindle to move, lock it before every cut." }),
  "stop-cutter": () => ({ term: "Cutter", text: "No hand near the cutter until it stands." }),
  "manual-first": () => ({
    term: "First of all",
    text: "Before metal is cut make a light mark at every position and count them. The machine's manual, local codes and qualified practice come first.",
  }),
  "worm-out-of-mesh": () => ({
    term: "Worm out",
    text: "With the worm out of mesh nothing but the plunger and the lock holds the spindle: lock it for every cut.",
  }),
  "stop-pin": ({ stands }) => ({ term: "Stop pin", text: stopPins[stands] }),
  "two-parts": ({ first }) => ({
    term: "Two parts",
    text: `Each move has two parts, always in the same order: first ${orders[first]}.`,
  }),
  "gears-forgotten": ({ gives }) => ({
    term: "Gears on",
    text: `Without its gears this move ${givesWords(gives)}: the part is scrap.`,
  }),
  "gears-limits": () => ({
    term: "Never",
    text: "With the spindle tilted out of line with the gears, nor while they cut a helix. Keep hands and sleeves from the train; guard it.",
  }),
  "may-foul": ({ fouling }) => ({ term: "May foul", text: `${foulingWords(fouling)}. Try it on the quadrant first.` }),
  "several-teeth": ({ teethPerMove }) => ({
    term: "Passes over",
    text: `Each move goes on ${teethPerMove} teeth: the work comes round ${teethPerMove} times before the last is cut.`,
  }),
  "error-grows": () => ({
    term: "From the start",
    text: "A near move: count from the start only; the error grows with every move, and each place says how far it is off.",
  }),
  "never-add-steps": () => ({
    term: "One zero",
    text: "Set every place by itself from the one zero; never add one rounded step to the last.",
  }),
  "places-differ": () => ({
    term: "Each line",
    text: "Go on to the place of each line: the moves between them differ.",
  }),
  "moves-differ": () => ({
    term: "Each line",
    text: "Go on by the turns and spaces of each line: they differ, so set the arms anew or count.",
  }),
};

const stopPins = {
  in: "Plate stop pin IN.",
  out: "Plate stop pin OUT. In by mistake it holds the plate: nothing turns, or another count comes out.",
} as const;

const orders = {
  large: "the large crank, until its pin is home, then the small one",
  crank: "the crank alone, then crank and plate together by the rear pin",
  both: "crank and plate together BACK by the rear pin, then the crank alone forward, which takes up the slack",
} as const;

/** One caution in words. */
export function cautionItem<Code extends Caution["code"]>(caution: Coded<Code>): Item {
  return said[caution.code as Code](caution);
}

/** All that is to be minded, the most needful first. */
export function cautionItems(cautions: readonly Caution[]): readonly Item[] {
  return cautions.map((caution) => cautionItem(caution));
}

/** What the set-up of a way says already, item by item. */
const saidInSetUp: ReadonlySet<Caution["code"]> = new Set([
  "stop-pin",
  "gears-forgotten",
  "gears-limits",
  "may-foul",
  "several-teeth",
]);

/** What is to be minded besides the set-up of a way, item by item. */
export function cautionItemsBesides(cautions: readonly Caution[]): readonly Item[] {
  return cautionItems(cautions.filter(({ code }) => !saidInSetUp.has(code)));
}

/** The same as one paragraph. */
export function cautionsBesides(cautions: readonly Caution[]): string {
  return cautionItemsBesides(cautions)
    .map(({ text }) => text)
    .join(" ");
}
