import type Fraction from "fraction.js";
import { checkScale, type Scale } from "../head/scale.ts";
import { checkAngle, checkAngleFromZero } from "../number/angle.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { fromExact, type Revolutions, rational, toRevolutions } from "../number/ratio.ts";
import type { Setting } from "../setting/setting.ts";
import { checkZero, type ZeroOptions } from "./zero.ts";

/** How the ring was read. */
export interface RingRead extends ZeroOptions {
  /** The ring that was read, whose fineness then says how sure the reading is; left out, it is not asked. */
  readonly ring?: Scale | null | undefined;
}

const ringKeys = keysOf<RingRead>({ startAngle: true, side: true, ring: true });

/** The tooth that lies nearest to an angle of the spindle, and how far off the angle is. */
export interface NearestTooth {
  readonly tooth: number;
  /** How far the work is past the tooth's true place, in revolutions; below 0 where it is short of it. */
  readonly past: Revolutions;
  /**
   * With a ring: whether this tooth alone would be read so. Else whether the reading is within a
   * quarter of a division of it. Where it is not, the scale is too coarse for the count, or its
   * zero, its side or the count is not what was said.
   */
  readonly sure: boolean;
  /**
   * The teeth that would be read so on the ring: those within half its least count. Null where none
   * would, or where no ring was given.
   */
  readonly alike: TeethAlike | null;
}

/** Neighbouring teeth, from the first to the last the way they follow; over tooth 1 where the last is below the first. */
export interface TeethAlike {
  readonly first: number;
  readonly last: number;
  readonly count: number;
}

/** The places of the first time round: each a division after the one before, in turns from tooth 1. */
interface Places {
  readonly division: Fraction;
  readonly count: bigint;
}

/**
 * Finds where the work stands from a reading of the degree ring. Of an angle that does not divide
 * the turn, it is one of the positions of the first time round.
 *
 * @param angle - The reading as an angle from the zero, in revolutions, 0 or more.
 * @param setting - A setting, or of a count alone `{ spindlePerMove: revolutions(1, 86), teethPerMove: 1 }`.
 * @throws {@link InputError} when the reading or the start angle is below 0 or over 1,000 revolutions,
 * or the setting or an option is not allowed.
 *
 * @example
 * ```ts
 * toothAt(indexDivisions(readyHeads[0], 1000).settings[0], parseAngle("180°"), { ring: readyHeads[0].ring }).alike; // {"first":500,"last":502,"count":3}
 * ```
 */
export function toothAt(
  setting: Pick<Setting, "spindlePerMove" | "teethPerMove">,
  angle: Revolutions,
  options: RingRead = {},
): NearestTooth {
  checkKeys(options, ringKeys, "options");
  const { start, side } = checkZero(options);
  const reading = checkAngleFromZero(angle, "angle");
  const turned = side === "plus" ? reading.sub(start) : start.sub(reading);
  const within = turned.sub(turned.floor());
  const division = divisionOf(setting);
  const places = { division, count: whole(division.inverse().ceil()) };
  const near = nearestTooth(places, within);
  if (!options.ring) return { ...near, past: toRevolutions(near.past), alike: null };
  const { marksPerTurn, vernierLines } = checkScale(options.ring, "ring");
  const alike = teethWithin(places, within, rational(1, 2 * marksPerTurn * vernierLines));
  return { tooth: near.tooth, past: toRevolutions(near.past), sure: alike?.count === 1, alike };
}

/** The angle from one tooth to the next, in turns of the work. */
function divisionOf(setting: Pick<Setting, "spindlePerMove" | "teethPerMove">): Fraction {
  if (typeof setting !== "object" || setting === null)
    refuse("unreadable", "setting", `${quoted(setting)} is not a setting; give one, or its spindlePerMove and teethPerMove`);
  const { spindlePerMove, teethPerMove } = setting;
  const perMove = fromExact(checkAngle(spindlePerMove, "setting.spindlePerMove"));
  if (!(Number.isSafeInteger(teethPerMove) && teethPerMove > 0)) {
    const place = "setting.teethPerMove";
    refuse(
      wholeNumberFault(teethPerMove),
      place,
      `${quoted(teethPerMove)} is not a number of teeth; give a whole number above 0`,
    );
  }
  return perMove.div(teethPerMove);
}

function nearestTooth({ division, count }: Places, within: Fraction) {
  const index = within.div(division).floor();
  const before = index.mul(division);
  // After the last position comes the first one again.
  const isLast = whole(index) === count - 1n;
  const after = isLast ? rational(1) : before.add(division);
  const gap = after.sub(before);
  const isAfter = within.sub(before).mul(2).compare(gap) >= 0;
  const past = within.sub(isAfter ? after : before);
  return {
    tooth: isAfter && isLast ? 1 : 1 + Number(index.n) + (isAfter ? 1 : 0),
    past,
    sure: past.abs().mul(4).compare(gap) <= 0,
  };
}

/** The teeth that lie no further from a place than `reach`, which is at most a quarter of a turn. */
function teethWithin({ division, count }: Places, within: Fraction, reach: Fraction): TeethAlike | null {
  // A reach over the zero goes on among the teeth at the other end of the round.
  const runs = [1, 0, -1].flatMap((round) => {
    const here = within.add(round);
    const first = larger(whole(here.sub(reach).div(division).ceil()), 0n);
    const last = smaller(whole(here.add(reach).div(division).floor()), count - 1n);
    return first > last ? [] : [{ first: Number(first) + 1, last: Number(last) + 1, count: Number(last - first) + 1 }];
  });
  const [run, beyond] = runs;
  if (run === undefined) return null;
  return beyond === undefined ? run : { first: run.first, last: beyond.last, count: run.count + beyond.count };
}

function whole({ s, n }: Fraction): bigint {
  return s * n;
}

function larger(a: bigint, b: bigint): bigint {
  return a > b ? a : b;
}

function smaller(a: bigint, b: bigint): bigint {
  return a < b ? a : b;
}
