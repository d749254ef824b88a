import type Fraction from "fraction.js";
import {
  type Fault,
  type FaultCode,
  faultOf,
  InputError,
  numberFault,
  type Problem,
  quoted,
  wholeNumberFault,
} from "./errors.ts";
import { parseRational } from "./parse-rational.ts";
import { groupDigits, isPositive } from "./ratio.ts";

/** Reads the parts of a spec and gathers every fault, so that one refusal can name them all. */
export interface FaultList {
  /** Those gathered so far, in the order of the input. */
  readonly all: readonly Fault[];
  add(code: FaultCode, place: string, problem: Problem): void;
  /** Whether a fault is known at exactly this place. */
  has(place: string): boolean;
  /** The value as an object, whose keys should be among `keys`; null where it is none. */
  object(value: unknown, place: string, keys: readonly string[]): Readonly<Record<string, unknown>> | null;
  /** The value as a list; empty where it is none or is too long. `ifEmpty` is the fault of a list of nothing. */
  list(value: unknown, place: string, most: number, ifEmpty?: string): readonly unknown[];
  /** The value as a whole number in the range; NaN where it is not, so that it equals no other. */
  wholeNumber(value: unknown, place: string, least: number, most: number): number;
  /** The value as a number in the range, whole or not; NaN where it is not. */
  number(value: unknown, place: string, least: number, most: number, unit: string): number;
  /** A short one-line name; empty where it is none. */
  name(value: unknown, place: string): string;
  flag(value: unknown, place: string): boolean;
  /** An exact number above 0. */
  positive(value: unknown, place: string): Fraction | null;
  /** Throws the {@link InputError} that lists the faults, if there are any. */
  throwIfAny(): void;
}

const longestName = 60;

/** Starts an empty list of faults. */
export function faultList(): FaultList {
  const faults: Fault[] = [];
  const add: FaultList["add"] = (code, place, problem) => {
    faults.push(faultOf(code, place, problem));
  };
  return {
    all: faults,
    add,
    has: (place) => faults.some((fault) => fault.place === place),
    ...shapeReaders(add),
    ...wordReaders(add),
    wholeNumber(value, place, least, most) {
      if (typeof value === "number" && Number.isInteger(value) && value >= least && value <= most) return value;
      const range = `${groupDigits(least)} to ${groupDigits(most)}`;
      add(wholeNumberFault(value), place, `${quoted(value)} is not a whole number from ${range}`);
      return Number.NaN;
    },
    number(value, place, least, most, unit) {
      if (typeof value === "number" && value >= least && value <= most) return value;
      add(
        numberFault(value),
        place,
        `${quoted(value)} is not a number from ${groupDigits(least)} to ${groupDigits(most)} ${unit}`,
      );
      return Number.NaN;
    },
    positive(value, place) {
      try {
        const number = parseRational(value, place);
        if (isPositive(number)) return number;
        add("out-of-range", place, `${quoted(value)} is not above 0`);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        faults.push(...error.faults);
      }
      return null;
    },
    throwIfAny() {
      if (faults.length > 0) throw new InputError(faults);
    },
  };
}

/** Objects and lists. */
function shapeReaders(add: FaultList["add"]): Pick<FaultList, "object" | "list"> {
  return {
    object(value, place, keys) {
      if (typeof value !== "object" || value === null || Array.isArray(value)) {
        const code = value === undefined ? "missing" : "unreadable";
        add(code, place, `${quoted(value)} is not an object; its keys may be ${keys.join(", ")}`);
        return null;
      }
      for (const key of Object.keys(value)) {
        if (!keys.includes(key)) add("unknown-key", place, `there is no key ${quoted(key)}; the keys are ${keys.join(", ")}`);
      }
      return value as Record<string, unknown>;
    },
    list(value, place, most, ifEmpty) {
      if (!Array.isArray(value)) {
        add("unreadable", place, `${quoted(value)} is not a list`);
        return [];
      }
      if (value.length > most) {
        add("too-many", place, `${groupDigits(value.length)} entries are too many; give at most ${groupDigits(most)}`);
        return [];
      }
      if (value.length === 0 && ifEmpty !== undefined) add("missing", place, ifEmpty);
      // A list with gaps in it has undefined there.
      return Array.from(value);
    },
  };
}

/** Names and yes or no. */
function wordReaders(add: FaultList["add"]): Pick<FaultList, "name" | "flag"> {
  return {
    name(value, place) {
      if (typeof value === "string" && isName(value)) return value.trim();
      add("unreadable", place, `${quoted(value)} is not a name; give 1 to ${longestName} characters on one line, in quotes`);
      return "";
    },
    flag(value, place) {
      if (typeof value !== "boolean") add("unreadable", place, `${quoted(value)} is not true or false`);
      return value === true;
    },
  };
}

/** Its length in code units is looked at first, so that a text of any size is refused at once. */
function isName(value: string): boolean {
  if (value.trim() === "" || value.length > 2 * longestName) return false;
  return [...value].length <= longestName && !/[\p{Cc}\p{Zl}\p{Zp}]/u.test(value);
}
