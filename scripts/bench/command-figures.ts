import { exactSettings, nearSettings, readyHeads } from "../../src/index.ts";
import { nodeTime, projectFile } from "./child.ts";
import { type Figure, figure } from "./figure.ts";
import { inTurn, timeOf } from "./stopwatch.ts";

/** What is asked of the command, and how many times as long as Node doing nothing it may take. */
const asked = [
  { what: "look-up of 127", words: ["127"], goal: 1.4 },
  { what: "look-up of 787, impossible", words: ["787"], goal: 1.6 },
  { what: "measures of a gear", words: ["gear", "86", "--module", "2"], goal: 1.8 },
  { what: "repair of three teeth", words: ["repair", "97", "--module", "2", "--damaged", "31-33"], goal: 1.8 },
] as const;

/** Questions to the command against Node doing nothing. */
export function lookUpFigures(): Figure[] {
  const command = projectFile("dist/scripts/turns-and-holes.cjs");
  const nothing = () => nodeTime(["-e", "0"]);
  return asked.map(({ what, words, goal }) =>
    figure(
      `${what} by the command`,
      inTurn(15, () => nodeTime([command, ...words]), nothing),
      "node -e 0",
      goal,
    ),
  );
}

/** Near settings of every count from 2 to 1000 that does not close without gears, against the obvious exact search. */
export function nearFigures(inC: () => number): Figure[] {
  const head = readyHeads.find(({ id }) => id === "ratio-40-plates-15-49-ungeared");
  if (!head) return [];
  const counts = Array.from({ length: 999 }, (_, index) => index + 2).filter(
    (divisions) => exactSettings(head, { divisions }).next().done === true,
  );
  const all = () => timeOf(() => counts.map((divisions) => nearSettings(head, { divisions })));
  all();
  return [
    figure(
      `near settings of the ${counts.length} counts to 1000 that three plates cannot do`,
      inTurn(9, all, inC),
      "the exact search in C",
      7,
      "7 times is about 150 ms where that takes 21",
    ),
  ];
}
