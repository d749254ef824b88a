import type { Fault } from "../number/errors.ts";
import { saidIn } from "../number/length-sentence.ts";
import type { LengthUnit } from "../number/length-unit.ts";

/** A fault with the lengths of its sentence in the unit of the person: bounds still on the side that is allowed. */
export function faultIn(unit: LengthUnit, fault: Fault): Fault {
  return fault.lengths === undefined ? fault : { ...fault, problem: saidIn(unit, fault.lengths) };
}
