import { errorAtRadius } from "../number/error-at-radius.ts";
import { numberFault, quoted, refuse } from "../number/errors.ts";

/** A gear to judge an error against. */
export interface PitchedGear {
  /** Normal module in mm, 0.5 to 70. */
  readonly module: number;
  /** Reference (pitch) diameter in mm, 5 to 10,000; for a spur gear module · teeth. */
  readonly diameterMm: number;
}

/** The finest and the coarsest accuracy grade. */
const grades = { finest: 0, coarsest: 12, base: 5 } as const;

/**
 * The single pitch deviation that an accuracy grade allows, in micrometres: how far one pitch,
 * from a tooth to the next, may be off along the reference circle, either way.
 *
 * The law: f_pt = (0.3·(m + 0.4·√d) + 4) · √2^(Q − 5), with m the module and d the reference
 * diameter in mm, Q the grade. ISO 1328-1:1995, from memory. The standard's own tables put the
 * geometric mean of a range of m and of d in the formula and round the result, so they differ by
 * a little; its values, or those of the drawing, hold.
 *
 * @param grade - 0 (finest) to 12.
 * @throws {@link InputError} when the gear or the grade is outside the range of the standard.
 *
 * @example
 * ```ts
 * singlePitchDeviation({ module: 2, diameterMm: 172 }, 7).toFixed(1); // "12.3"
 * ```
 */
export function singlePitchDeviation(gear: PitchedGear, grade: number): number {
  within(gear.module, "module", 0.5, 70);
  within(gear.diameterMm, "diameterMm", 5, 10_000);
  if (!Number.isInteger(grade))
    refuse("unreadable", "grade", `${quoted(grade)} is not an accuracy grade; give a whole number from 0 to 12`);
  within(grade, "grade", grades.finest, grades.coarsest);
  return (0.3 * (gear.module + 0.4 * Math.sqrt(gear.diameterMm)) + 4) * Math.SQRT2 ** (grade - grades.base);
}

/**
 * The finest accuracy grade whose single pitch deviation takes in an error of indexing.
 *
 * The indexing is only one part of a gear's pitch error: the head's own worm and wheel, the
 * mounting and the cutter add theirs, so the gear will be of a coarser grade than this.
 *
 * @param gear - As for {@link singlePitchDeviation}.
 * @param pitchArcSeconds - The error from one tooth to the next, as a near setting gives it.
 * @returns 0 to 12, or null where the error is more than the coarsest grade allows.
 * @throws {@link InputError} as {@link singlePitchDeviation} does.
 *
 * @example
 * ```ts
 * finestGrade({ module: 2, diameterMm: 172 }, 10); // 4
 * ```
 */
export function finestGrade(gear: PitchedGear, pitchArcSeconds: number): number | null {
  const micrometres = 1000 * Math.abs(errorAtRadius(pitchArcSeconds, gear.diameterMm / 2).mm);
  for (let grade: number = grades.finest; grade <= grades.coarsest; grade += 1) {
    if (micrometres <= singlePitchDeviation(gear, grade)) return grade;
  }
  return null;
}

function within(value: number, place: string, least: number, most: number): void {
  if (typeof value !== "number" || !(value >= least && value <= most)) {
    refuse(numberFault(value), place, `${quoted(value)} is out of the range of the standard; give ${least} to ${most}`);
  }
}
