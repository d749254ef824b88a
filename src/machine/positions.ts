import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import { checkAngleFromZero } from "../number/angle.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { floorMod, fromExact, groupDigits, inverseModulo, rational, toExact } from "../number/ratio.ts";
import type { NearMove } from "../setting/near-setting.ts";
import type { SecondMove, Setting } from "../setting/setting.ts";
import { type DialPosition, mostPositions, scalesAt, type ZeroOptions } from "./readings.ts";

/** How the positions of a setting are listed. */
export interface PositionOptions extends ZeroOptions {
  /** The teeth to visit, in this order, 1 to the count; left out, all in the order the moves reach them. */
  readonly teeth?: readonly number[];
  /** The hole of its circle that the pin stands in at the start; left out, 0. */
  readonly startHole?: number;
  /** `"forward"` never turns back; `"nearer"` goes whichever way takes fewer moves. Left out, forward. */
  readonly direction?: "forward" | "nearer";
  /** The head whose dial and ring are to be read. */
  readonly head?: Pick<Head, "dial" | "ring" | "wormRatio">;
}

/** From one position to the next one listed. */
export interface MoveBetween {
  readonly direction: "forward" | "back";
  /** Moves of the setting that this makes; 0 stays where it is. */
  readonly moves: number;
  /** Turns and spaces of the crank, all moves together. */
  readonly turns: number;
  readonly spaces: number;
  /** Compound only: turns and spaces of the second part, all moves together. */
  readonly second?: Pick<SecondMove, "direction" | "spaces" | "circle"> & { readonly turns: number };
}

/** Where everything stands at one tooth. */
export interface Position extends DialPosition {
  /**
   * Moves of the setting from the start to here, those back taken off. A list that comes past the
   * start again counts on: with gears the pin then stands in other holes than the first time round.
   */
  readonly move: number;
  /** Whole turns of the pin over the plate since the start; below 0 where the list has gone back past it. */
  readonly turns: number;
  /** The hole of the circle the pin stands in, numbered from 0 the way the crank goes; null where any serves. */
  readonly hole: number | null;
  /** Compound only: the hole of the second circle at the rear pin, likewise. */
  readonly rearHole?: number;
  /** How to get here from the position listed before; the first is reached from tooth 1. */
  readonly from: MoveBetween;
}

/**
 * Lists the positions of a setting, each exact from the start.
 *
 * After m moves of k teeth the work stands at tooth 1 + m·k (mod N), and the pin has gone m·h
 * spaces over its circle. With more than one tooth per move the list follows the order in which
 * the teeth are visited. The positions of an angle are counted off move by move, until they come
 * back to the start: tooth 3 is two moves on. Of a near move the angle, ring and dial are those of
 * the true place, and turns and holes are where the moves leave the pin.
 *
 * @throws {@link InputError} when a tooth is not one of the count, or there are over 100,000 positions to list.
 */
export function positions(setting: Setting | NearMove, options: PositionOptions = {}): readonly Position[] {
  const work = layOut(setting, options);
  const asked = options.teeth?.map((tooth, index) => moveTo(work, checkTooth(tooth, work.count, `teeth[${index}]`)));
  if (asked === undefined && work.count > mostPositions) {
    refuse("too-many", "teeth", `${groupDigits(work.count)} positions are too many to list; name the teeth wanted`);
  }
  const moves = asked ?? Array.from({ length: work.count }, (_, move) => move);
  return inOrder(work, moves, 0);
}

interface Work {
  readonly setting: Setting | NearMove;
  readonly options: PositionOptions;
  /** Of the work, in turns; of count N in lowest terms p/N. */
  readonly perMove: Fraction;
  readonly count: number;
  readonly start: Fraction;
  readonly startHole: number;
}

function layOut(setting: Setting | NearMove, options: PositionOptions): Work {
  const perMove = fromExact(setting.spindlePerMove);
  const startHole = options.startHole ?? 0;
  const holes = setting.circle ?? 1;
  if (!Number.isInteger(startHole) || startHole < 0 || startHole >= holes) {
    refuse(wholeNumberFault(startHole), "startHole", `${quoted(startHole)} is not a hole of the circle; give 0 to ${holes - 1}`);
  }
  return {
    setting,
    options,
    perMove,
    count: Number(perMove.d),
    start: checkAngleFromZero(options.startAngle ?? "0", "startAngle"),
    startHole,
  };
}

/** Checks the number of a tooth. */
export function checkTooth(tooth: unknown, count: number, place: string): number {
  if (typeof tooth === "number" && Number.isInteger(tooth) && tooth >= 1 && tooth <= count) return tooth;
  return refuse(
    wholeNumberFault(tooth),
    place,
    `${quoted(tooth)} is not a tooth of ${groupDigits(count)}; give 1 to ${groupDigits(count)}`,
  );
}

function moveTo({ count, setting: { teethPerMove } }: Work, tooth: number): number {
  if (count === 1) return 0;
  return Number((BigInt(tooth - 1) * BigInt(inverseModulo(floorMod(teethPerMove, count), count))) % BigInt(count));
}

function toothAfter({ count, setting: { teethPerMove } }: Work, move: number): number {
  return 1 + Number((BigInt(move) * BigInt(teethPerMove)) % BigInt(count));
}

/** Positions one after the other, from where `made` moves have brought the work. */
function inOrder(work: Work, moves: readonly number[], made: number): readonly Position[] {
  let before = made;
  return moves.map((wanted) => {
    const position = positionAfter(work, wanted, before);
    before = position.move;
    return position;
  });
}

function positionAfter(work: Work, wanted: number, before: number): Position {
  const { setting, options, perMove, start, startHole } = work;
  const from = between(work, before, wanted);
  const move = before + (from.direction === "back" ? -from.moves : from.moves);
  const angle = start.add(perMove.mul(rational(wanted)).mod(1));
  const pin = travel(setting.turns, setting.spaces, setting.circle, move);
  return {
    tooth: toothAfter(work, wanted),
    move,
    angle: toExact(angle),
    turns: pin.turns,
    hole: setting.circle === null ? null : (startHole + pin.spaces) % setting.circle,
    ...(setting.method === "compound" && { rearHole: rearHole(setting.second, move) }),
    ...(options.head ? scalesAt(options.head, angle, options.side ?? "plus") : { dial: null, ring: null }),
    from,
  };
}

function between({ setting, options, count }: Work, before: number, after: number): MoveBetween {
  const forward = floorMod(after - before, count);
  const goesBack = options.direction === "nearer" && count - forward < forward;
  const moves = goesBack ? count - forward : forward;
  const { turns, spaces } = travel(setting.turns, setting.spaces, setting.circle, moves);
  const second =
    setting.method === "compound"
      ? { ...setting.second, ...travel(0, setting.second.spaces, setting.second.circle, moves) }
      : undefined;
  return { direction: goesBack ? "back" : "forward", moves, turns, spaces, ...(second && { second }) };
}

/** Turns and spaces of so many moves together; below 0, whole turns back and spaces on from there. */
function travel(turns: number, spaces: number, circle: number | null, moves: number): { turns: number; spaces: number } {
  const holes = circle ?? 1;
  const all = BigInt(moves) * BigInt(turns * holes + spaces);
  const onward = ((all % BigInt(holes)) + BigInt(holes)) % BigInt(holes);
  return { turns: Number((all - onward) / BigInt(holes)), spaces: Number(onward) };
}

function rearHole({ spaces, circle, direction }: SecondMove, moves: number): number {
  return floorMod((direction === "with" ? 1 : -1) * travel(0, spaces, circle, moves).spaces, circle);
}

/**
 * What comes next after an interruption: the positions still to be visited after a tooth, in the
 * order of the moves.
 *
 * @param tooth - The last tooth that is done.
 */
export function positionsAfter(
  setting: Setting,
  tooth: number,
  options: Omit<PositionOptions, "teeth"> = {},
): readonly Position[] {
  const work = layOut(setting, options);
  const done = moveTo(work, checkTooth(tooth, work.count, "tooth"));
  const left = work.count - done - 1;
  if (left > mostPositions)
    refuse("too-many", "tooth", `${groupDigits(left)} positions are too many to list; name the teeth wanted`);
  return inOrder(
    work,
    Array.from({ length: left }, (_, index) => done + 1 + index),
    done,
  );
}

/**
 * Positions to check the work at on the way: after a quarter, a half and three quarters of the moves.
 *
 * @returns Up to three; fewer where the count is below 4.
 */
export function checkPositions(setting: Setting, options: Omit<PositionOptions, "teeth"> = {}): readonly Position[] {
  const work = layOut(setting, options);
  const quarters = [1, 2, 3].map((quarter) => Math.floor((quarter * work.count) / 4)).filter((move) => move > 0);
  return [...new Set(quarters)].map((move) => positionAfter(work, move, 0));
}
