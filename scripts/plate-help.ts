import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";
import { plateOptions } from "./plate-options.ts";

const page = helpPage(plateOptions, {
  about: "Index plates: a circle of holes to be drilled, one to be checked, and one that nobody knows.",
  uses: [
    ["turns-and-holes plate 97 --diameter 120 --drill 3", "drill 97 holes on this head, and how good the plate is"],
    ["turns-and-holes plate 97 --diameter 120 --head ratio-90-dial --serves 40", "on a rotary table, for a 40:1 head"],
    ["turns-and-holes plate 97 --diameter 4.5in --by coordinates --step 0.001in", "by the slides of a mill"],
    ["turns-and-holes plate 97 --diameter 120 --csv", "the holes for a spreadsheet"],
    ["turns-and-holes plate 97 --diameter 120 --sheet plate.pdf", "the sheet for the machine"],
    ["turns-and-holes plate 97 --chords '3.89 over 1, 84.16 over 24'", "check a plate that is made"],
    ["turns-and-holes plate --chords '7.77 over 2, 84.16 over 24'", "what plate is it?"],
  ],
  sections: [
    { title: "The circle", options: ["diameter", "drill", "within", "serves"] },
    { title: "How the holes are gone to", options: ["by", "method", "teeth-per-move", "mounted", "head"] },
    { title: "By coordinates", options: ["step", "clockwise", "tangents"] },
    { title: "Where it starts", options: ["start-hole", "start-angle", "minus"] },
    {
      title: "A plate that is there",
      says: "With its count it is checked; without, it is found which it is",
      options: ["chords"],
    },
    { title: "The sheet for the machine (PDF)", options: ["sheet", "paper", "force"] },
    { title: "How it is told", options: ["json", "csv", "markdown", "help", "version"] },
  ],
  end: [
    "Holes are numbered from 0. Lengths are millimetres such as 2.5, or inches such as 0.1in; with any length in inches the answer is in inches, but for --json.",
    "It ends with 0 when every hole is set exactly, or one plate fits what was measured; 1 when holes are near, or several plates or none fit; 2 when the question could not be read, and 3 when a file could not be read or written.",
  ],
});

/** What `plate --help` prints on a terminal of so many columns. */
export function plateHelp(columns?: number): string {
  return helpText(page, plateOptions, columns);
}
