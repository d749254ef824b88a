import { floorMod, fromExact } from "../number/ratio.ts";
import type { NearMove } from "../setting/near-setting.ts";
import type { SecondMove, Setting } from "../setting/setting.ts";
import { holeOf } from "./from-zero.ts";
import type { MoveBetween, PlaceByMoves } from "./place.ts";
import { angleOnScales, arcSecondsOf, scalesReader, type Turned, turnedBy } from "./scale-reader.ts";
import { moveTo, partsTo, toothAfter, type Work, wayRound } from "./work.ts";

/** A setting that is made over and over. */
export type Repeated = Setting | NearMove;

/**
 * Places one after the other, from where `made` moves have brought the work.
 *
 * After m moves of k teeth the work stands at tooth 1 + m·k (mod N), and the pin has gone m·h
 * spaces over its circle. A move that misses by e has missed by m·e there: it is counted from the
 * start, and not from the place before.
 */
export function placesByMoves(work: Work, setting: Repeated, teeth: readonly number[], made = 0): readonly PlaceByMoves[] {
  const stand = standings(work, setting);
  let before = made;
  // Most are as many moves from the one before as that was.
  let [last, from] = [0, between(setting, 0)];
  return teeth.map((tooth) => {
    const moves = wayRound(work, before, moveTo(work, setting, tooth));
    before += moves;
    if (moves !== last) [last, from] = [moves, between(setting, moves)];
    return stand(before, from);
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
  const { n, d } = missOf(setting);
  return Math.abs(arcSecondsOf(n * BigInt(most), d));
}

/** Where all moves together end: back at the start. */
export function placeAtClose(work: Work, setting: Repeated): PlaceByMoves {
  return placeAtMove(work, setting, work.count);
}

/** The place that so many moves from the start reach, gone to from the start. */
export function placeAtMove(work: Work, setting: Repeated, move: number): PlaceByMoves {
  return standings(work, setting)(move, between(setting, move));
}

/** How far one move turns the work. */
function turnedOf(setting: Repeated): Turned {
  return turnedBy(fromExact(setting.exact ? setting.spindlePerMove : setting.spindleTurned));
}

/** How far that is past what it should: nothing where the setting is exact. */
function missOf(setting: Repeated): Turned {
  if (setting.exact) return { n: 0n, d: 1n };
  return turnedBy(fromExact(setting.spindleTurned).sub(fromExact(setting.spindlePerMove)));
}

/** Where everything stands after so many moves. What is the same for all places of a list is worked out once. */
function standings(work: Work, setting: Repeated): (move: number, from: MoveBetween) => PlaceByMoves {
  const [one, miss] = [turnedOf(setting), missOf(setting)];
  const scalesShow = scalesReader(work.head, work.zero);
  return (move, from) => {
    const tooth = toothAfter(work, setting, floorMod(move, work.count));
    const { turns, hole } = travel(setting, move);
    const made = BigInt(move);
    const { dial, ring } = scalesShow({ n: one.n * made, d: one.d });
    const place: PlaceByMoves = {
      by: "moves",
      tooth,
      move,
      angle: angleOnScales({ n: BigInt(partsTo(work, tooth)), d: BigInt(work.count) }, work.zero),
      turns,
      // The marks of a dial are no holes: the dial itself is read.
      ...(setting.circle === null || setting.method === "dial"
        ? { hole: null }
        : holeOf(work, hole, setting.circle, "vernierHoles" in setting ? setting.vernierHoles : undefined)),
      errorArcSeconds: arcSecondsOf(miss.n * made, miss.d),
      dial,
      ring,
      from,
    };
    if ("small" in setting) return { ...place, smallHole: travel(setting.small, move).hole };
    return "second" in setting ? { ...place, rearHole: rearHole(setting.second, move) } : place;
  };
}

function between(setting: Repeated, way: number): MoveBetween {
  const moves = Math.abs(way);
  const { turns, hole: spaces } = travel(setting, moves);
  const on: MoveBetween = { direction: way < 0 ? "back" : "forward", moves, turns, spaces };
  if ("small" in setting) {
    const { circle } = setting.small;
    const small = travel(setting.small, moves);
    return { ...on, small: { circle, turns: small.turns, spaces: small.hole } };
  }
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
