import { quoted } from "../number/errors.ts";
import type { FaultList } from "../number/fault-list.ts";
import type { DirectForm, DirectPlate } from "./direct-plate.ts";

/** The most holes of the row beside a direct plate. */
export const mostVernierHoles = 60;
/** Checks how many holes the row beside a direct plate has; nothing where there is none. */
export function readVernier(value: unknown, place: string, faults: FaultList): Pick<DirectPlate, "vernierHoles"> {
  return value === undefined ? {} : { vernierHoles: faults.wholeNumber(value, place, 2, mostVernierHoles) };
}

/** What a direct plate can be besides a plate with holes. */
export const directForms: readonly DirectForm[] = ["collar", "detents", "gear"];

/** Checks what a direct plate is; nothing where it is a plate with holes. */
export function readForm(value: unknown, place: string, faults: FaultList): Pick<DirectPlate, "form"> {
  if (value === undefined) return {};
  const form = directForms.find((each) => each === value);
  if (form !== undefined) return { form };
  faults.add(
    "unknown-word",
    place,
    `there is no form ${quoted(value)}; give collar, detents or gear, or leave it out for a plate with holes`,
  );
  return {};
}
