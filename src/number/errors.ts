/** One thing wrong with what was given: where, what was found, and how to mend it. */
export interface Fault {
  /** Place of the fault, as a path into the input: `plates[1].circles[3]`, `divisions`. */
  readonly place: string;
  /** One plain sentence part: what was given, what is allowed. */
  readonly problem: string;
}

/**
 * The caller's mistake, in one sentence a machinist can act on.
 *
 * Every refusal of the library is of this type; it lists *all* the faults found, not the first.
 * A count that cannot be indexed is not a mistake and never throws: it is an answer.
 */
export class InputError extends RangeError {
  /** Each fault with its place, in the order of the input. */
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map(({ place, problem }) => (place === "" ? problem : `${place}: ${problem}`)).join("; "));
    this.name = "InputError";
    this.faults = Object.freeze([...faults]);
  }
}

/** Refuses one input: an {@link InputError} with a single fault. */
export function refuse(place: string, problem: string): never {
  throw new InputError([{ place, problem }]);
}

/** Stops on our own mistake. Never reached by any input, right or wrong. */
export function invariant(condition: boolean, claim: () => string): asserts condition {
  if (!condition) throw new Error(`turns-and-holes is at fault, please report it: ${claim()}`);
}

/** Shows a refused value as the user gave it, cut to a readable length. */
export function quoted(value: unknown): string {
  if (typeof value === "number" || typeof value === "bigint" || value === undefined || value === null) {
    return String(value);
  }
  const text = typeof value === "string" ? JSON.stringify(value) : describeObject(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function describeObject(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  return typeof value === "object" ? "an object" : String(value);
}
