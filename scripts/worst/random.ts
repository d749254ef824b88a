/** A source of chance that a seed starts again the same. */
export interface Chance {
  /** 0 to below `most`. */
  below(most: number): number;
  /** From `least` to `most`, small numbers as likely as large ones of the same number of figures. */
  spread(least: number, most: number): number;
  one<T>(of: readonly T[]): T;
  /** Whether something of this likelihood happens. */
  happens(likelihood: number): boolean;
}

/** A generator of 32 bits (a counter, well mixed), which is enough to choose by. */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x9e37_79b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85eb_ca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2_ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
  return {
    below: (most) => Math.floor(next() * most),
    spread: (least, most) => Math.min(most, Math.floor(least * Math.exp(next() * Math.log((most + 1) / least)))),
    one: (of) => of[Math.floor(next() * of.length)] as (typeof of)[number],
    happens: (likelihood) => next() < likelihood,
  };
}
