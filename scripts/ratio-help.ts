import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";
import { ratioOptions } from "./ratio-options.ts";

const page = helpPage(ratioOptions, {
  about: "A head that nobody has the papers of: its worm ratio and its idlers, from a short trial.",
  uses: [
    ["turns-and-holes ratio --turns 10 --turned 90°", "what worm ratio is it?"],
    ["turns-and-holes ratio --turns 20 --turned '1 rev' --within 3°", "a whole turn, judged by a mark"],
    ["turns-and-holes ratio --pairs 1 --idlers 0 --plate against", "what are its idlers?"],
  ],
  sections: [
    {
      title: "The worm ratio",
      says: "Mark the spindle, take up the slack of the worm, and count the crank's turns from there, all one way",
      options: ["turns", "turned", "within"],
    },
    {
      title: "The idlers",
      says: "Put up any train that fits, stop pin out, and turn the crank by hand",
      options: ["pairs", "idlers", "plate"],
    },
    { title: "How it is told", options: ["json", "help", "version"] },
  ],
  end: [
    "The ratio of a head is on its plate or in its papers where it has them, and those hold. With the stop pin out the crank turns the plate through the gears: keep fingers out of the train.",
    "It ends with 0 when the answer is one, 1 when several fit or none, and 2 when the question could not be read.",
  ],
});

/** What `ratio --help` prints on a terminal of so many columns. */
export function ratioHelp(columns?: number): string {
  return helpText(page, ratioOptions, columns);
}
