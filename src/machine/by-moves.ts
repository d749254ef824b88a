import type Fraction from "fraction.js";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { floorMod, fromExact, rational } from "../number/ratio.ts";
import type { NearMove } from "../setting/near-setting.ts";
import type { SecondMove, Setting } from "../setting/setting.ts";
import type { MoveBetween, PlaceByMoves } from "./place.ts";
import { scalesAt } from "./readings.ts";
import { moveTo, toothAfter, turnedTo, type Work } from "./work.ts";

/** A setting that is made over and over. */
export type Repeated = Setting | NearMove;

/** How far one move misses, in turns of the work: nothing where the setting is exact. */
export function missPerMove(setting: Repeated): Fraction {
  return setting.exact ? rational(0) : fromExact(setting.spindleTurned).sub(fromExact(setting.spindlePerMove));
}

/**
 * Places one after the other, from where `made` moves have brought the work.
 *
 * After m moves of k teeth the work stands at tooth 1 + m·k (mod N), and the pin has gone m·h
 * spaces over its circle. A move that misses by e has missed by m·e there: it is counted from the
 * start, and not from the place before.
 */
export function placesByMoves(work: Work, setting: Repeated, teeth: readonly number[], made = 0): readonly PlaceByMoves[] {
  let before = made;
  return teeth.map((tooth) => {
    const place = placeAfter(work, setting, moveTo(work, setting, tooth), before);
    before = place.move;
    return place;
  });
}

/** All teeth in the order in which the moves reach them, after so many moves. */
export function teethAfterMove(work: Work, setting: Repeated, from: number): readonly number[] {
  return Array.from({ length: work.count - from }, (_, index) => toothAfter(work, setting, from + index));
}

/** Teeth in the order in which the moves reach them from the start. */
export function teethAsReached(work: Work, setting: Repeated, teeth: readonly number[]): readonly number[] {
  if (setting.teethPerMove === 1 && teeth.length === work.count) return teethAfterMove(work, setting, 0);
  return teeth
    .map((tooth) => ({ tooth, move: moveTo(work, setting, tooth) }))
    .sort((a, b) => a.move - b.move)
    .map(({ tooth }) => tooth);
}

/** Where all moves together end: back at the start. */
export function placeAtClose(work: Work, setting: Repeated): PlaceByMoves {
  return standingAfter(work, setting, work.count, between(setting, work.count, "forward"));
}

/** The place that so many moves from the start reach, gone to from the start. */
export function placeAtMove(work: Work, setting: Repeated, move: number): PlaceByMoves {
  return standingAfter(work, setting, move, between(setting, move, "forward"));
}

function placeAfter(work: Work, setting: Repeated, wanted: number, before: number): PlaceByMoves {
  const forward = floorMod(wanted - before, work.count);
  const goesBack = work.direction === "nearer" && work.count - forward < forward;
  const moves = goesBack ? work.count - forward : forward;
  return standingAfter(
    work,
    setting,
    goesBack ? before - moves : before + moves,
    between(setting, moves, goesBack ? "back" : "forward"),
  );
}

function standingAfter(work: Work, setting: Repeated, move: number, from: MoveBetween): PlaceByMoves {
  const tooth = toothAfter(work, setting, floorMod(move, work.count));
  const turned = turnedTo(work, tooth);
  const error = missPerMove(setting).mul(rational(move));
  const pin = travel(setting.turns, setting.spaces, setting.circle, move);
  const { dial, ring } = scalesAt(work.head, turned.add(error), work.zero);
  return {
    by: "moves",
    tooth,
    move,
    angle: scalesAt({ ...work.head, dial: null, ring: null }, turned, work.zero).angle,
    turns: pin.turns,
    hole: setting.circle === null ? null : (work.startHole + pin.spaces) % setting.circle,
    ...("second" in setting && { rearHole: rearHole(setting.second, move) }),
    errorArcSeconds: error.mul(arcSecondsPerTurn).valueOf(),
    dial,
    ring,
    from,
  };
}

function between(setting: Repeated, moves: number, direction: MoveBetween["direction"]): MoveBetween {
  const { turns, spaces } = travel(setting.turns, setting.spaces, setting.circle, moves);
  if (!("second" in setting)) return { direction, moves, turns, spaces };
  const second = { ...setting.second, ...travel(0, setting.second.spaces, setting.second.circle, moves) };
  return { direction, moves, turns, spaces, second };
}

/** Turns and spaces of so many moves together; below 0, whole turns back and spaces on from there. */
function travel(turns: number, spaces: number, circle: number | null, moves: number): { turns: number; spaces: number } {
  const holes = BigInt(circle ?? 1);
  const all = BigInt(moves) * (BigInt(turns) * holes + BigInt(spaces));
  const onward = ((all % holes) + holes) % holes;
  return { turns: Number((all - onward) / holes), spaces: Number(onward) };
}

function rearHole({ spaces, circle, direction }: SecondMove, moves: number): number {
  return floorMod((direction === "with" ? 1 : -1) * travel(0, spaces, circle, moves).spaces, circle);
}
