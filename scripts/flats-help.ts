import { flatsOptions } from "./flats-options.ts";
import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(flatsOptions, {
  about: "Flats on round stock: a square, a hexagon, any number, with the moves on your head.",
  uses: [
    ["turns-and-holes flats hexagon --across 17", "the blank, the depth of cut, what to measure"],
    ["turns-and-holes flats square --blank 1in", "the largest with sharp corners"],
    ["turns-and-holes flats 2 --across 22 --blank 25", "two flats, for a spanner"],
  ],
  sections: [
    { title: "The flats: square, hexagon, octagon, or how many", options: ["across", "blank"] },
    { title: "Which head", options: ["head", "mounted", "method", "teeth-per-move"] },
    { title: "How it is told", options: ["json", "help", "version"] },
  ],
  end: [
    "Lengths are millimetres such as 17, or inches such as 0.75in; what is asked in inches is answered in inches, but for --json.",
    "It ends with 0 when the moves are exact, 1 when the head has none, and 2 when the question could not be read.",
  ],
});

/** What `flats --help` prints on a terminal of so many columns. */
export function flatsHelp(columns?: number): string {
  return helpText(page, flatsOptions, columns);
}
