import type { Part } from "./blocks.ts";
import { notes } from "./notes-part.ts";
import type { Desk } from "./parts.ts";
import { onHead, wormOut } from "./sections.ts";
import { type SaidOf, saidOf } from "./what-it-has.ts";

/** The words of the trade, British and American. */
export function glossaryPart({ head }: Desk): Part {
  return {
    id: "glossary",
    title: "Words",
    joins: true,
    blocks: [{ kind: "list", items: saidOf(head, words).map((word) => ({ ...word, text: onHead(word.text, head) })) }, notes],
  };
}

interface Word extends SaidOf {
  readonly term: string;
  readonly text: string;
}

const words: readonly Word[] = [
  {
    of: ["gears", "second-circle"],
    term: "Against the crank",
    text: "the plate turns the other way than the crank; also called in the opposite direction",
  },
  {
    of: ["plates"],
    term: "Arms",
    text: "sector arms: two arms on the crank side that enclose the spaces of a move",
  },
  { of: ["plates"], term: "Circle", text: "hole circle: a ring of evenly spaced holes on an index plate, named by its holes" },
  {
    of: ["second-circle"],
    term: "Compound",
    text: "indexing by two moves on two circles: the crank alone, and crank and plate together",
  },
  { term: "Count", text: "how many divisions there are in one turn of the work" },
  { of: ["plates"], term: "Crank", text: "index crank: the handle that turns the worm; the index pin or plunger is on it" },
  { of: ["dial"], term: "Dial", text: "the marks on the handwheel; one turn of it is one turn of the worm" },
  {
    of: ["gears"],
    term: "Differential",
    text: "indexing with the plate geared to the spindle, so that it moves while the crank does",
  },
  {
    of: ["direct-plate"],
    term: "Direct",
    text: `indexing by a plate on the spindle${wormOut}; also called rapid indexing`,
  },
  {
    of: ["gears"],
    term: "Driver, driven",
    text: "a gear that turns the next one, and one that is turned; the first driver is on the spindle, the last driven on the worm shaft",
  },
  {
    of: ["handwheel", "no-worm"],
    term: "From one zero",
    text: "each position by itself from the same start, so that no rounding adds to the next",
  },
  { of: ["handwheel"], term: "Handwheel", text: "the wheel that turns the worm of a table, in place of a crank" },
  { term: "Head", text: "dividing head (UK and US), also indexing head (US)" },
  { of: ["plates"], term: "Holes", text: "what is drilled, or what the arms enclose: always one more than the spaces" },
  { of: ["gears"], term: "Idler", text: "a gear between two others that changes direction only" },
  {
    of: ["second-circle"],
    term: "Rear pin",
    text: "a pin at the back that holds the plate by any of its circles, for compound indexing",
  },
  { of: ["ring"], term: "Ring", text: "degree ring on the spindle: counts degrees of the work" },
  { of: ["plates"], term: "Simple", text: "simple indexing, also called plain: crank over a plate that is held still" },
  {
    of: ["small-crank"],
    term: "Small crank",
    text: "the second crank of a wide range head, on the large one: it turns the worm through a worm of its own",
  },
  { of: ["plates"], term: "Spaces", text: "from one hole to the next of a circle; a move is counted in spaces" },
  {
    of: ["plates"],
    term: "Stop pin",
    text: "the pin that holds the plate still for simple indexing; drawn out, it lets the plate turn",
  },
  {
    of: ["gears"],
    term: "Stud",
    text: "a short shaft on the quadrant or bracket; it carries the gears between spindle and worm shaft",
  },
  { term: "Table", text: "rotary table, with a handwheel in place of a crank" },
  { term: "Teeth a move", text: "how many divisions one move goes on by; more than one is block indexing" },
  { of: ["vernier"], term: "Vernier", text: "lines beside a scale that divide one mark: the line that meets a mark is read" },
  { of: ["worm"], term: "Worm ratio", text: "turns of the crank or handwheel for one turn of the spindle" },
];
