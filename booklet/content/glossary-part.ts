import type { Part } from "./blocks.ts";

/** The words of the trade, British and American. */
export function glossaryPart(): Part {
  return {
    id: "glossary",
    title: "Words",
    joins: true,
    blocks: [
      {
        kind: "list",
        items: [
          {
            term: "Against the crank",
            text: "the plate turns the other way than the crank; also called in the opposite direction",
          },
          {
            term: "Arms",
            text: "sector arms: two arms on the crank side that enclose the spaces of a move",
          },
          { term: "Circle", text: "hole circle: a ring of evenly spaced holes on an index plate, named by its holes" },
          { term: "Compound", text: "indexing by two moves on two circles, crank first and then crank and plate together" },
          { term: "Count", text: "how many divisions there are in one turn of the work" },
          { term: "Crank", text: "index crank: the handle that turns the worm; the index pin or plunger is on it" },
          { term: "Differential", text: "indexing with the plate geared to the spindle, so that it moves while the crank does" },
          { term: "Direct", text: "indexing by a plate on the spindle, worm out of mesh; also called rapid indexing" },
          {
            term: "Driver, driven",
            text: "a gear that turns the next one, and one that is turned; the first driver is on the spindle, the last driven on the worm shaft",
          },
          { term: "Head", text: "dividing head (UK and US), also indexing head (US)" },
          { term: "Holes", text: "what is drilled, or what the arms enclose: always one more than the spaces" },
          { term: "Idler", text: "a gear between two others that changes direction only" },
          { term: "Rear pin", text: "a pin at the back that holds the plate by any of its circles, for compound indexing" },
          { term: "Ring", text: "degree ring on the spindle: counts degrees of the work" },
          { term: "Simple", text: "simple indexing, also called plain: crank over a plate that is held still" },
          { term: "Spaces", text: "from one hole to the next of a circle; a move is counted in spaces" },
          { term: "Stop pin", text: "the pin that holds the plate still: in for simple, out for geared and compound settings" },
          { term: "Stud", text: "a short shaft on the quadrant or bracket; it carries the gears between spindle and worm shaft" },
          { term: "Table", text: "rotary table, with a handwheel in place of a crank" },
          { term: "Teeth a move", text: "how many divisions one move goes on by; more than one is block indexing" },
          { term: "Worm ratio", text: "turns of the crank for one turn of the spindle" },
        ],
      },
    ],
  };
}
