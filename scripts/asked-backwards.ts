import { byEyeTyped } from "../booklet/screen/by-eye.ts";
import { crankTyped } from "../booklet/screen/question.ts";
import { countsFromAngle, type Head, type SetMove, whatMoveGives } from "../src/index.ts";
import { countsByEyeItems, headLine, moveGivesItems } from "../src/words/index.ts";
import { fault, optionNames, wholeNumber } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import type { More } from "./more.ts";
import { withOptionNames } from "./read-options.ts";
import { itemLines } from "./words.ts";

/** The counts that an angle read by eye could mean: `2.9° ± 0.05°`, `14.5° ± 0.05° over 5`. */
export function countsByEye(question: string): More {
  const { angle, either, eitherWritten, teeth } = byEyeTyped(question);
  const counts = withOptionNames({ teeth: "over" }, () => countsFromAngle(angle, either, teeth));
  return { data: { counts }, lines: itemLines(countsByEyeItems(counts, eitherWritten)) };
}

/** `gives MOVE`: what count a move really gives. */
export function moveGives(move: string, head: Head, options: Options): More {
  const set = { wormRatio: head.wormRatio, ...readMove(move), ...readGears(options) };
  const teeth = options["teeth-per-move"] === undefined ? 1 : wholeNumber(options["teeth-per-move"], "--teeth-per-move");
  const gives = withOptionNames(optionNames, () => whatMoveGives(set, teeth));
  return { data: { gives }, lines: [headLine(head), "", ...itemLines(moveGivesItems(set, gives, teeth))] };
}

function readMove(text: string): Omit<SetMove, "wormRatio"> {
  const move = crankTyped(text);
  if (move !== null) return move;
  throw fault(
    "unreadable",
    "",
    `"${text.slice(0, 40)}" is not a move; write turns and spaces such as "0 + 22/33", or "1 + 7/39 + 29/41" for a compound one`,
  );
}

function readGears({ gears, plate }: Options): Pick<SetMove, "gears"> {
  if (gears === undefined) return {};
  const sides = gears.split("/").map((side) => side.split(/[*×x]/).map((teeth) => wholeNumber(teeth, "--gears")));
  const [drivers, driven] = sides;
  if (
    !drivers ||
    !driven ||
    sides.length > 2 ||
    drivers.length !== driven.length ||
    drivers.length > 2 ||
    [...drivers, ...driven].includes(0)
  ) {
    throw fault(
      "unreadable",
      "--gears",
      `"${gears.slice(0, 40)}" is not a train; give drivers over driven, such as 56/24 or 64*44/24*40`,
    );
  }
  if (plate !== "with" && plate !== "against")
    throw fault(
      plate === undefined ? "missing" : "unknown-word",
      "--plate",
      "say which way the gears of --gears turn the plate: with or against the crank",
    );
  return { gears: { drivers, driven, direction: plate } };
}
