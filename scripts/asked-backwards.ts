import {
  countsFromAngle,
  type Head,
  type MoveGives,
  type PossibleCount,
  parseAngle,
  type SetMove,
  whatMoveGives,
} from "../src/index.ts";
import { type Asked, angleFromZero, fault, wholeNumber } from "./command-line.ts";
import type { More } from "./more.ts";
import { arc, count, degrees, headLine, line, paragraph } from "./words.ts";

/**
 * `2.9° ± 0.05°`, or `14.5° ± 0.05° over 5`: the counts that an angle read by eye over one tooth or
 * several could mean; null where this is no such question.
 */
export function countsByEye(question: string): More | null {
  const [angle, either, more] = question.split(/±|\+\/?-/);
  if (angle === undefined || either === undefined || more !== undefined) return null;
  const [, uncertainty = "", teeth = "1"] = /^(.*?)(?:\s+over\s+(\d+)(?:\s+teeth)?)?\s*$/s.exec(either) ?? [];
  const counts = countsFromAngle(parseAngle(angle), angleFromZero(uncertainty, "after ±"), wholeNumber(teeth, "over"));
  return { data: { counts }, lines: eyeLines(counts, uncertainty.trim()) };
}

function eyeLines(counts: readonly PossibleCount[], uncertainty: string): string[] {
  if (counts.length === 0) return [paragraph("No whole count has that angle; read it again over more teeth.")];
  const listed = counts.map(({ divisions }) => divisions);
  const shown = listed.length > 20 ? `${listed[0]} to ${listed.at(-1)}` : listed.join(" or ");
  return [
    line("It could be", `${shown} divisions`),
    ...(counts.length === 1 ? [] : [line("To tell apart", tellApart(counts, uncertainty))]),
  ];
}

function tellApart(counts: readonly PossibleCount[], uncertainty: string): string {
  const needed = counts.slice(0, -1).map(({ teethToTellFromNext }) => teethToTellFromNext);
  const known = needed.filter((teeth) => teeth !== null);
  if (known.length < needed.length)
    return "not all of them even over the whole wheel, read like this: count the teeth, or read more finely";
  const most = Math.max(...known);
  return `read the angle over ${most} teeth or more, as finely, and ask again with "ANGLE ± ${uncertainty} over ${most}"; of the counts above, the one that it names again is the right one`;
}

/** `gives MOVE`: what count a move really gives. */
export function moveGives(move: string, head: Head, options: Asked["options"]): More {
  const set = { wormRatio: head.wormRatio, ...readMove(move), ...readGears(options) };
  const teeth = options["teeth-per-move"] === undefined ? 1 : wholeNumber(options["teeth-per-move"], "--teeth-per-move");
  const gives = whatMoveGives(set, teeth);
  return {
    data: { gives },
    lines: [
      headLine(head),
      "",
      line("Move", moveWords(set)),
      ...givesLines(gives, teeth),
      line("Each move", `${degrees(gives.spindlePerMove)} of the work`),
    ],
  };
}

function givesLines({ divisions, exact, closingArcSeconds }: MoveGives, teeth: number): string[] {
  const perMove = teeth === 1 ? "" : `, ${teeth} teeth per move`;
  if (exact) return [line("This gives", `${count(divisions, "division")} exactly${perMove}`)];
  if (closingArcSeconds === 0) {
    return [
      line("This gives", `no whole count: ${teeth} teeth per move of ${divisions} come back to the start with teeth left out`),
    ];
  }
  return [
    line("This gives", `no whole count; nearest is ${divisions}${perMove}`),
    line("At the close", `the work is ${arc(closingArcSeconds)} ${closingArcSeconds > 0 ? "too far" : "short"}`),
  ];
}

const fraction = String.raw`(\d{1,6})\s*(?:/|of)\s*(\d{1,6})`;
const movePattern = new RegExp(
  String.raw`^(?:(\d{1,6})(?:\s*t(?:urns?)?)?(?=$|[\s+−-]))?\s*\+?\s*(?:${fraction})?\s*(?:([+−-])\s*${fraction})?$`,
);

function readMove(text: string): Omit<SetMove, "wormRatio"> {
  const parts = movePattern.exec(text.trim());
  if (!parts || text.trim() === "")
    throw fault(
      "unreadable",
      "",
      `"${text.slice(0, 40)}" is not a move; write turns and spaces such as "0 + 22/33", or "1 + 7/39 + 29/41" for a compound one`,
    );
  const [, turns = "0", spaces, circle, sign, then, second] = parts;
  return {
    turns: Number(turns),
    spaces: Number(spaces ?? 0),
    circle: circle === undefined ? null : Number(circle),
    ...(sign !== undefined && {
      second: { spaces: Number(then), circle: Number(second), direction: sign === "+" ? "with" : "against" } as const,
    }),
  };
}

/** The move as it was understood. */
function moveWords({ turns, spaces, circle, second, gears }: SetMove): string {
  const first = `${count(turns, "turn")} + ${count(spaces, "space")}${circle === null ? "" : ` of ${circle}`}`;
  const then = second
    ? `, then ${second.direction === "with" ? "on" : "back"} ${count(second.spaces, "space")} of ${second.circle}`
    : "";
  const train = gears
    ? `; gears ${gears.drivers.join(" × ")} to ${gears.driven.join(" × ")}, plate ${gears.direction} the crank`
    : "";
  return `${first}${then}${train}`;
}

function readGears({ gears, plate }: Asked["options"]): Pick<SetMove, "gears"> {
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
    throw fault("unknown-word", "--plate", "say which way these gears turn the plate: with or against the crank");
  return { gears: { drivers, driven, direction: plate } };
}
