import type { UnprovedSetting } from "../../src/index.ts";

/*
 * A head on the bench, moved as a setting or a list says: whole holes and gears only, in whole numbers
 * of its own. It shares nothing with src/ but the shape of a setting.
 */

/** A ratio of whole numbers, the second above 0. */
export interface Turns {
  readonly n: bigint;
  readonly d: bigint;
}

/** Where the parts of the head stand, in turns since the start. */
export interface Stand {
  /** The pin over the plate. */
  readonly pin: Turns;
  /** The second part of a compound move: crank and plate together, + with the crank. */
  readonly rear: Turns;
  /** The small crank of a wide range head over its plate. */
  readonly small: Turns;
}

/** A move of a list, forward or back. */
export interface ListedMove {
  readonly direction: "forward" | "back";
  readonly turns: number;
  readonly spaces: number;
  readonly second?: {
    readonly direction: "with" | "against";
    readonly turns: number;
    readonly spaces: number;
    readonly circle: number;
  };
  readonly small?: { readonly turns: number; readonly spaces: number; readonly circle: number };
}

const still: Turns = { n: 0n, d: 1n };

export const atStart: Stand = { pin: still, rear: still, small: still };

/** The head after one more move of a list. */
export function moved(stand: Stand, { direction, turns, spaces, second, small }: ListedMove, { circle }: UnprovedSetting): Stand {
  const way = direction === "forward" ? 1n : -1n;
  const rearWay = second?.direction === "against" ? -way : way;
  return {
    pin: add(stand.pin, times(way, holes(turns, spaces, circle ?? 1))),
    rear: second ? add(stand.rear, times(rearWay, holes(second.turns, second.spaces, second.circle))) : stand.rear,
    small: small ? add(stand.small, times(way, holes(small.turns, small.spaces, small.circle))) : stand.small,
  };
}

/** How far the work has turned, on a head of the setting's own worm ratio. */
export function spindle(stand: Stand, setting: UnprovedSetting): Turns {
  if (setting.method === "direct") return stand.pin;
  // So many turns of the small crank are one of the large.
  const both = setting.method === "wide-range" ? add(stand.pin, divided(stand.small, setting.small.ratio)) : stand.pin;
  return workTurned(add(both, stand.rear), plateTurns(setting), turnsOf(setting.wormRatio));
}

/** The part of a turn beyond the whole ones, never negative. */
export function withinTurn({ n, d }: Turns): Turns {
  return lowest({ n: ((n % d) + d) % d, d });
}

/** The hole of a circle that a pin stands in. */
export function holeAt(turns: Turns, circle: number, startHole = 0): number {
  const { n, d } = withinTurn(add(turns, { n: BigInt(startHole), d: BigInt(circle) }));
  if ((n * BigInt(circle)) % d !== 0n) throw new Error(`no hole of ${circle} at ${n}/${d} of a turn`);
  return Number((n * BigInt(circle)) / d);
}

export function turnsText({ n, d }: Turns): string {
  return d === 1n ? String(n) : `${n}/${d}`;
}

export function turnsOf(text: string): Turns {
  const [n = "0", d = "1"] = text.split("/");
  return lowest({ n: BigInt(n), d: BigInt(d) });
}

export function add(a: Turns, b: Turns): Turns {
  return lowest({ n: a.n * b.d + b.n * a.d, d: a.d * b.d });
}

/** The crank's turns to those of the work: of R turns the pin makes R − g over a plate that makes g. */
export function workTurned(crank: Turns, plate: Turns, worm: Turns): Turns {
  const net = add(worm, times(-1n, plate));
  return lowest({ n: crank.n * net.d, d: crank.d * net.n });
}

/** Turns that the gears give the plate for one of the work, + with the crank. */
export function plateTurns(setting: UnprovedSetting): Turns {
  if (setting.method !== "differential") return still;
  const { direction, drivers, driven } = setting.gears;
  return lowest({ n: (direction === "with" ? 1n : -1n) * product(drivers), d: product(driven) });
}

/** So many turns and spaces on a circle. */
export function holes(turns: number, spaces: number, circle: number): Turns {
  return lowest({ n: BigInt(turns) * BigInt(circle) + BigInt(spaces), d: BigInt(circle) });
}

export function divided({ n, d }: Turns, by: number): Turns {
  return lowest({ n, d: d * BigInt(by) });
}

export function times(by: bigint, { n, d }: Turns): Turns {
  return lowest({ n: by * n, d });
}

function product(teeth: readonly number[]): bigint {
  return teeth.reduce((all, each) => all * BigInt(each), 1n);
}

function lowest({ n, d }: Turns): Turns {
  let [a, b] = [n, d];
  while (b !== 0n) [a, b] = [b, a % b];
  const common = a < 0n === d < 0n ? a : -a;
  return { n: n / common, d: d / common };
}
