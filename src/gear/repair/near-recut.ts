import type { Head } from "../../head/head.ts";
import { type Position, positions } from "../../machine/positions.ts";
import { arcSecondsPerTurn } from "../../number/angle.ts";
import { errorAtRadius } from "../../number/error-at-radius.ts";
import { fromExact, rational } from "../../number/ratio.ts";
import type { NearMove, NearSetting } from "../../setting/near-setting.ts";
import type { RecutPlan } from "./damaged-teeth.ts";
import { type NearRecutFromStart, recutsFromStart, worstOf } from "./recut-from-start.ts";
import { inMoveOrder, type RecutOptions, type RecutPurpose } from "./recut-moves.ts";

/** One place of a repair by a move that does not close, with where that leaves it. */
export interface NearRecutMove {
  readonly toothSpace: number;
  readonly purpose: RecutPurpose;
  /** Its angle, ring and dial are those of the true place; its holes are where the move leaves the pin. */
  readonly position: Position;
  /** From the start space; + is too far. */
  readonly errorArcSeconds: number;
}

/** The places of a repair reached by one near move, made over and over from the sound start space. */
export interface NearRecutByMoves {
  readonly by: "moves";
  readonly setting: NearMove;
  /** In the order in which the moves reach them. */
  readonly places: readonly NearRecutMove[];
  /** The greatest error of any space to be recut, without sign. */
  readonly worstArcSeconds: number;
}

/** A way to the spaces to be recut that leaves an error. */
export type NearRecut = NearRecutByMoves | NearRecutFromStart;

/** In mm at the reference circle: what no file or cutter tells apart, so that the least work goes first; our own choice. */
const goodEnough = 0.005;
/** The kinds of near setting with the least work first, for places that are good enough either way. */
const leastWork = ["simple", "dial", "nearest-hole", "one-pair", "two-pair", "compound", "may-foul", "ring"];

/**
 * The ways to the spaces to be recut where nothing closes, the best first.
 *
 * A near move is off by the same error every time, so m moves from the sound space it is off by m
 * times that: over the few teeth of a repair far less than over the whole gear. Against it stand the
 * nearest hole, on the circle that does best for these spaces, the dial and the ring, each place from
 * the start space. Those that leave less than 0.005 mm at the reference circle come first, the
 * least work before the rest; then the smaller error.
 *
 * @param near - As {@link nearSettings} returns them for the count of the plan.
 * @param radius - Of the reference circle, in mm.
 */
export function nearRecuts(
  head: Head,
  plan: RecutPlan,
  near: readonly NearSetting[],
  radius: number,
  options: RecutOptions = {},
): readonly NearRecut[] {
  const byMoves = near.flatMap((setting) => (setting.moves === "equal" ? [recutByNearMoves(setting, plan, head, options)] : []));
  const all: readonly NearRecut[] = [...byMoves, ...recutsFromStart(head, plan, options)];
  // Half a tooth off, nobody could tell which space it is.
  const told = all.filter(({ worstArcSeconds }) => worstArcSeconds < arcSecondsPerTurn / plan.teeth / 2);
  const rank = (way: NearRecut) => (errorAtRadius(way.worstArcSeconds, radius).mm <= goodEnough ? 0 : 1);
  const work = (way: NearRecut) => leastWork.indexOf(way.by === "moves" ? way.setting.kind : way.by);
  return told.sort(
    (a, b) => rank(a) - rank(b) || (rank(a) === 0 ? work(a) - work(b) : 0) || a.worstArcSeconds - b.worstArcSeconds,
  );
}

function recutByNearMoves(setting: NearMove, plan: RecutPlan, head: Head, options: RecutOptions): NearRecutByMoves {
  const perMove = fromExact(setting.spindleTurned).sub(fromExact(setting.spindlePerMove)).mul(arcSecondsPerTurn);
  const visited = inMoveOrder(setting, plan);
  const there = positions(setting, { head, ...options, teeth: visited.map(({ tooth }) => tooth) });
  const places = visited.flatMap(({ toothSpace, purpose }, index) =>
    there.slice(index, index + 1).map((position) => ({
      toothSpace,
      purpose,
      position,
      errorArcSeconds: perMove.mul(rational(position.move)).valueOf(),
    })),
  );
  return { by: "moves", setting, places, worstArcSeconds: worstOf(places) };
}
