import { checkKeys, keysOf, oneOf } from "../number/check-options.ts";
import { quoted, refuse } from "../number/errors.ts";
import { type Gearing, mostIdlers } from "./gearing.ts";

/** A train put up to see which way it turns the plate. */
export interface IdlerTrial {
  /** Pairs of gears in the train, spindle to plate. */
  readonly pairs: 1 | 2;
  /** Idlers put between them, 0 to 3. */
  readonly idlers: number;
  /** Which way the plate turned as the crank was turned forward, its stop pin out. */
  readonly plateTurned: "with" | "against";
}

const trialKeys = keysOf<IdlerTrial>({ pairs: true, idlers: true, plateTurned: true });

/**
 * What a head file is to state of its idlers, from one train that was tried.
 *
 * Each idler turns the plate the other way round, and so does the mesh that a second pair adds: of one pair and of two
 * the one takes an idler to turn the plate with the crank, and the other none. Common practice, no source.
 *
 * @returns As `gearing.idlersWithCrank` of a head file: the fewest that do it.
 * @throws {@link InputError} when a part of the trial is not allowed.
 *
 * @example
 * ```ts
 * idlersFromTrial({ pairs: 1, idlers: 0, plateTurned: "against" }); // {"onePair":1,"twoPairs":0}
 * ```
 */
export function idlersFromTrial(trial: IdlerTrial): Gearing["idlersWithCrank"] {
  checkKeys(trial, trialKeys, "trial");
  const { pairs, idlers, plateTurned } = trial;
  if (pairs !== 1 && pairs !== 2)
    refuse("out-of-range", "pairs", `${quoted(pairs)} is not a number of pairs of gears; give 1 or 2`);
  if (!Number.isInteger(idlers) || idlers < 0 || idlers > mostIdlers)
    refuse("out-of-range", "idlers", `${quoted(idlers)} is not a number of idlers; give 0 to ${mostIdlers}`);
  const asTried = oneOf(plateTurned, ["with", "against"], "plateTurned") === "with" ? idlers % 2 : 1 - (idlers % 2);
  return pairs === 1 ? { onePair: asTried, twoPairs: 1 - asTried } : { onePair: 1 - asTried, twoPairs: asTried };
}
