import {
  type Head,
  type NearMove,
  type Place,
  type PlaceByHole,
  type PlaceByMoves,
  type Reading,
  type Setting,
  type Side,
  type Target,
  wormRatioOf,
} from "../../src/index.ts";
import { add, atStart, holeAt, moved, type Stand, spindle, type Turns, turnsOf, withinTurn } from "./bench.ts";

/*
 * A list of places worked through by hand: the head stands on the bench, every move that the list says
 * is made, and it is looked where pins, work and scales then are. Whole numbers of its own; nothing of
 * src/ but the shapes of a list.
 */

/** The work on the head, as a person lays it out. */
export interface Bench {
  readonly head: Head;
  readonly target: Target;
  readonly startTooth?: number | undefined;
  readonly startHole?: number | undefined;
  readonly startAngle?: string | undefined;
  readonly side?: Side | undefined;
}

/** Where everything stands once a place of a list is reached. */
export interface Stood {
  /** The whole turns of the pin over the plate since the start, downwards where it has gone back past it. */
  readonly turns: number;
  readonly hole: number | null;
  readonly rearHole?: number;
  readonly smallHole?: number;
  readonly vernierHole?: number;
  /** How far the work has turned since the start, whole turns among it. */
  readonly work: Turns;
  /** How far that is past the true place. */
  readonly off: Turns;
}

/** The teeth of the work: the count, or as many as an angle has places until it is back at the start. */
export function teethOf(target: Target): number {
  return "divisions" in target ? target.divisions : Number(turnsOf(target.angle).d);
}

/** Where a tooth truly lies from the start, within one turn of the work. */
export function trueTurn({ target, startTooth = 1 }: Bench, tooth: number): Turns {
  const step = "divisions" in target ? { n: 1n, d: BigInt(target.divisions) } : turnsOf(target.angle);
  return withinTurn(scaled(BigInt(tooth - startTooth), step));
}

/** Makes the moves of a list, one after the other, from where so many moves have brought the head. */
export function madeByHand(bench: Bench, setting: Setting | NearMove, list: readonly PlaceByMoves[], made = 0): readonly Stood[] {
  const forward = { direction: "forward", moves: 1, turns: setting.turns, spaces: setting.spaces } as const;
  const both = "small" in setting ? { ...forward, small: setting.small } : forward;
  const one = "second" in setting ? { ...forward, second: { ...setting.second, turns: 0 } } : both;
  let stand = manyOf(moved(atStart, one, setting), BigInt(made));
  let moves = made;
  return list.map(({ from }) => {
    stand = moved(stand, from, setting);
    moves += from.direction === "forward" ? from.moves : -from.moves;
    const work = spindle(stand, setting);
    return {
      turns: wholeTurns(stand.pin),
      ...(hasHoles(setting) ? standsIn(stand, setting, bench) : { hole: null }),
      ...("second" in setting && { rearHole: holeAt(stand.rear, setting.second.circle) }),
      ...("small" in setting && { smallHole: holeAt(stand.small, setting.small.circle) }),
      work,
      off: add(work, scaled(-BigInt(moves), turnsOf(setting.spindlePerMove))),
    };
  });
}

/** Makes the moves of a list set to the nearest holes. `from` is the tooth that the work stands at, with how far the pin has gone. */
export function countedByHand(
  bench: Bench,
  circle: number,
  list: readonly PlaceByHole[],
  from: Turns = { n: 0n, d: 1n },
  worm: Turns = turnsOf(wormRatioOf(bench.head)),
): readonly Stood[] {
  let pin = from;
  return list.map((place) => {
    const spaces = BigInt(place.from.turns) * BigInt(circle) + BigInt(place.from.spaces);
    pin = add(pin, { n: place.from.direction === "forward" ? spaces : -spaces, d: BigInt(circle) });
    const work = over(pin, worm);
    return { turns: wholeTurns(pin), hole: holeAt(pin, circle, bench.startHole), work, off: pastTooth(bench, place, work) };
  });
}

/** How far the work is past the place of a tooth that is the nearest such, the whole turns left out. */
export function pastTooth(bench: Bench, { tooth }: Pick<Place, "tooth">, work: Turns): Turns {
  const past = withinTurn(add(work, scaled(-1n, trueTurn(bench, tooth))));
  return 2n * past.n > past.d ? add(past, { n: -1n, d: 1n }) : past;
}

/** The whole turns of a scale since its zero and the steps beyond them, put together to one number of steps. */
export function stepsRead({ marksPerTurn, vernierLines }: NonNullable<Head["dial"]>, { turns, mark, line }: Reading): bigint {
  return BigInt(turns) * BigInt(marksPerTurn * vernierLines) + BigInt(mark * vernierLines + line);
}

/** What a scale shows when the work has turned so far: the step that comes nearest, and how much further that is. */
export function shownByHand(bench: Bench, by: "dial" | "ring", work: Turns): { readonly step: bigint; readonly off: Turns } {
  const scale = bench.head[by];
  if (scale === null) throw new Error(`the head has no ${by}`);
  const perTurn = scaled(BigInt(scale.marksPerTurn * scale.vernierLines), perSpindle(bench.head, by));
  const way = bench.side === "minus" ? -1n : 1n;
  const place = times(add(turnsOf(bench.startAngle ?? "0"), scaled(way, work)), perTurn);
  // Of two that are as near, the one further on.
  const below = floorOf(place);
  const above = 2n * (place.n - below * place.d);
  const onward = above === place.d ? (way === 1n ? 1n : 0n) : above > place.d ? 1n : 0n;
  const step = below + onward;
  return { step, off: over(scaled(way, add({ n: step, d: 1n }, scaled(-1n, place))), perTurn) };
}

/** How often the zero of a scale comes under its line on the way down from one step to another; below 0 on the way up. */
export function zerosDown(from: bigint, to: bigint, stepsPerTurn: bigint): number {
  let zeros = 0;
  for (let at = ceilTo(from, stepsPerTurn) - stepsPerTurn; at >= to; at -= stepsPerTurn) zeros += 1;
  for (let at = ceilTo(from, stepsPerTurn); at < to; at += stepsPerTurn) zeros -= 1;
  return zeros;
}

/** What a reading comes to in turns of the spindle, on the minus side counted down from where it stands at the start. */
export function readTurns(scale: NonNullable<Head["dial"]>, reading: Reading, by: "dial" | "ring", bench: Bench): Turns {
  const perTurn = BigInt(scale.marksPerTurn * scale.vernierLines);
  let steps = stepsRead(scale, reading);
  if (bench.side === "minus") {
    // The zeros are those passed since the start: the step lies as many turns of the scale below it.
    const start = shownByHand(bench, by, { n: 0n, d: 1n }).step;
    const within = stepsRead(scale, { ...reading, turns: 0 });
    steps = ceilTo(start, perTurn) - BigInt(reading.turns) * perTurn - perTurn + within;
    if (within === 0n) steps += perTurn;
  }
  return over({ n: steps, d: perTurn }, perSpindle(bench.head, by));
}

/** Whether a turn of the work, whichever way, is no more than a part of a turn of what has `turns` of it. */
export function isNoMoreThan({ n, d }: Turns, part: Turns, turns: Turns): boolean {
  const size = n < 0n ? -n : n;
  return size * turns.n * part.d <= part.n * d * turns.d;
}

/** Turns of a scale for one of the spindle. */
export function perSpindle({ wormRatio }: Head, by: "dial" | "ring"): Turns {
  return by === "dial" ? turnsOf(wormRatioOf({ wormRatio })) : { n: 1n, d: 1n };
}

/** Turns of the work in seconds of arc. */
export function secondsOf({ n, d }: Turns): number {
  return Number(n * 1_296_000n) / Number(d);
}

/** Whether a setting counts holes: whole turns come back to any, and a dial has none. */
function hasHoles({ circle, method }: Setting | NearMove): boolean {
  return circle !== null && method !== "dial";
}

/** The hole of the circle; through a row beside a direct plate as many places are one space of it. */
function standsIn({ pin }: Stand, setting: Setting | NearMove, { startHole = 0 }: Bench): Pick<Stood, "hole" | "vernierHole"> {
  const row = setting.method === "direct" ? setting.vernierHoles : undefined;
  const place = holeAt(pin, setting.circle ?? 1, startHole * (row ?? 1));
  return row === undefined ? { hole: place } : { hole: Math.floor(place / row), vernierHole: place % row };
}

function manyOf({ pin, rear, small }: Stand, times: bigint): Stand {
  return { pin: scaled(times, pin), rear: scaled(times, rear), small: scaled(times, small) };
}

function wholeTurns(turns: Turns): number {
  return Number(floorOf(turns));
}

function floorOf({ n, d }: Turns): bigint {
  return n >= 0n ? n / d : -((-n + d - 1n) / d);
}

function ceilTo(step: bigint, multiple: bigint): bigint {
  const rest = ((step % multiple) + multiple) % multiple;
  return rest === 0n ? step : step + multiple - rest;
}

function scaled(by: bigint, { n, d }: Turns): Turns {
  return add({ n: by * n, d }, { n: 0n, d: 1n });
}

function times(a: Turns, b: Turns): Turns {
  return add({ n: a.n * b.n, d: a.d * b.d }, { n: 0n, d: 1n });
}

function over(a: Turns, b: Turns): Turns {
  return b.n < 0n ? times(a, { n: -b.d, d: -b.n }) : times(a, { n: b.d, d: b.n });
}
