import { readyHeads } from "../src/index.ts";
import { bookletOptions } from "./booklet-options.ts";
import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(bookletOptions, {
  about: "Print the book for a head: every count with its setting.",
  uses: [
    ["turns-and-holes booklet", "the first ready head, A4"],
    ["turns-and-holes booklet --head ratio-40-faces-24-66", "another ready head"],
    ["turns-and-holes booklet --head my-head.json --paper a5", "your own head, as an A5 booklet"],
    ["turns-and-holes booklet --as booklet --paper a5", "the same on A4, to print on both sides, fold and stitch"],
    ["turns-and-holes booklet --as wall --to 100", "sheets in large type for the wall"],
    ["turns-and-holes booklet --job 127", "a sheet for one job, every position with a box to tick"],
    [`turns-and-holes booklet --job "2°54'"`, "the same for an angle"],
    ["turns-and-holes booklet --job 62 --teeth 1,17-20", "for the teeth named, in that order"],
    [
      "turns-and-holes booklet --as drawings --out plates",
      "the plates as SVG files at true size, to drill through; with --job 127 a card to lay under the arms",
    ],
    ["turns-and-holes booklet --to 200 --out ~/mine.pdf", "fewer counts, to a file of your choice"],
    ["turns-and-holes booklet --job 127 --out - | lp", "to a program instead of a file"],
  ],
  sections: [
    {
      title: 'In a copy of the sources "npm run booklet --" stands for the first two words',
      options: ["head", "paper", "out", "tagged", "force", "help", "version"],
    },
    { title: "The book", options: ["as", "from", "to", "parts", "degrees", "inches"] },
    {
      title: "A job sheet instead",
      says: "With --as large in large type",
      options: ["job", "teeth", "every", "by", "method", "teeth-per-move", "mounted", "start-hole", "start-angle", "minus"],
    },
    {
      title: "What the error of a job is made of",
      options: ["budget", "radius", "run-out", "hole-error", "circle-diameter", "worm-error", "read-within"],
    },
  ],
  end: [`Ready heads: ${readyHeads.map(({ id }) => id).join(", ")}`],
});

/** What `booklet --help` prints on a terminal of so many columns. */
export function bookletHelp(columns?: number): string {
  return helpText(page, bookletOptions, columns);
}
