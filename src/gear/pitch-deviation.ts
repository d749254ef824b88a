import { errorAtRadius } from "../number/error-at-radius.ts";
import { checkGraded, checkPitched } from "./check-graded.ts";
import { grades, type PitchedGear } from "./graded.ts";

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
  checkGraded(gear, grade);
  return (0.3 * (gear.module + 0.4 * Math.sqrt(gear.diameterMm)) + 4) * Math.SQRT2 ** (grade - grades.base);
}

/**
 * The total cumulative pitch deviation that an accuracy grade allows, in micrometres: how far any two
 * teeth may be off against each other along the reference circle. An axis off centre is found by it, and hardly
 * by a single pitch.
 *
 * The law: F_p = (0.3·m + 1.25·√d + 7) · √2^(Q − 5), with m the module and d the reference diameter in
 * mm, Q the grade. ISO 1328-1:1995, from memory; as of {@link singlePitchDeviation}, the standard's tables differ by
 * a little, and hold.
 *
 * @param grade - 0 (finest) to 12.
 * @throws {@link InputError} when the gear or the grade is outside the range of the standard.
 *
 * @example
 * ```ts
 * totalPitchDeviation({ module: 2, diameterMm: 172 }, 7).toFixed(1); // "48.0"
 * ```
 */
export function totalPitchDeviation(gear: PitchedGear, grade: number): number {
  checkGraded(gear, grade);
  return (0.3 * gear.module + 1.25 * Math.sqrt(gear.diameterMm) + 7) * Math.SQRT2 ** (grade - grades.base);
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
  return finestOf(singlePitchDeviation, gear, pitchArcSeconds);
}

/**
 * The finest accuracy grade whose total cumulative pitch deviation takes in an error between any two teeth.
 *
 * @param gear - As for {@link totalPitchDeviation}.
 * @param arcSeconds - The most that any two teeth are off against each other.
 * @returns 0 to 12, or null where the error is more than the coarsest grade allows.
 * @throws {@link InputError} as {@link totalPitchDeviation} does.
 *
 * @example
 * ```ts
 * finestTotalGrade({ module: 2, diameterMm: 100 }, 160); // 7
 * ```
 */
export function finestTotalGrade(gear: PitchedGear, arcSeconds: number): number | null {
  return finestOf(totalPitchDeviation, gear, arcSeconds);
}

function finestOf(deviation: typeof singlePitchDeviation, gear: PitchedGear, arcSeconds: number): number | null {
  checkPitched(gear);
  const micrometres = 1000 * Math.abs(errorAtRadius(arcSeconds, gear.diameterMm / 2).mm);
  for (let grade: number = grades.finest; grade <= grades.coarsest; grade += 1) {
    if (micrometres <= deviation(gear, grade)) return grade;
  }
  return null;
}
