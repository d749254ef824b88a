import type Fraction from "fraction.js";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { floorMod, fromExact, rational } from "../number/ratio.ts";
import type { NearMove } from "../setting/near-setting.ts";
import type { SecondMove, Setting } from "../setting/setting.ts";
import type { MoveBetween, PlaceByMoves } from "./place.ts";
import { angleOnScales, scalesShow } from "./readings.ts";
import { moveTo, partsTo, toothAfter, type Work, wayRound } from "./work.ts";

/** A setting that is made over and over. */
export type Repeated = Setting | NearMove;

/** What one move of a setting does, in turns of the work. */
interface OneMove {
  readonly turns: Fraction;
  /** How far that is past what it should: nothing where the setting is exact. */
  readonly miss: Fraction;
}

function oneMove(setting: Repeated): OneMove {
  const should = fromExact(setting.spindlePerMove);
  if (setting.exact) return { turns: should, miss: rational(0) };
  const turns = fromExact(setting.spindleTurned);
  return { turns, miss: turns.sub(should) };
}

/**
 * Places one after the other, from where `made` moves have brought the work.
 *
 * After m moves of k teeth the work stands at tooth 1 + m·k (mod N), and the pin has gone m·h
 * spaces over its circle. A move that misses by e has missed by m·e there: it is counted from the
 * start, and not from the place before.
 */
export function placesByMoves(work: Work, setting: Repeated, teeth: readonly number[], made = 0): readonly PlaceByMoves[] {
  const one = oneMove(setting);
  let before = made;
  return teeth.map((tooth) => {
    const moves = wayRound(work, before, moveTo(work, setting, tooth));
    before += moves;
    return standingAfter(work, setting, one, before, between(setting, moves));
  });
}

/** The greatest error of places one after the other, in arc-seconds without sign: {@link placesByMoves} without the places. */
export function worstByMoves(
  work: Work,
  setting: Repeated,
  teeth: readonly number[],
  matters: ReadonlySet<number> | undefined,
): number {
  let [before, most] = [0, 0];
  for (const tooth of teeth) {
    before += wayRound(work, before, moveTo(work, setting, tooth));
    if (matters === undefined || matters.has(tooth)) most = Math.max(most, Math.abs(before));
  }
  return seconds(oneMove(setting).miss.abs().mul(rational(most)));
}

/** Where all moves together end: back at the start. */
export function placeAtClose(work: Work, setting: Repeated): PlaceByMoves {
  return placeAtMove(work, setting, work.count);
}

/** The place that so many moves from the start reach, gone to from the start. */
export function placeAtMove(work: Work, setting: Repeated, move: number): PlaceByMoves {
  return standingAfter(work, setting, oneMove(setting), move, between(setting, move));
}

function standingAfter(work: Work, setting: Repeated, one: OneMove, move: number, from: MoveBetween): PlaceByMoves {
  const tooth = toothAfter(work, setting, floorMod(move, work.count));
  const { turns, hole } = travel(setting, move);
  const made = rational(move);
  const { dial, ring } = scalesShow(work.head, one.turns.mul(made), work.zero);
  return {
    by: "moves",
    tooth,
    move,
    angle: angleOnScales(rational(partsTo(work, tooth), work.count), work.zero),
    turns,
    // The marks of a dial are no holes: the dial itself is read.
    hole: setting.circle === null || setting.method === "dial" ? null : (work.startHole + hole) % setting.circle,
    ...("second" in setting && { rearHole: rearHole(setting.second, move) }),
    errorArcSeconds: setting.exact ? 0 : seconds(one.miss.mul(made)),
    dial,
    ring,
    from,
  };
}

function seconds(turns: Fraction): number {
  return turns.mul(arcSecondsPerTurn).valueOf();
}

function between(setting: Repeated, way: number): MoveBetween {
  const moves = Math.abs(way);
  const { turns, hole: spaces } = travel(setting, moves);
  const on: MoveBetween = { direction: way < 0 ? "back" : "forward", moves, turns, spaces };
  if (!("second" in setting)) return on;
  const { direction, circle } = setting.second;
  const both = travel({ turns: 0, ...setting.second }, moves);
  return { ...on, second: { direction, circle, turns: both.turns, spaces: both.hole } };
}

/** Whole turns and the hole beyond them after so many moves; below 0, whole turns back and on from there. */
function travel(
  { turns, spaces, circle }: Pick<Repeated, "turns" | "spaces" | "circle">,
  moves: number,
): { turns: number; hole: number } {
  const holes = circle ?? 1;
  const all = moves * (turns * holes + spaces);
  if (!Number.isSafeInteger(all)) {
    const [many, each] = [BigInt(moves) * (BigInt(turns) * BigInt(holes) + BigInt(spaces)), BigInt(holes)];
    const hole = ((many % each) + each) % each;
    return { turns: Number((many - hole) / each), hole: Number(hole) };
  }
  const hole = floorMod(all, holes);
  return { turns: (all - hole) / holes, hole };
}

function rearHole({ spaces, circle, direction }: SecondMove, moves: number): number {
  return floorMod((direction === "with" ? 1 : -1) * travel({ turns: 0, spaces, circle }, moves).hole, circle);
}
