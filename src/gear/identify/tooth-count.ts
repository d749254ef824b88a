import { refuse } from "../../number/errors.ts";
import { type FaultList, faultList } from "../../number/fault-list.ts";
import { gcd } from "../../number/ratio.ts";
import { readTeeth } from "../spur-gear-spec.ts";

/** What was seen of two marks, one on the gear and one on its mate, that stood together at the start. */
export interface MarksMeet {
  /** Teeth of the mate, which are known. */
  readonly mateTeeth: number;
  /** Whole turns of the gear until the marks first stood together again. */
  readonly turns?: number | undefined;
  /** Whole turns of the mate until then. */
  readonly mateTurns?: number | undefined;
  /** The fewest teeth that the gear can have; left out, 4. */
  readonly least?: number | undefined;
  /** The most teeth that the gear can have; left out, 400. */
  readonly most?: number | undefined;
}

const keys = ["mateTeeth", "turns", "mateTurns", "least", "most"];
const usualLeast = 4;
const usualMost = 400;
const mostTurns = 10_000;

/**
 * The counts of teeth that marks which meet again could mean.
 *
 * A gear of N teeth and its mate of M come back to the same teeth after lcm(N, M) teeth have passed:
 * t = M/gcd(N, M) turns of the gear and u = N/gcd(N, M) of the mate. Both counted give N = M·u/t;
 * one alone leaves a choice.
 *
 * @returns Ascending; empty where no count in the range would do it, so that a turn was miscounted
 * or the mate has another count.
 * @throws {@link InputError} when no turns are given, a number is not allowed, or the turns have a
 * common divisor: then the marks met sooner.
 *
 * @example
 * ```ts
 * countsFromMarks({ mateTeeth: 24, turns: 12, mateTurns: 43 }); // [86]
 * ```
 */
export function countsFromMarks(marks: MarksMeet): readonly number[] {
  const { mateTeeth, turns, mateTurns, least, most } = checkMarks(marks);
  const counts: number[] = [];
  for (let teeth = least; teeth <= most; teeth += 1) {
    const common = gcd(teeth, mateTeeth);
    const fits = (turns ?? mateTeeth / common) === mateTeeth / common && (mateTurns ?? teeth / common) === teeth / common;
    if (fits) counts.push(teeth);
  }
  return counts;
}

function checkMarks(value: unknown) {
  const faults = faultList();
  const given = faults.object(value, "", keys) ?? {};
  const checked = {
    mateTeeth: readTeeth(given.mateTeeth, "mateTeeth", faults),
    turns: readTurns(given.turns, "turns", faults),
    mateTurns: readTurns(given.mateTurns, "mateTurns", faults),
    least: readTeeth(given.least ?? usualLeast, "least", faults),
    most: readTeeth(given.most ?? usualMost, "most", faults),
  };
  const { turns, mateTurns, least, most } = checked;
  if (given.turns === undefined && given.mateTurns === undefined) {
    faults.add("missing", "turns", "no turns are given; give turns of the gear, mateTurns, or better both");
  }
  if (most < least) faults.add("conflict", "most", `${most} is below the least, ${least}; give the larger count`);
  faults.throwIfAny();
  if (turns !== undefined && mateTurns !== undefined) {
    const common = gcd(turns, mateTurns);
    if (common > 1) {
      refuse(
        "conflict",
        "turns",
        `marks that stand together after ${turns} turns and ${mateTurns} of the mate did so after ${turns / common} and ${mateTurns / common}; count to the first meeting`,
      );
    }
  }
  return checked;
}

function readTurns(value: unknown, place: string, faults: FaultList): number | undefined {
  return value === undefined ? undefined : faults.wholeNumber(value, place, 1, mostTurns);
}
