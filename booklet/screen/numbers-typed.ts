import { InputError, parseAngle, type Revolutions, revolutions } from "../../src/index.ts";
import type { Teeth } from "./job.ts";

/** Refuses what was typed in one sentence. */
export function refuseTyped(place: string, problem: string): never {
  throw new InputError([{ code: "unreadable", place, problem }]);
}

/** A whole number that was typed. */
export function wholeTyped(text: string, place: string): number {
  if (/^\s*\d{1,9}\s*$/.test(text)) return Number(text);
  return refuseTyped(place, `"${text.slice(0, 40)}" is not a whole number; give one such as 12`);
}

/** A number that was typed, with a decimal point or comma. */
export function numberTyped(text: string, place: string): number {
  if (/^\s*(\d{1,7}([.,]\d{1,7})?|[.,]\d{1,7})\s*$/.test(text)) return Number(text.replace(",", "."));
  return refuseTyped(place, `"${text.slice(0, 40)}" is not a number; give one such as 2.5`);
}

const mostListed = 10_000;

/** Numbers that were typed as a list: `12, 13, 55-57`. */
export function numbersTyped(text: string, place: string): readonly number[] {
  const parts = text.split(/[\s,;]+/).filter((part) => part !== "");
  const numbers = parts.flatMap((part) => {
    const [, first = "", last = first] = /^(\d{1,6})(?:[-–−](\d{1,6}))?$/.exec(part) ?? [];
    const count = Number(last) - Number(first) + 1;
    if (first === "" || count < 1 || count > mostListed)
      refuseTyped(place, `"${part.slice(0, 20)}" is not a number or a run of numbers; give a list such as 12, 13, 55-57`);
    return Array.from({ length: count }, (_, index) => Number(first) + index);
  });
  return numbers.slice(0, mostListed + 1);
}

/** Teeth that were typed: a list, or `every 19`; nothing is all of them. */
export function teethTyped(text: string): Teeth {
  const [, every] = /^\s*every(.*)$/i.exec(text) ?? [];
  if (every) return { step: wholeTyped(every, "every") };
  return text.trim() === "" ? null : numbersTyped(text, "teeth");
}

/** The same, as it is typed. */
export function teethText(teeth: Teeth): string {
  return teeth === null ? "" : "step" in teeth ? `every ${teeth.step}` : teeth.join();
}

/** An angle from a zero, which may be nothing; `unit` is meant where none is typed. */
export function angleTyped(text: string, place: string, unit = ""): Revolutions {
  if (/^\s*0+([.,]0+)?\s*°?\s*$/.test(text)) return revolutions(0);
  try {
    return parseAngle(text + unit);
  } catch (error) {
    if (error instanceof InputError) throw new InputError(error.faults.map((each) => ({ ...each, place })));
    throw error;
  }
}
