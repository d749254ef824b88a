import type { Head, PlannedJob, RepairOnHead } from "../src/index.ts";
import { betweenWords, goesBy, proveWords, purposeWords, startWords } from "../src/words/index.ts";
import { placeTable } from "./place-table.ts";
import { paragraph } from "./words.ts";

/** The moves from the sound space to every space to be recut, and on to the one that proves the count. */
export function placeLines({ moves, repair }: RepairOnHead, job: PlannedJob, head: Head): string[] {
  const goOn = { "index-holes": "turns + spaces", "spindle-holes": "spaces", marks: null }[goesBy(job.way)];
  const how = goOn === null ? "" : ` Go on by ${goOn} from the line before.`;
  return [
    paragraph(`${startWords}${how}`),
    "",
    ...placeTable(job, head, [
      { head: "space", cells: moves.map(({ toothSpace }) => String(toothSpace)) },
      { head: "do", cells: moves.map(({ purpose }) => purposeWords[purpose]) },
      { head: "between", cells: moves.map((place) => betweenWords(place, repair.plan)) },
    ]),
    "",
    paragraph(proveWords),
  ];
}
