import type { Side } from "../../src/index.ts";
import type { Turns } from "./bench.ts";

/*
 * A scale turned by hand, one step at a time, in whole numbers of its own. It shares nothing with
 * src/ but the two words for its side.
 */

/** Where a scale stands that is turned from step to step. */
export interface HandScale {
  /** Turns it on to what comes nearest to a place, and of two that are as near to the one further on. */
  turnTo(turned: Turns): Shown;
}

export interface Shown {
  /** How often a zero came under the line: of the plus side from the zero itself, of the minus side since tooth 1. */
  readonly zeros: bigint;
  /** Steps from the last zero, the way that the figures run. */
  readonly step: bigint;
  /** How much further than the place it is turned, in steps of the scale. */
  readonly tooFar: Turns;
}

/**
 * @param stepsPerTurn - What the scale shows in one turn: marks times vernier lines.
 * @param perSpindle - Turns of the scale for one of the spindle.
 * @param start - Where the scale stands at tooth 1, in turns of the spindle.
 */
export function handScale(stepsPerTurn: bigint, perSpindle: Turns, start: Turns, side: Side): HandScale {
  const stepsOf = ({ n, d }: Turns): Turns => ({ n: n * perSpindle.n * stepsPerTurn, d: d * perSpindle.d });
  const from = stepsOf(start);
  const way = side === "plus" ? 1n : -1n;
  let [at, zeros] = [0n, 0n];
  const turnOnTo = (place: Turns) => {
    const off = (step: bigint) => magnitude(step * place.d - place.n);
    while (off(at + way) <= off(at)) {
      at += way;
      if (at % stepsPerTurn === 0n) zeros += 1n;
    }
    return { n: way * (at * place.d - place.n), d: place.d };
  };
  if (side === "minus") {
    // First to where it stands at tooth 1, from above: what is passed on the way does not count.
    at = from.n / from.d + 2n;
    turnOnTo(from);
    zeros = 0n;
  }
  return {
    turnTo(turned) {
      const by = stepsOf(turned);
      const tooFar = turnOnTo({ n: from.n * by.d + way * by.n * from.d, d: from.d * by.d });
      return { zeros, step: ((at % stepsPerTurn) + stepsPerTurn) % stepsPerTurn, tooFar };
    },
  };
}

function magnitude(value: bigint): bigint {
  return value < 0n ? -value : value;
}
