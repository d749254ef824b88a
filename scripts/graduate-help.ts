import { graduateOptions } from "./graduate-options.ts";
import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(graduateOptions, {
  about: "Dials, rules and verniers, line by line: where the hand stands, how long the line is, what is stamped at it.",
  uses: [
    ["turns-and-holes graduate 100", "a dial of 100 lines"],
    ["turns-and-holes graduate 100 --csv", "its lines for a spreadsheet"],
    ["turns-and-holes graduate 360 --spaces 90 --head ratio-90-dial", "a sector of 90°"],
    ["turns-and-holes graduate 360 --vernier 12 --per-line 5", "its vernier to 5′: 12 over 11"],
    ["turns-and-holes graduate 360 --vernier 12 --over 23 --two-sided --per-line 5", "on both sides, in longer spaces"],
    ["turns-and-holes graduate --space 1 --spaces 150 --lead 5 --marks 250", "a rule, by the screw's dial"],
    ["turns-and-holes graduate --space 1/40in --vernier 25 --lead 1/4in --geared 1", "its vernier, head geared to the screw"],
  ],
  sections: [
    { title: "The scale", options: ["spaces", "space"] },
    { title: "Its vernier", options: ["vernier", "over", "two-sided"] },
    { title: "The lines", options: ["long", "medium", "figure-every", "figure-from", "per-line"] },
    { title: "A straight scale, by the screw of the table", options: ["lead", "marks", "geared"] },
    {
      title: "A round scale, by the head",
      options: ["head", "by", "method", "teeth-per-move", "mounted", "start-hole", "start-angle", "minus"],
    },
    { title: "The sheet for the machine (PDF)", options: ["sheet", "paper", "force"] },
    { title: "How it is told", options: ["json", "csv", "markdown", "help", "version"] },
  ],
  end: [
    "With any length in inches the answer is in inches, but for --json. Lines are numbered from 0.",
    "It ends with 0 when every line is set exactly, 1 when lines are near or cannot be set, 2 when the question could not be read, and 3 when a file could not be read or written.",
  ],
});

/** What `graduate --help` prints on a terminal of so many columns. */
export function graduateHelp(columns?: number): string {
  return helpText(page, graduateOptions, columns);
}
