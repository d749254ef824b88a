import { helpText } from "./help-text.ts";
import { kitOptions } from "./kit-options.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(kitOptions, {
  about: "What your head does over a range of counts, what you lose with a plate, and what to buy or drill next.",
  uses: [
    ["turns-and-holes kit 2-400 --head my-head.json", "what it does and what would add the most"],
    ["turns-and-holes kit --want 61,67,96,127", "the smallest set for a list of your own"],
    ["turns-and-holes kit --gear-sizes 20-80 --circle-sizes 15-66", "of what you could have"],
    ["turns-and-holes kit --sheet kit.pdf", "on one sheet, to keep with the plates"],
  ],
  sections: [
    { title: "What is wanted", says: "The range is 2-400 where none is given", options: ["want"] },
    { title: "What could be had", options: ["circle-sizes", "gear-sizes"] },
    { title: "Which head, and which settings", options: ["head", "method", "teeth-per-move"] },
    { title: "The sheet (PDF)", options: ["sheet", "paper", "force"] },
    { title: "How it is told", options: ["json", "help", "version"] },
  ],
  end: [
    "A circle to add is taken to be on a plate of its own, with no other to be paired with. All that is said to be added was found on the head with it, and proved there.",
    "It ends with 0 when all of the list is done, or of the range where no list is given; 1 when something is not; 2 when the question could not be read, and 3 when a file could not be read or written.",
  ],
});

/** What `kit --help` prints on a terminal of so many columns. */
export function kitHelp(columns?: number): string {
  return helpText(page, kitOptions, columns);
}
