import type { Face, Plate } from "../head/plate.ts";

/** A place on a plate, as a setting or a circle names it. */
export interface OnPlate {
  readonly plate: string | null;
  readonly face: string | null;
}

/** Which plate, and which face of it where it has two: `1`, `1, front face`; `any` where any serves. */
export function plateName({ plate, face }: OnPlate): string {
  if (plate === null) return "any";
  return face === null ? plate : `${plate}, ${face} face`;
}

/** The same in a table: `1`, `1 front`. */
export function plateShort({ plate, face }: OnPlate): string {
  if (plate === null) return "any";
  return face === null ? plate : `${plate} ${face}`;
}

/** The circles of a plate face: `15 16 17 18 19 20`. */
export function circlesOf({ circles }: Face): string {
  return circles.join(" ");
}

/** A plate with all that is on it: `1: 15 16 17 18 19 20`. */
export function plateWithCircles({ name, faces }: Plate): string {
  return `${name}: ${faces.map((face) => (face.name === null ? circlesOf(face) : `${face.name} ${circlesOf(face)}`)).join(" / ")}`;
}
