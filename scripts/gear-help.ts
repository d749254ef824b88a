import { gearCommandOptions } from "./gear-option-table.ts";
import { helpText } from "./help-text.ts";
import { helpPage } from "./option-table.ts";

const page = helpPage(gearCommandOptions, {
  about: "The measures of a spur gear, and what gear one is.",
  uses: [
    ["turns-and-holes gear 86 --module 2", "its measures; or --dp 12"],
    ["turns-and-holes gear 86 --outside 176", "what gear is it?"],
    ["turns-and-holes gear 86 --mate 43 --centres 129", "the same where its tips are lost"],
    ['turns-and-holes gear --chord "63.1 over 8" --height 6.5', "by a piece of it, the count not known"],
    ["turns-and-holes gear --mate 24 --turns 12 --mate-turns 43", "how many teeth, from marks"],
  ],
  sections: [
    {
      title: "The gear",
      options: ["module", "dp", "pressure-angle", "shift", "depth-rule", "thinning", "pins"],
    },
    {
      title: "What gear is it?",
      says: "Measure what you can; two spans tell the pressure angle, and without any tip the pitch",
      options: ["outside", "depth", "span", "chord", "height", "centres", "mate-outside", "limit"],
    },
    {
      title: "How many teeth?",
      says: "Mark a tooth of each where they mesh; turn until both marks meet again for the first time",
      options: ["mate", "turns", "mate-turns", "most"],
    },
    { title: "How it is told", options: ["json", "help", "version"] },
  ],
  end: [
    "Lengths are millimetres such as 176, or inches such as 6.93in. With a pitch in DP or any length in inches the answer is in inches, but for --json.",
  ],
});

/** What `gear --help` prints on a terminal of so many columns. */
export function gearHelp(columns?: number): string {
  return helpText(page, gearCommandOptions, columns);
}
