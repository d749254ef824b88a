import { flatsOptions } from "./flats-options.ts";
import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(flatsOptions, {
  about: "Flats on round stock: a square, a hexagon, any number, with the moves on your head.",
  uses: [
    ["turns-and-holes flats hexagon --across 17", "the blank, the depth of cut, what to measure"],
    ["turns-and-holes flats square --blank 1in", "the largest with sharp corners"],
    ["turns-and-holes flats 2 --across 22 --blank 25", "two flats, for a spanner"],
    ["turns-and-holes flats octagon --across 30 --degrees", "without a head, by degrees"],
    ["turns-and-holes flats hexagon --across 17 --sheet flats.pdf", "the sheet for the machine"],
  ],
  sections: [
    { title: "The flats: square, hexagon, octagon, or how many", options: ["across", "blank"] },
    { title: "Which head", options: ["head", "mounted", "method", "teeth-per-move", "degrees"] },
    { title: "The sheet for the machine (PDF)", options: ["sheet", "paper", "force"] },
    { title: "How it is told", options: ["json", "help", "version"] },
  ],
  end: [
    "Lengths are millimetres such as 17, or inches such as 0.75in; what is asked in inches is answered in inches, but for --json.",
    "It ends with 0 when the moves are exact, 1 when the head has none, 2 when the question could not be read, and 3 when a file could not be read or written.",
  ],
});

/** What `flats --help` prints on a terminal of so many columns. */
export function flatsHelp(columns?: number): string {
  return helpText(page, flatsOptions, columns);
}
