import { type Answer, type PlanOptions, type PreparedHead, planJob, revolutions, toothAt } from "../src/index.ts";
import { holeStands, placeNoun, standingItems, wayShort } from "../src/words/index.ts";
import { angleFromZero, type Options, optionNames } from "./command-line.ts";
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
  const pin = setting === undefined ? "" : pinAt(answer, head, { ...start, setting, teeth: [at.tooth] });
  return {
    data: { standingAt: at },
    lines: [
      "",
      ...itemLines(standingItems(at, head.ring, placeNoun(target), pin)),
      ...(at.sure ? [line("What is left", `ask again with --after ${at.tooth}`)] : []),
    ],
  };
}

function pinAt({ target }: Answer, head: PreparedHead["head"], options: PlanOptions): string {
  const plan = withOptionNames(optionNames, () => planJob(head, target, options));
  const [place] = plan.planned ? plan.places : [];
  if (!plan.planned || place === undefined) return "";
  const hole = holeStands(place, plan.way);
  return hole === "" || plan.exact ? hole : `${hole} by the near way that leads, ${wayShort(plan.way)}`;
}
