import type { Gearing } from "../head/gearing.ts";
import type { Move } from "../setting/move.ts";
import type { SettingGears, UnprovedSetting } from "../setting/setting.ts";
import type { CrankMove, GearedMove } from "./crank-moves.ts";
import type { GearTrain } from "./gear-train.ts";
import { type Bench, crankSetting } from "./layout.ts";

/**
 * Differential indexing: the plate is geared to the spindle and turns as the crank is moved over it.
 *
 * The law: over one move of the spindle, R·k/N = t + g·k/N, with t the crank's turns over the plate
 * and g the plate's turns for one of the spindle (+ with the crank). So **g = R − N·t/k** for any
 * move t = h/C on an owned circle. The handbook's rule, with an assumed count A, is the case
 * t = R/A, k = 1, where g = R(A − N)/A. Every h that keeps |g| within the head's greatest plate
 * ratio is tried on every circle, and each g is looked up among the trains that the gears make.
 *
 * @param moves - The crank moves that have a train, in order of handling.
 * @param fits - Whether to take the trains that fit, or those that may foul.
 * @returns Settings in order of handling; for one move, trains of larger gears first.
 * @see *Practical Treatise on Milling and Milling Machines*, p. 57, where a quarter degree is one
 * space of 33: no assumed whole count.
 */
export function* differential(bench: Bench, move: Move, moves: readonly GearedMove[], fits: boolean): Generator<UnprovedSetting> {
  const { gearing } = bench.head;
  if (gearing === null) return;
  for (const geared of moves) {
    for (const train of geared.trains) {
      if ((train.mayFoul === null) === fits) yield gearedSetting(bench, move, gearing, geared, train);
    }
  }
}

/** The setting that makes a move with a train of its ratio. */
export function gearedSetting(
  bench: Bench,
  move: Move,
  gearing: Gearing,
  candidate: CrankMove,
  train: GearTrain,
): UnprovedSetting {
  const { onePair, twoPairs } = gearing.idlersWithCrank;
  const idlersWith = train.drivers.length === 1 ? onePair : twoPairs;
  const { numerator, denominator } = candidate;
  const gears: SettingGears = {
    drivers: train.drivers,
    driven: train.driven,
    idlers: candidate.with ? idlersWith : idlersWith + 1,
    direction: candidate.with ? "with" : "against",
    platePerSpindle: `${candidate.with ? "" : "-"}${numerator}${denominator === 1 ? "" : `/${denominator}`}`,
    mayFoul: train.mayFoul,
  };
  return Object.assign(crankSetting("differential", "out", bench, move, candidate), { gears });
}
