import type { FaultList } from "../number/fault-list.ts";
import { type Ratio, rational, toRatio } from "../number/ratio.ts";

/** How a head's plate is geared to its spindle for differential indexing. */
export interface Gearing {
  /**
   * Idlers that make the plate turn *with* the crank; the other direction takes one more.
   * Commonly 1 in a one-pair train and 0 in a two-pair train (common practice, no source; the
   * worked examples of the *Practical Treatise on Milling and Milling Machines*, p. 57, agree).
   */
  readonly idlersWithCrank: { readonly onePair: number; readonly twoPairs: number };
  /** The most plate turns for one spindle turn that the train is let to make, either way. */
  readonly greatestPlateRatio: Ratio;
}

/** Gearing as written in a head file; what is left out is as on most heads. */
export interface GearingSpec {
  readonly idlersWithCrank?: { readonly onePair?: number | undefined; readonly twoPairs?: number | undefined } | undefined;
  readonly greatestPlateRatio?: number | string | undefined;
}

const commonIdlers = { onePair: 1, twoPairs: 0 };
const commonGreatestRatio = toRatio(rational(6));
/** The most idlers in a train. */
export const mostIdlers = 3;
/** The most change gears of a head. */
export const mostGears = 200;
/** The fewest and the most teeth of a change gear. */
export const leastTeeth = 8;
export const mostTeeth = 1000;
const mostPlateTurns = 100n;
const mostPlateTurnParts = 1000n;

/** Checks the gearing of a spec; null says that the plate of this head cannot be geared. */
export function readGearing(value: unknown, place: string, faults: FaultList): Gearing | null {
  if (value === null) return null;
  const spec = faults.object(value, place, ["idlersWithCrank", "greatestPlateRatio"]);
  if (spec === null) return null;
  const { idlersWithCrank = {}, greatestPlateRatio = commonGreatestRatio } = spec;
  const idlers = faults.object(idlersWithCrank, `${place}.idlersWithCrank`, ["onePair", "twoPairs"]);
  const count = (key: "onePair" | "twoPairs") => {
    const { [key]: given = commonIdlers[key] } = idlers ?? {};
    return faults.wholeNumber(given, `${place}.idlersWithCrank.${key}`, 0, mostIdlers);
  };
  const greatest = faults.positive(greatestPlateRatio, `${place}.greatestPlateRatio`);
  if (greatest && (greatest.n > greatest.d * mostPlateTurns || greatest.d > mostPlateTurnParts)) {
    faults.add(
      "out-of-range",
      `${place}.greatestPlateRatio`,
      `${toRatio(greatest)} is out of range; give at most 100, as a fraction over at most 1,000`,
    );
  }
  return Object.freeze({
    idlersWithCrank: Object.freeze({ onePair: count("onePair"), twoPairs: count("twoPairs") }),
    greatestPlateRatio: greatest === null ? commonGreatestRatio : toRatio(greatest),
  });
}

/** Checks the change gears of a spec: the teeth of each gear in the box, duplicates counted. */
export function readGears(value: unknown, place: string, faults: FaultList): readonly number[] {
  const gears = faults
    .list(value, place, mostGears)
    .map((teeth, index) => faults.wholeNumber(teeth, `${place}[${index}]`, leastTeeth, mostTeeth));
  return Object.freeze(gears.sort((a, b) => a - b));
}
