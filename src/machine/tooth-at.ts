import { checkAngleFromZero } from "../number/angle.ts";
import { type Exact, fromExact, rational, toExact } from "../number/ratio.ts";
import type { Setting } from "../setting/setting.ts";
import type { ZeroOptions } from "./readings.ts";

/** The tooth that lies nearest to an angle of the spindle, and how far off the angle is. */
export interface NearestTooth {
  readonly tooth: number;
  /** The reading less the tooth's true place, in revolutions; + is past it. */
  readonly past: Exact;
  /**
   * Whether the reading is within a quarter of a division of the tooth. Where it is not, the scale is
   * too coarse for the count, or its zero, its side or the count is not what was said.
   */
  readonly sure: boolean;
}

/**
 * Finds where the work stands from a reading of the degree ring. Of an angle that does not divide
 * the turn, it is one of the positions of the first time round.
 *
 * @param angle - The reading as an angle from the zero, in revolutions, 0 or more.
 * @throws {@link InputError} when the reading or the start angle is below 0 or over 1,000 revolutions.
 */
export function toothAt(
  setting: Pick<Setting, "spindlePerMove" | "teethPerMove">,
  angle: Exact,
  options: ZeroOptions = {},
): NearestTooth {
  const start = checkAngleFromZero(options.startAngle ?? "0", "startAngle");
  const reading = checkAngleFromZero(angle, "angle");
  const fromStart = (options.side === "minus" ? reading.neg() : reading).sub(start);
  const round = fromStart.sub(fromStart.floor());
  const division = fromExact(setting.spindlePerMove).div(setting.teethPerMove);
  const index = round.div(division).floor();
  const before = index.mul(division);
  const next = before.add(division);
  // After the last position comes the first one again.
  const isLast = next.compare(1) >= 0;
  const after = isLast ? rational(1) : next;
  const gap = after.sub(before);
  const isAfter = round.sub(before).mul(2).compare(gap) >= 0;
  const past = round.sub(isAfter ? after : before);
  return {
    tooth: isAfter && isLast ? 1 : 1 + Number(index.n) + (isAfter ? 1 : 0),
    past: toExact(past),
    sure: past.abs().mul(4).compare(gap) <= 0,
  };
}
