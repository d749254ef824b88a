import { helpText } from "./help-text.ts";
import { options } from "./look-up-options.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(options, {
  about: "Turns & Holes: exact dividing-head indexing.",
  uses: [
    ["turns-and-holes COUNT|ANGLE [options]", "look up one count or one angle"],
    ["turns-and-holes table FROM-TO", "the preferred setting of every count in a range"],
    ["turns-and-holes gives MOVE [options]", "the reverse: what a move really gives"],
    ["turns-and-holes spacing ANGLES", "unequal spaces, as of a reamer"],
    ["turns-and-holes spacing --propose FLUTES", "such spaces proposed, on holes that you have"],
    ["turns-and-holes gear TEETH [options]", "a gear's measures; what gear it is: gear --help"],
    ["turns-and-holes repair TEETH [options]", "a gear with broken teeth, all of it: repair --help"],
    ["turns-and-holes ratio [options]", "an unknown worm ratio, or idlers, from a trial: ratio --help"],
    ["turns-and-holes plate HOLES [options]", "an index plate to drill, to check or to find out: plate --help"],
    ["turns-and-holes kit [FROM-TO] [options]", "what your kit does, and what to buy or drill next: kit --help"],
    ["turns-and-holes flats SIDES [options]", "a square, a hexagon, any flats on round stock: flats --help"],
    ["turns-and-holes bolt-circle HOLES [options]", "x and y of its holes, without a head: bolt-circle --help"],
    ["turns-and-holes graduate [options]", "a dial, a rule or a vernier, line by line: graduate --help"],
    ["turns-and-holes heads", "list the ready heads"],
    ["turns-and-holes booklet [options]", "print the booklet of a head (PDF): booklet --help"],
    ["turns-and-holes completion SHELL", "what bash, zsh or fish needs to complete all this"],
  ],
  examples: [
    ["turns-and-holes 127", ""],
    ["turns-and-holes 96 --head ratio-40-plates-15-49-ungeared", ""],
    ["turns-and-holes 50 --all --mounted 2", ""],
    [`turns-and-holes "2°54'" --head my-head.json`, ""],
    ["turns-and-holes 86 --teeth 3,4,31,60", "teeth 3, 4, 31 and 60 of 86"],
    ["turns-and-holes 86 --every 19", "all teeth, each 19 on from the last"],
    ["turns-and-holes 86 --after 31", "what comes after tooth 31"],
    ["turns-and-holes 86 --ring 46.5", "which tooth the ring stands at"],
    ["turns-and-holes 97 --near --radius 50", "how far off, and in millimetres"],
    ["turns-and-holes 97 --radius 50 --budget --run-out 0.04", "what that error is made of"],
    ["turns-and-holes 97 --teeth all --by ring --head ratio-90-dial", ""],
    ["turns-and-holes 97 --teeth all --csv", "the same for a spreadsheet"],
    ["turns-and-holes 12 --coordinates --radius 2in", ""],
    ["turns-and-holes table 2-100 --markdown", ""],
    [`turns-and-holes "2.9° ± 0.05°"`, "which counts that could mean"],
    [`turns-and-holes spacing "58°,62°,59°,61°,60°,60°"`, ""],
    ["turns-and-holes spacing --propose 6 --uneven 3°", ""],
    [`turns-and-holes gives "0 + 22/33"`, "that gives 60"],
    [`turns-and-holes gives "0 + 5/15" --gears 56/24 --plate against`, "that gives 127"],
  ],
  sections: [
    { title: "Which head", options: ["head", "mounted"] },
    { title: "Which settings", options: ["method", "teeth-per-move", "all", "limit", "near", "radius", "proof"] },
    {
      title: "At the machine",
      options: ["teeth", "every", "after", "by", "nearer", "ring", "start-hole", "start-angle", "minus"],
    },
    {
      title: "What the error is made of",
      says: "At --radius: the setting's own error beside the rest, as far as it is known",
      options: ["budget", "run-out", "hole-error", "circle-diameter", "worm-error", "read-within"],
    },
    { title: "As coordinates", options: ["coordinates", "clockwise", "tangents"] },
    {
      title: "The reverse question",
      says: "There --teeth-per-move is how many teeth the move is meant to advance",
      options: ["gears", "plate"],
    },
    { title: "Unequal spaces", options: ["propose", "uneven", "unpaired"] },
    { title: "How it is told", options: ["json", "csv", "markdown", "help", "version"] },
  ],
  end: [
    "An angle is written 2.9°, 2°54', 2d54m, 2:54:00, 7 1/2°, 1/124 rev or 10 gon. A length is millimetres such as 50, or inches such as 2in; what is asked in inches is answered in inches.",
    "An option that would change nothing is refused. It ends with 0 when there is an exact setting, 1 when there is none, 2 when the question could not be read, and 3 when a file could not be read or written.",
  ],
});

/** What `--help` prints on a terminal of so many columns. */
export function help(columns?: number): string {
  return helpText(page, options, columns);
}
