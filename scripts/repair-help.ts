import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";
import { repairOptions } from "./repair-options.ts";

const page = helpPage(repairOptions, {
  about: "Everything for recutting damaged teeth, in the order of the work.",
  uses: [
    ["turns-and-holes repair 86 --module 2 --damaged 31-33 --backlash 0.2", ""],
    ["turns-and-holes repair 97 --dp 12 --damaged 5,6 --head my-head.json --sheet repair.pdf --paper letter", ""],
  ],
  sections: [
    {
      title: "The gear, as for the gear command (gear --help)",
      options: ["module", "dp", "pressure-angle", "shift", "depth-rule", "outside", "depth", "thinning", "span"],
    },
    {
      title: "The damage",
      says: "Number the teeth in the order in which they come to the cutter; space n follows tooth n",
      options: ["damaged", "start-space"],
    },
    {
      title: "What is allowed",
      options: ["backlash", "mate-thinning", "setting-error", "off-centre", "saw", "saw-depth", "leave"],
    },
    {
      title: "Which head, and where it starts",
      options: ["head", "mounted", "method", "teeth-per-move", "start-hole", "start-angle", "minus"],
    },
    { title: "The sheet for the machine (PDF)", options: ["sheet", "paper", "force"] },
    { title: "How it is told", options: ["json", "help", "version"] },
  ],
  end: [
    "Lengths are millimetres such as 2.5, or inches such as 0.1in. With a pitch in DP or any length in inches the answer is in inches, but for --json.",
    "It ends with 0 when the setting is exact, 1 when it is near or there is none, 2 when the question could not be read, and 3 when a file could not be read or written.",
  ],
});

/** What `repair --help` prints on a terminal of so many columns. */
export function repairHelp(columns?: number): string {
  return helpText(page, repairOptions, columns);
}
