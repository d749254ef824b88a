import { boltCircleOptions } from "./bolt-circle-options.ts";
import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(boltCircleOptions, {
  about: "A bolt circle by coordinates, on a table without any head.",
  uses: [
    ["turns-and-holes bolt-circle 6 --diameter 80", "x and y of each hole, and chords to check across"],
    ["turns-and-holes bolt-circle 5 --diameter 3.25in --start-angle 90°", "in inches, the first hole at the top"],
    ["turns-and-holes bolt-circle 8 --diameter 80 --centre 75,50", "from a corner of the work"],
    ["turns-and-holes bolt-circle 6 --diameter 80 --csv", "for a spreadsheet"],
    ["turns-and-holes bolt-circle 6 --diameter 80 --sheet holes.pdf", "the sheet for the machine"],
  ],
  sections: [
    { title: "The circle", options: ["diameter", "start-angle", "clockwise", "centre"] },
    { title: "The sheet for the machine (PDF)", options: ["sheet", "paper", "force"] },
    { title: "How it is told", options: ["json", "csv", "markdown", "help", "version"] },
  ],
  end: [
    "Each hole is told twice: signed from the centre, for a read-out set to zero there, and from a zero from which nothing need be below 0, for handwheels without a sign.",
    "Lengths are millimetres such as 80, or inches such as 3.25in; what is asked in inches is answered in inches, but for --json.",
  ],
});

/** What `bolt-circle --help` prints on a terminal of so many columns. */
export function boltCircleHelp(columns?: number): string {
  return helpText(page, boltCircleOptions, columns);
}
