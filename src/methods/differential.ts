import type { Gearing } from "../head/gearing.ts";
import type { Head } from "../head/head.ts";
import { ratioOf } from "../number/ratio.ts";
import type { KindOf } from "../setting/kind.ts";
import type { Move } from "../setting/move.ts";
import type { SettingBy, SettingGears } from "../setting/setting.ts";
import type { CrankMove, GearedMove } from "./crank-moves.ts";
import type { GearTrain } from "./gear-train.ts";
import type { Law, Trial } from "./law.ts";
import { type HeadLayout, partOfTurn } from "./layout.ts";
import { lacksCircles } from "./owned-circles.ts";
import { hasIdlers, lacksTrain } from "./owned-gears.ts";

/**
 * Differential indexing: the plate is geared to the spindle and turns as the crank is moved over it.
 *
 * The law: over one move of the spindle, R·k/N = t + g·k/N, with t the crank's turns over the plate
 * and g the plate's turns for one of the spindle (+ with the crank). So **g = R − N·t/k** for any
 * move t = h/C on an owned circle. The handbook's rule, with an assumed count A, is the case
 * t = R/A, k = 1, where g = R(A − N)/A. Every h that keeps |g| within the head's greatest plate
 * ratio is tried on every circle, and each g is looked up among the trains that the gears make.
 *
 * @see *Practical Treatise on Milling and Milling Machines*, p. 57, where a quarter degree is one
 * space of 33: no assumed whole count.
 */
export const differential: Law<"differential"> = {
  places: { "one-pair": 4, "two-pair": 5, block: 7, "may-foul": 9 },
  plain: false,
  find: gearedOfKind,
  lacks({ circle, plate, face, gears }, head) {
    // From elsewhere a setting may come without them.
    if (!gears) return "has no gears";
    return lacksCircles(head, plate, face, circle === null ? [] : [circle]) ?? lacksTrain(gears, head);
  },
  whyNot({ head }, target, teethPerMove) {
    if (head.gearing === null) return { code: "without", part: "gearing" };
    if (head.gears.length < 2) return { code: "without", part: "change-gears" };
    const { greatestPlateRatio } = head.gearing;
    return { code: "no-train", teethPerMove: "angle" in target ? 1 : teethPerMove, greatestPlateRatio };
  },
};

function* gearedOfKind(kind: KindOf<"differential">, layout: HeadLayout, trial: Trial): Generator<SettingBy<"differential">> {
  const { gearing } = layout.head;
  if (gearing === null) return;
  const settings = (move: Move, pairs: 1 | 2, fits: boolean) =>
    gearedSettings(layout, gearing, move, trial.geared(move, pairs), fits);
  switch (kind) {
    case "one-pair":
      yield* settings(trial.first, 1, true);
      return;
    case "two-pair":
      yield* settings(trial.first, 2, true);
      return;
    case "block":
      for (const move of trial.moves().slice(1)) {
        yield* settings(move, 1, true);
        yield* settings(move, 2, true);
      }
      return;
    case "may-foul":
      for (const move of trial.moves()) yield* settings(move, 2, false);
  }
}

/** The settings of the moves that have a train which fits, or which may foul; of one move, trains of larger gears first. */
function* gearedSettings(
  layout: HeadLayout,
  gearing: Gearing,
  move: Move,
  moves: readonly GearedMove[],
  fits: boolean,
): Generator<SettingBy<"differential">> {
  for (const geared of moves) {
    for (const train of geared.trains) {
      if ((train.mayFoul === null) === fits && canIdle(layout.head, gearing, geared, train))
        yield gearedSetting(layout, move, gearing, geared, train);
    }
  }
}

/** The setting that makes a move with a train of its ratio; written out, as thousands are made for a table: see crank.ts. */
export function gearedSetting(
  { wormRatio }: HeadLayout,
  { divisions, teeth }: Move,
  gearing: Gearing,
  crank: CrankMove,
  train: GearTrain,
): SettingBy<"differential"> {
  const { turns, spaces, on } = crank;
  return spaces === 0
    ? {
        method: "differential",
        teethPerMove: teeth,
        wormRatio,
        spindlePerMove: partOfTurn(divisions, teeth),
        turns,
        spaces: 0,
        circle: null,
        plate: null,
        face: null,
        armsEnclose: null,
        plateStopPin: "out",
        gears: gearsOf(gearing, crank, train),
      }
    : {
        method: "differential",
        teethPerMove: teeth,
        wormRatio,
        spindlePerMove: partOfTurn(divisions, teeth),
        turns,
        spaces,
        circle: on.holes,
        plate: on.plate,
        face: on.face,
        armsEnclose: spaces + 1,
        plateStopPin: "out",
        gears: gearsOf(gearing, crank, train),
      };
}

function gearsOf(gearing: Gearing, { with: isWith, numerator, denominator }: CrankMove, train: GearTrain): SettingGears {
  return {
    drivers: train.drivers,
    driven: train.driven,
    idlers: idlersFor(gearing, train.drivers.length, isWith),
    direction: isWith ? "with" : "against",
    platePerSpindle: ratioOf(isWith ? numerator : -numerator, denominator),
    mayFoul: train.mayFoul,
  };
}

/** Whether the idlers that a train needs to turn the plate the right way are to be had. */
export function canIdle(
  head: Head,
  gearing: Gearing,
  { with: isWith }: Pick<CrankMove, "with">,
  { drivers }: GearTrain,
): boolean {
  const pairs = drivers.length;
  return hasIdlers(head, 2 * pairs, idlersFor(gearing, pairs, isWith));
}

/** The idlers that turn the plate one way or the other: each idler more turns it the other way round. */
export function idlersFor({ idlersWithCrank }: Gearing, pairs: number, isWith: boolean): number {
  const idlersWith = pairs === 1 ? idlersWithCrank.onePair : idlersWithCrank.twoPairs;
  return isWith ? idlersWith : idlersWith + 1;
}
