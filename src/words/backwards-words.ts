import type { PossibleCount } from "../machine/angle-by-eye.ts";
import type { SetMove } from "../mechanism/motion.ts";
import type { MoveGives } from "../mechanism/reverse.ts";
import { formatAngle } from "../number/angle.ts";
import { groupDigits } from "../number/ratio.ts";
import type { Item } from "./item.ts";
import { counted, signedArc } from "./numbers.ts";

const mostCountsNamed = 20;

/**
 * The counts that an angle read by eye could mean, and how to tell them apart.
 *
 * @param uncertainty - How far off it may be either way, as the person wrote it.
 */
export function countsByEyeItems(counts: readonly PossibleCount[], uncertainty: string): readonly Item[] {
  if (counts.length === 0) return [{ term: "It could be", text: "no whole count; read it again over more teeth" }];
  const all = counts.map(({ divisions }) => divisions);
  const shown = all.length > mostCountsNamed ? `${all[0]} to ${all.at(-1)}` : all.join(" or ");
  const could = { term: "It could be", text: `${shown} divisions` };
  return counts.length === 1 ? [could] : [could, { term: "To tell apart", text: tellApart(counts, uncertainty) }];
}

function tellApart(counts: readonly PossibleCount[], uncertainty: string): string {
  const needed = counts.slice(0, -1).map(({ teethToTellFromNext }) => teethToTellFromNext);
  const known = needed.filter((teeth) => teeth !== null);
  if (known.length < needed.length)
    return "not all of them even over the whole wheel, read like this: count the teeth, or read more finely";
  const most = Math.max(...known);
  return `read the angle over ${most} teeth or more, as finely, and ask again with "ANGLE ± ${uncertainty} over ${most}"; of the counts above, the one that it names again is the right one`;
}

/** A move as it was understood, and what it really gives. */
export function moveGivesItems(move: SetMove, gives: MoveGives, teethPerMove: number): readonly Item[] {
  return [
    { term: "Move", text: setMoveWords(move) },
    ...givesItems(gives, teethPerMove),
    { term: "Each move", text: `${formatAngle(gives.spindlePerMove, 1)} of the work` },
  ];
}

function setMoveWords({ turns, spaces, circle, second, gears }: SetMove): string {
  const first = `${counted(turns, "turn")} + ${counted(spaces, "space")}${circle === null ? "" : ` of ${circle}`}`;
  const then = second
    ? `, then ${second.direction === "with" ? "on" : "back"} ${counted(second.spaces, "space")} of ${second.circle}`
    : "";
  const train = gears
    ? `; gears ${gears.drivers.join(" × ")} to ${gears.driven.join(" × ")}, plate ${gears.direction} the crank`
    : "";
  return `${first}${then}${train}`;
}

function givesItems({ divisions, exact, closingArcSeconds }: MoveGives, teeth: number): readonly Item[] {
  const perMove = teeth === 1 ? "" : `, ${teeth} teeth per move`;
  const count = groupDigits(divisions);
  if (exact) return [{ term: "This gives", text: `${count} ${divisions === 1 ? "division" : "divisions"} exactly${perMove}` }];
  if (closingArcSeconds === 0) {
    const left = `no whole count: ${teeth} teeth per move of ${count} come back to the start with teeth left out`;
    return [{ term: "This gives", text: left }];
  }
  return [
    { term: "This gives", text: `no whole count; nearest is ${count}${perMove}` },
    {
      term: "At the close",
      text: `the work is ${signedArc(closingArcSeconds).slice(1)} ${closingArcSeconds > 0 ? "too far" : "short"}`,
    },
  ];
}
