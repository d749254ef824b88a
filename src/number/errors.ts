import type { LengthSentence, SaidProblem } from "./length-sentence.ts";

/**
 * What kind of fault it is, for a program to act on; the words are for the person.
 *
 * - `missing`: nothing was given, or an empty list, where something is needed.
 * - `unreadable`: it cannot be read as what is wanted: text where a number should be, 2.5 where a whole one.
 * - `out-of-range`: it can be read, but is below or above what is allowed, or is too fine.
 * - `unknown-key`: an object has a key that is none of its own, such as a misspelt option.
 * - `unknown-word`: a word that is none of those allowed.
 * - `twice`: the same thing is given two times in a list where each stands once.
 * - `conflict`: two things given contradict one another; either alone may be right.
 * - `not-owned`: the head has no such plate, circle, gear, pin or scale.
 * - `too-many`: more entries or places than are taken or listed at once.
 * - `cannot-be-made`: each part may be given, but no such thing can be: teeth that come to a point, a train that jams.
 * - `no-effect`: what was given changes nothing without something else that is not given.
 */
export type FaultCode =
  | "missing"
  | "unreadable"
  | "out-of-range"
  | "unknown-key"
  | "unknown-word"
  | "twice"
  | "conflict"
  | "not-owned"
  | "too-many"
  | "cannot-be-made"
  | "no-effect";

/** One thing wrong with what was given: what kind, where, what was found, and how to mend it. */
export interface Fault {
  readonly code: FaultCode;
  /** Place of the fault, as a path into the input: `plates[1].circles[3]`, `divisions`. */
  readonly place: string;
  /** One plain sentence part: what was given, what is allowed. Lengths in it are in millimetres. */
  readonly problem: string;
  /** The same where it has lengths in it, so that it can be said in inches: see `faultIn` of the words. */
  readonly lengths?: LengthSentence;
}

/** What is wrong, as a sentence part; with its lengths taken apart where there are any. */
export type Problem = string | SaidProblem;

/** A fault, from its sentence. */
export function faultOf(code: FaultCode, place: string, problem: Problem): Fault {
  return typeof problem === "string" ? { code, place, problem } : { code, place, ...problem };
}

/**
 * The caller's mistake, in one sentence a machinist can act on.
 *
 * Every refusal of the library is of this type; `faults` has *all* that were found, and the message
 * the first dozen of them and how many more there are.
 * A count that cannot be indexed is not a mistake and never throws: it is an answer.
 */
export class InputError extends RangeError {
  /** Each fault with its place, in the order of the input. */
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(sentenceOf(faults));
    this.name = "InputError";
    this.faults = Object.freeze([...faults]);
  }
}

/** The most faults that one message names. */
const mostNamed = 12;

function sentenceOf(faults: readonly Fault[]): string {
  const named = faults.slice(0, mostNamed).map(({ place, problem }) => (place === "" ? problem : `${place}: ${problem}`));
  const more = faults.length - named.length;
  return [...named, ...(more > 0 ? [`and ${more} more fault${more === 1 ? "" : "s"}`] : [])].join("; ");
}

/** Refuses one input: an {@link InputError} with a single fault. */
export function refuse(code: FaultCode, place: string, problem: Problem): never {
  throw new InputError([faultOf(code, place, problem)]);
}

/** The fault of a value that is not the number wanted: none at all, or one beyond the bounds. */
export function numberFault(value: unknown): FaultCode {
  return typeof value === "number" && !Number.isNaN(value) ? "out-of-range" : "unreadable";
}

/** As {@link numberFault}, where a whole number is wanted. */
export function wholeNumberFault(value: unknown): FaultCode {
  return Number.isInteger(value) ? "out-of-range" : "unreadable";
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
  if (typeof value === "function") return "a function";
  return typeof value === "object" ? "an object" : String(value);
}
