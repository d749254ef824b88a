import {
  type AnyPlace,
  exactSettings,
  type Head,
  type Method,
  type NearSetting,
  nearSettings,
  type PlanOptions,
  type PreparedHead,
  planJob,
  type Setting,
} from "../../src/index.ts";

/** A place as the scales show it. */
export type ReadPlace = Pick<AnyPlace, "tooth" | "dial" | "ring"> & {
  /** Whole turns of the handwheel since the start; null where the moves are no whole turns. */
  readonly wholeTurns: number | null;
};

/** A scale of a head. */
export type ScaleName = "dial" | "ring";

/** How the places of a count are set off the scales of a head. */
export interface ReadCount {
  readonly divisions: number;
  /** The scale that the hand sets. */
  readonly by: ScaleName;
  /** The greatest error of any place, in arc-seconds without sign; 0 where every place falls on a mark. */
  readonly worstArcSeconds: number;
  /** More than one where the places fall on marks only so, the work going round as often. */
  readonly teethPerMove: number;
  /** The place after the first move; null of a count of 1. */
  first(): ReadPlace | null;
  /** Every place, in the order in which they are set. */
  places(): readonly ReadPlace[];
}

/** Whether a head is set by readings alone: it has no index plate, but a scale. */
export function isReadHead({ plates, dial, ring }: Head): boolean {
  return plates.length === 0 && (dial !== null || ring !== null);
}

/** Lengths of errors are told at this radius, in millimetres. */
export const toldAtMm = 50;

/** The scale that places are set by wherever a head has both. */
export function usualScale({ dial }: Head): ScaleName {
  return dial === null ? "ring" : "dial";
}

/** Moves that scales tell: a crank over a plate is told by its holes. */
function methodsOn({ plates }: Head): readonly Method[] {
  return plates.length === 0 ? ["simple", "dial"] : ["dial"];
}

/**
 * How a count is set off the scales of a head: from mark to mark where all places fall on marks, else
 * each place from one zero.
 *
 * @param near - The near settings of the count; none where it has an exact one.
 * @returns Null where the places would run into each other, half a step from where they should be.
 */
export function readCount(on: PreparedHead, divisions: number, near: readonly NearSetting[]): ReadCount | null {
  const [exact] = exactSettings(on, { divisions }, { methods: methodsOn(on.head) });
  if (exact !== undefined) return markToMark(on, divisions, exact);
  // What is exact otherwise, by a direct plate, comes without near settings.
  const all = near.length > 0 ? near : nearSettings(on, { divisions });
  const setting = all.find(({ kind }) => kind === "dial") ?? all.find(({ kind }) => kind === "ring");
  return setting === undefined ? null : fromZero(on, divisions, setting);
}

function markToMark(on: PreparedHead, divisions: number, setting: Setting): ReadCount {
  const { teethPerMove, circle } = setting;
  const wholeTurns = circle === null;
  return {
    divisions,
    by: usualScale(on.head),
    worstArcSeconds: 0,
    teethPerMove,
    first: () => nextPlace(on, divisions, { setting }, 1 + (teethPerMove % divisions), wholeTurns),
    places: () => placesOf(on, divisions, { setting }, wholeTurns),
  };
}

function fromZero(on: PreparedHead, divisions: number, setting: NearSetting): ReadCount {
  return {
    divisions,
    by: setting.kind === "ring" ? "ring" : "dial",
    worstArcSeconds: setting.worstArcSeconds,
    teethPerMove: 1,
    first: () => nextPlace(on, divisions, { setting }, 2, false),
    places: () => placesOf(on, divisions, { setting }, false),
  };
}

/** Whether the ring of a head has a mark for every place of a count: that it is off is how it is read. */
export function fallsOnRing(near: readonly NearSetting[]): boolean {
  return near.some(({ kind, worstArcSeconds }) => kind === "ring" && worstArcSeconds === 0);
}

function nextPlace(
  on: PreparedHead,
  divisions: number,
  options: PlanOptions,
  tooth: number,
  wholeTurns: boolean,
): ReadPlace | null {
  return divisions === 1 ? null : (placesOf(on, divisions, { ...options, teeth: [tooth] }, wholeTurns)[0] ?? null);
}

function placesOf(on: PreparedHead, divisions: number, options: PlanOptions, wholeTurns: boolean): readonly ReadPlace[] {
  const plan = planJob(on, { divisions }, options);
  if (!plan.planned) throw new Error(`turns-and-holes is at fault, please report it: ${divisions} has a setting and no places`);
  return plan.places.map((place) => ({
    tooth: place.tooth,
    dial: place.dial,
    ring: place.ring,
    wholeTurns: wholeTurns && place.by === "moves" ? place.turns : null,
  }));
}
