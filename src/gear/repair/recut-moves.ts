import type { Head } from "../../head/head.ts";
import { type HolePosition, nearestHoles } from "../../machine/nearest-holes.ts";
import { type Position, type PositionOptions, positions } from "../../machine/positions.ts";
import { refuse } from "../../number/errors.ts";
import { fromExact } from "../../number/ratio.ts";
import type { NearMove } from "../../setting/near-setting.ts";
import type { Setting } from "../../setting/setting.ts";
import type { RecutPlan } from "./damaged-teeth.ts";

/** What is done at a space of the gear. */
export type RecutPurpose = "set the cutter" | "recut" | "prove the count";

/** How the places of a repair are listed; the start space is tooth 1. */
export type RecutOptions = Omit<PositionOptions, "teeth">;

/** One place to go to, the crank's zero being at the sound start space. */
export interface RecutMove {
  readonly toothSpace: number;
  readonly purpose: RecutPurpose;
  /** Its `tooth` counts from the start space, which is tooth 1; its `from` is the move from the place before. */
  readonly position: Position;
}

/** One place to go to by the nearest hole, with where that leaves it. */
export interface RecutHole {
  readonly toothSpace: number;
  readonly purpose: RecutPurpose;
  /** Its `tooth` counts from the start space, which is tooth 1. */
  readonly position: HolePosition;
}

/**
 * The moves of a repair with an exact setting: the start space, each space to be recut in the order
 * in which the setting reaches them, and the sound space that proves the count.
 *
 * @throws {@link InputError} when the setting is for another count than the gear's.
 */
export function recutMoves(setting: Setting, plan: RecutPlan, options: RecutOptions = {}): readonly RecutMove[] {
  const visited = inMoveOrder(setting, plan);
  const there = positions(setting, { ...options, teeth: visited.map(({ tooth }) => tooth) });
  return visited.flatMap(({ toothSpace, purpose }, index) =>
    there.slice(index, index + 1).map((position) => ({ toothSpace, purpose, position })),
  );
}

/** The places of a repair, those between start and proof in the order in which a setting's moves reach them. */
export function inMoveOrder(setting: Setting | NearMove, plan: RecutPlan): readonly Place[] {
  const perMove = fromExact(setting.spindlePerMove);
  if (Number(perMove.d) !== plan.teeth) {
    refuse(
      "conflict",
      "setting",
      `it divides the work into ${perMove.d} and the gear has ${plan.teeth} teeth; give a setting for ${plan.teeth}`,
    );
  }
  const { start, cuts, proof } = places(plan);
  const inOrder = cuts
    .flatMap((place) => positions(setting, { teeth: [place.tooth] }).map(({ move }) => ({ place, move })))
    .sort((a, b) => a.move - b.move)
    .map(({ place }) => place);
  return [start, ...inOrder, proof];
}

/**
 * The same places by the nearest holes of a circle, each from the start space and not from the cut
 * before, where no exact setting is to be had.
 *
 * @throws {@link InputError} as {@link nearestHoles} does.
 */
export function recutHoles(head: Head, plan: RecutPlan, circle: number): readonly RecutHole[] {
  const holes = nearestHoles(head, plan.teeth, circle);
  return placesOf(plan).flatMap(({ toothSpace, purpose, tooth }) =>
    holes.slice(tooth - 1, tooth).map((position) => ({ toothSpace, purpose, position })),
  );
}

/** A place of a repair, before it is known how it is reached. */
export interface Place {
  readonly toothSpace: number;
  readonly purpose: RecutPurpose;
  /** In a list of positions whose first is the start space. */
  readonly tooth: number;
}

/** The places of a repair in the order in which they come to the cutter. */
export function placesOf(plan: RecutPlan): readonly Place[] {
  const { start, cuts, proof } = places(plan);
  return [start, ...cuts, proof];
}

function places({ teeth, startSpace, spaces, proofSpace }: RecutPlan) {
  const at = (toothSpace: number, teethFromStart: number, purpose: RecutPurpose): Place => ({
    toothSpace,
    purpose,
    tooth: (teethFromStart % teeth) + 1,
  });
  return {
    start: at(startSpace, 0, "set the cutter"),
    cuts: spaces.map(({ toothSpace, teethFromStart }) => at(toothSpace, teethFromStart, "recut")),
    proof: at(proofSpace.toothSpace, proofSpace.teethFromStart, "prove the count"),
  };
}
