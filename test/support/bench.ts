import type { MoveBetween, Setting } from "../../src/index.ts";

/*
 * A head on the bench, moved as a list says: whole holes and gears only, in whole numbers of its own.
 * It shares nothing with src/ but the shapes of a setting and of a move.
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
}

export const atStart: Stand = { pin: { n: 0n, d: 1n }, rear: { n: 0n, d: 1n } };

/** The head after one more move of a list. */
export function moved(stand: Stand, { direction, turns, spaces, second }: MoveBetween, { circle }: Setting): Stand {
  const way = direction === "forward" ? 1n : -1n;
  const rearWay = second?.direction === "against" ? -way : way;
  return {
    pin: add(stand.pin, times(way, holes(turns, spaces, circle ?? 1))),
    rear: second ? add(stand.rear, times(rearWay, holes(second.turns, second.spaces, second.circle))) : stand.rear,
  };
}

/** How far the work has turned. */
export function spindle({ pin, rear }: Stand, setting: Setting): Turns {
  const crank = add(pin, rear);
  if (setting.method === "direct") return crank;
  const [n = "0", d = "1"] = setting.wormRatio.split("/");
  const worm = { n: BigInt(n), d: BigInt(d) };
  const plate = setting.gears
    ? times(setting.gears.direction === "with" ? 1n : -1n, {
        n: product(setting.gears.drivers),
        d: product(setting.gears.driven),
      })
    : { n: 0n, d: 1n };
  const net = add(worm, times(-1n, plate));
  return lowest({ n: crank.n * net.d, d: crank.d * net.n });
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

function times(by: bigint, { n, d }: Turns): Turns {
  return { n: by * n, d };
}

function holes(turns: number, spaces: number, circle: number): Turns {
  return lowest({ n: BigInt(turns) * BigInt(circle) + BigInt(spaces), d: BigInt(circle) });
}

function product(teeth: readonly number[]): bigint {
  return teeth.reduce((all, each) => all * BigInt(each), 1n);
}

function lowest({ n, d }: Turns): Turns {
  let [a, b] = [n < 0n ? -n : n, d];
  while (b !== 0n) [a, b] = [b, a % b];
  return { n: n / a, d: d / a };
}
