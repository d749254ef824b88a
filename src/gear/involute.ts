/** Degrees to radians. */
export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Radians to degrees. */
export function degrees(angle: number): number {
  return (angle * 180) / Math.PI;
}

/**
 * The involute function: inv α = tan α − α, both in radians.
 *
 * It is the polar angle between the start of an involute on its base circle and the point of it
 * where the pressure angle is α (ISO 21771; the clause from memory is not given).
 */
export function involute(angle: number): number {
  return Math.tan(angle) - angle;
}

const mostSteps = 60;

/**
 * The angle whose involute is given, in radians; 0 for 0.
 *
 * Solved for t = tan α: t − atan t = inv α. The left side rises and is convex, so that after its
 * first step Newton's method comes down to the root from above and cannot miss it. The first guess
 * is from t − atan t ≈ t³/3.
 *
 * @param value - The involute, 0 or more.
 */
export function angleOfInvolute(value: number): number {
  if (value <= 0) return 0;
  let tangent = Math.cbrt(3 * value);
  for (let step = 0; step < mostSteps; step += 1) {
    const next = tangent - (tangent - Math.atan(tangent) - value) * (1 + 1 / tangent ** 2);
    if (Math.abs(next - tangent) <= Number.EPSILON * next) return Math.atan(next);
    tangent = next;
  }
  return Math.atan(tangent);
}

/** The pressure angle of an involute at a diameter: cos α = base diameter / diameter. In radians; 0 on the base circle. */
export function pressureAngleAt(baseDiameter: number, diameter: number): number {
  return diameter <= baseDiameter ? 0 : Math.acos(baseDiameter / diameter);
}
