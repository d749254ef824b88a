import { numberFault, quoted, refuse } from "../number/errors.ts";
import { grades, type PitchedGear, standard } from "./graded.ts";

/** Refuses a gear that the standard has no grades for. */
export function checkPitched(gear: PitchedGear): void {
  if (typeof gear !== "object" || gear === null)
    refuse("unreadable", "gear", `${quoted(gear)} is not a gear; give its module and diameterMm`);
  within(gear.module, "module", standard.module.least, standard.module.most);
  within(gear.diameterMm, "diameterMm", standard.diameter.least, standard.diameter.most);
}

/** Refuses such a gear, and what is no grade. */
export function checkGraded(gear: PitchedGear, grade: number): void {
  checkPitched(gear);
  if (!Number.isInteger(grade))
    refuse("unreadable", "grade", `${quoted(grade)} is not an accuracy grade; give a whole number from 0 to 12`);
  within(grade, "grade", grades.finest, grades.coarsest);
}

function within(value: number, place: string, least: number, most: number): void {
  if (typeof value !== "number" || !(value >= least && value <= most)) {
    refuse(numberFault(value), place, `${quoted(value)} is out of the range of the standard; give ${least} to ${most}`);
  }
}
