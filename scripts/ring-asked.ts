import { type Answer, type PlannedJob, type PreparedHead, planJob, revolutions, toothAt } from "../src/index.ts";
import { holeStands, placeNoun, standingItems, wayShort } from "../src/words/index.ts";
import { angleFromZero, optionNames } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import { type More, nothingMore } from "./more.ts";
import { withOptionNames } from "./read-options.ts";
import { startAsked } from "./shared-options.ts";
import { itemLines, line } from "./words.ts";

/** The tooth that a reading of the ring stands for, asked by `--ring`, and where the pin should be there. */
export function standingAsked(answer: Answer, { head }: PreparedHead, ring: string, options: Options): More {
  const { target } = answer;
  const setting = answer.exact ? answer.settings[0] : answer.near[0];
  const step = setting ?? ("divisions" in target ? { spindlePerMove: revolutions(1, target.divisions), teethPerMove: 1 } : null);
  if (step === null) return nothingMore;
  const start = startAsked(options);
  const { startAngle, side } = start;
  const read = angleFromZero(ring, "--ring");
  const at = withOptionNames(optionNames, () => toothAt(step, read, { ring: head.ring, startAngle, side }));
  const plan = setting && withOptionNames(optionNames, () => planJob(head, target, { ...start, setting, teeth: [at.tooth] }));
  const job = plan?.planned ? plan : null;
  const pin = job === null ? "" : pinWords(job);
  return {
    // Where pin and scales should stand at that tooth, by the way that leads.
    data: { standingAt: at, ...(job !== null && { positions: job.places }) },
    lines: [
      "",
      ...itemLines(standingItems(at, head.ring, placeNoun(target), pin)),
      ...(at.sure ? [line("What is left", `ask again with --after ${at.tooth}`)] : []),
    ],
  };
}

function pinWords(job: PlannedJob): string {
  const [place] = job.places;
  const hole = place === undefined ? "" : holeStands(place, job.way);
  return hole === "" || job.exact ? hole : `${hole} by the near way that leads, ${wayShort(job.way)}`;
}
