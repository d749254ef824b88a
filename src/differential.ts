import type { GearBox, GearTrain } from "./gear-train.ts";
import type { Gearing } from "./gearing.ts";
import type { OwnedCircle } from "./head.ts";
import { type Bench, crankMove, type Move, settingOf } from "./move.ts";
import { byHandling } from "./preference.ts";
import { fromExact, gcd } from "./ratio.ts";
import type { UnprovedSetting } from "./setting.ts";

/** A crank move with the plate ratio that makes it serve: numerator over denominator, lowest terms. */
export interface GearedMove {
  readonly turns: number;
  readonly spaces: number;
  readonly circle: number | null;
  readonly plate: string | null;
  readonly on: OwnedCircle;
  readonly with: boolean;
  readonly numerator: number;
  readonly denominator: number;
}

/** Which trains to take: how many pairs, and whether those that fit or those that may foul. */
export interface TrainChoice {
  readonly pairs: 1 | 2;
  readonly fits: boolean;
}

/**
 * Differential indexing: the plate is geared to the spindle and turns as the crank is moved over it.
 *
 * The law: over one move of the spindle, R·k/N = t + g·k/N, with t the crank's turns over the plate
 * and g the plate's turns for one of the spindle (+ with the crank). So **g = R − N·t/k** for any
 * move t = h/C on an owned circle. The handbook's rule, with an assumed count A, is the case
 * t = R/A, k = 1, where g = R(A − N)/A. Every h that keeps |g| within the head's greatest plate
 * ratio is tried on every circle, and each g is looked up among the trains that the gears make.
 *
 * @returns Settings in order of handling; for one move, trains of larger gears first.
 * @see *Practical Treatise on Milling and Milling Machines*, p. 57, where a quarter degree is one
 * space of 33: no assumed whole count.
 */
export function* differential(bench: Bench, move: Move, box: GearBox, { pairs, fits }: TrainChoice): Generator<UnprovedSetting> {
  const { gearing } = bench.head;
  if (gearing === null) return;
  const trainsOf = pairs === 1 ? box.onePair : box.twoPairs;
  const candidates: GearedMove[] = [];
  for (const candidate of crankMoves(bench, move, gearing)) {
    if (trainsOf(candidate.numerator, candidate.denominator).some((train) => (train.mayFoul === null) === fits))
      candidates.push(candidate);
  }
  candidates.sort(byHandling(bench.mounted));
  for (const candidate of candidates) {
    for (const train of trainsOf(candidate.numerator, candidate.denominator)) {
      if ((train.mayFoul === null) === fits) yield geared(bench, move, gearing, candidate, train);
    }
  }
}

/**
 * Every crank move whose plate ratio is within the head's greatest; whole turns once, on the first circle.
 *
 * @param beyond - Spaces to go on at either end of each circle, past the greatest plate ratio.
 */
export function* crankMoves(
  { worm, circles }: Bench,
  { divisions, teeth }: Move,
  gearing: Gearing,
  beyond = 0,
): Generator<GearedMove> {
  const greatest = fromExact(gearing.greatestPlateRatio);
  let wholeTurnsDone = false;
  for (const on of circles) {
    // g = (R·C·k − N·h) / (C·k), over the worm ratio's own denominator; all safe integers.
    const full = worm.n * on.holes * teeth;
    const denominator = worm.d * on.holes * teeth;
    const perSpace = divisions * worm.d;
    const reach = Math.floor((Number(greatest.n) * denominator) / Number(greatest.d));
    const first = Math.max(1, Math.ceil((full - reach) / perSpace) - beyond);
    const last = Math.floor((full + reach) / perSpace) + beyond;
    for (let spaces = first; spaces <= last; spaces += 1) {
      const numerator = full - perSpace * spaces;
      // A plate that stands still is simple indexing.
      if (numerator === 0 || Math.abs(numerator) > reach + beyond * perSpace) continue;
      const isWhole = spaces % on.holes === 0;
      if (isWhole && wholeTurnsDone) continue;
      const common = gcd(numerator, denominator);
      yield {
        turns: Math.floor(spaces / on.holes),
        spaces: spaces % on.holes,
        circle: isWhole ? null : on.holes,
        plate: isWhole ? null : on.plate,
        on,
        with: numerator > 0,
        numerator: Math.abs(numerator) / common,
        denominator: denominator / common,
      };
    }
    // Whole turns come back to the same hole on any circle, so one circle stands for all.
    wholeTurnsDone = true;
  }
}

/** The setting that makes a move with a train of its ratio. */
export function geared(bench: Bench, move: Move, gearing: Gearing, candidate: GearedMove, train: GearTrain): UnprovedSetting {
  const { onePair, twoPairs } = gearing.idlersWithCrank;
  const idlersWith = train.drivers.length === 1 ? onePair : twoPairs;
  const { numerator, denominator } = candidate;
  return {
    ...settingOf("differential", bench, move),
    ...crankMove(candidate.turns, candidate.spaces, candidate.on),
    plateStopPin: "out",
    gears: {
      drivers: train.drivers,
      driven: train.driven,
      idlers: candidate.with ? idlersWith : idlersWith + 1,
      direction: candidate.with ? "with" : "against",
      platePerSpindle: `${candidate.with ? "" : "-"}${numerator}${denominator === 1 ? "" : `/${denominator}`}`,
      mayFoul: train.mayFoul,
    },
  };
}
