import type { Head } from "../../src/index.ts";
import type { Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { has, type SaidOf, saidOf } from "./what-it-has.ts";

/** Where the work can hurt someone. */
export function cautionsPart({ head }: Desk): Part {
  return {
    id: "cautions",
    title: "Cautions",
    joins: true,
    blocks: [
      {
        kind: "paragraph",
        style: "caution",
        text: "The manual of your machine, local rules and qualified practice come before anything printed here.",
      },
      { kind: "list", items: saidOf(head, cautions(head)) },
    ],
  };
}

interface CautionSaid extends SaidOf {
  readonly term: string;
  readonly text: string;
}

function cautions(head: Head): readonly CautionSaid[] {
  return [
    {
      term: "Cutter",
      text: `Stop the cutter before reaching near it to move ${movedOn(head)}the work. A cutter that coasts still cuts.`,
    },
    {
      term: "Spindle",
      text: `Lock the spindle before each cut and unlock it before each move. A cut on an unlocked spindle ${has(head, "worm") ? "takes up the slack of the worm: it" : "turns it, and"} can snatch the work and break the cutter.`,
    },
    {
      term: "Holding",
      text: "See that work, centres and tailstock are tight, and that nothing that turns can reach table, knee or arbor through the whole round.",
    },
    {
      of: ["gears"],
      term: "Gears",
      text: "Stop the machine and keep hands and sleeves clear when the plate is geared: spindle, gears and plate turn together. Put the guard back before cutting.",
    },
    {
      of: ["plates"],
      term: "Stop pin",
      text: stopPin(head),
    },
    {
      of: ["direct-plate"],
      term: "Direct",
      text: `${has(head, "worm") ? "With the worm out of mesh nothing" : "Nothing"} but the plunger and the lock holds the spindle: lock it for every cut.`,
    },
    {
      of: ["gears"],
      term: "Not together",
      text: "The gearing cannot be used with the spindle tilted out of line with it, nor while the same gears cut a helix.",
    },
    { term: "Eyes", text: "Wear eye protection; clear swarf with a brush, and only with the cutter stopped." },
    {
      term: "Repair",
      text: "To build up worn teeth means heat and fumes. Old coatings can hold lead, cadmium or chromium: find out before heating, and ventilate. On cast iron the trade does not agree whether to preheat; ask somebody who is qualified for that iron and that work.",
    },
  ];
}

/** What the hand moves beside the work. */
function movedOn(head: Head): string {
  if (!has(head, "worm")) return "";
  return has(head, "plates") ? "the crank, the arms or " : "the handwheel or ";
}

/** In what settings of this head the plate is held, and in what it must be free. */
function stopPin(head: Head): string {
  const free = [...(has(head, "gears") ? ["geared"] : []), ...(has(head, "second-circle") ? ["compound"] : [])];
  if (free.length === 0)
    return "In, so that it holds the plate. Pulled by mistake it lets the plate turn and makes a wrong count.";
  const jams = has(head, "gears") ? ", or jams the train" : "";
  return `Out for ${free.join(" and ")} settings, in for simple ones. Pulled or left by mistake it makes a wrong count${jams}.`;
}
