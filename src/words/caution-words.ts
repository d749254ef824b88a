import type { Caution } from "../machine/caution.ts";
import { foulingWords } from "./gear-train-words.ts";
import type { Item } from "./item.ts";
import { givesWords } from "./setting-words.ts";

/** What to mind on the way through a job, in words; general workshop practice, no source. */
export function cautionItem(caution: Caution): Item {
  switch (caution.code) {
    case "one-way": {
      const { hand, to } = caution;
      const back = hand === "spindle" ? "well back" : "back half a turn or more";
      return {
        term: "One way",
        text: `Turn the ${hand} one way only. Past the ${to}: go ${back} and come up to it again.`,
      };
    }
    case "lock-spindle":
      return { term: "Lock", text: "Unlock the spindle to move, lock it before every cut." };
    case "stop-cutter":
      return { term: "Cutter", text: "No hand near the cutter until it stands." };
    case "manual-first":
      return {
        term: "First of all",
        text: "Before metal is cut make a light mark at every position and count them. The machine's manual, local codes and qualified practice come first.",
      };
    case "worm-out-of-mesh":
      return {
        term: "Worm out",
        text: "With the worm out of mesh nothing but the plunger and the lock holds the spindle: lock it for every cut.",
      };
    case "stop-pin":
      return caution.stands === "in"
        ? { term: "Stop pin", text: "Plate stop pin IN." }
        : {
            term: "Stop pin",
            text: "Plate stop pin OUT. In by mistake it holds the plate: the gears jam, or another count comes out.",
          };
    case "two-parts":
      return {
        term: "Two parts",
        text:
          caution.first === "crank"
            ? "Each move has two parts, always in the same order: first the crank alone, then crank and plate together by the rear pin."
            : "Each move has two parts, always in the same order: first crank and plate together BACK by the rear pin, then the crank alone forward, which takes up the slack.",
      };
    case "gears-forgotten":
      return { term: "Gears on", text: `Without its gears this move ${givesWords(caution.gives)}: the part is scrap.` };
    case "gears-limits":
      return {
        term: "Never",
        text: "With the spindle tilted out of line with the gears, nor while they cut a helix. Keep hands and sleeves from the train; guard it.",
      };
    case "may-foul":
      return { term: "May foul", text: `${foulingWords(caution.fouling)}. Try it on the quadrant first.` };
    case "several-teeth":
      return {
        term: "Passes over",
        text: `Each move goes on ${caution.teethPerMove} teeth: the work comes round ${caution.teethPerMove} times before the last is cut.`,
      };
    case "error-grows":
      return {
        term: "From the start",
        text: "A near move: count from the start only; the error grows with every move, and each place says how far it is off.",
      };
    case "never-add-steps":
      return {
        term: "One zero",
        text: "Set every place by itself from the one zero; never add one rounded step to the last.",
      };
  }
}

/** All that is to be minded, the most needful first. */
export function cautionItems(cautions: readonly Caution[]): readonly Item[] {
  return cautions.map(cautionItem);
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
