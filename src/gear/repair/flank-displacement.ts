import { faultList } from "../../number/fault-list.ts";
import { checkIsInvolute } from "../check-is-gear.ts";
import { radians } from "../involute.ts";
import { readMeasured } from "../measured.ts";
import { halfSpaceAngle, type InvoluteTooth } from "../tooth-thickness.ts";

/** How far off a space is set. */
export interface SettingError {
  /** Of the work round its axis, in arc-seconds: a near setting, a ring reading. Left out, 0. */
  readonly arcSeconds?: number | undefined;
  /** Of the cutter beside the work's axis, in mm. Left out, 0. */
  readonly offCentre?: number | undefined;
}

/** How far both flanks of a space are moved, in mm along the reference circle. */
export interface FlankDisplacement {
  readonly byAngle: number;
  readonly byCentring: number;
  /** Both in the same direction: the most that a rebuilt tooth beside a sound one is too thin or too thick. */
  readonly together: number;
}

const arcSecondsPerDegree = 3600;

/**
 * How far an error of setting puts the flanks of a space.
 *
 * An angle δ moves them by δ·d/2 along the reference circle. A cutter c off the axis moves them by
 * c cos(α + η)/cos α, where η is half the angle of the space: the flank stands at α + η to the
 * middle line, and only the part of the shift that is square to it counts (our own derivation, to
 * the first order of c). The space keeps its width; a tooth between a sound space and a recut one is
 * thinner or thicker by the whole of it, while one between two recut spaces feels only the
 * difference of their errors.
 *
 * @param gear - As {@link spurGear} returns it.
 * @param error - 0 or more; an angle up to half a turn, a distance up to the reference radius.
 * @returns In mm along the reference circle.
 * @throws {@link InputError} when an error is not a number in reason.
 *
 * @example
 * ```ts
 * flankDisplacement(spurGear({ teeth: 50, module: 2 }), { arcSeconds: 60 }).byAngle.toFixed(4); // "0.0145"
 * ```
 */
export function flankDisplacement(gear: InvoluteTooth, error: SettingError): FlankDisplacement {
  checkIsInvolute(gear);
  const { arcSeconds, offCentre } = checkSettingError(gear, error);
  const pressureAngle = radians(gear.pressureAngle);
  const halfSpace = halfSpaceAngle(gear, gear.referenceDiameter);
  const byAngle = (radians(arcSeconds / arcSecondsPerDegree) * gear.referenceDiameter) / 2;
  const byCentring = (offCentre * Math.cos(pressureAngle + halfSpace)) / Math.cos(pressureAngle);
  return { byAngle, byCentring, together: byAngle + byCentring };
}

/**
 * Reads an error of setting; what is left out of it is 0.
 *
 * @throws {@link InputError} when one is not a number in reason.
 */
export function checkSettingError(
  { referenceDiameter }: InvoluteTooth,
  error: unknown,
): { arcSeconds: number; offCentre: number } {
  const faults = faultList();
  const spec = faults.object(error, "", ["arcSeconds", "offCentre"]) ?? {};
  const angleBounds = { what: "an angle in arc-seconds", least: 0, most: 648_000 };
  const centreBounds = { what: "a distance off centre", least: 0, most: referenceDiameter / 2, unit: "length" } as const;
  const arcSeconds = readMeasured(spec.arcSeconds ?? 0, "arcSeconds", angleBounds, faults);
  const offCentre = readMeasured(spec.offCentre ?? 0, "offCentre", centreBounds, faults);
  faults.throwIfAny();
  return { arcSeconds, offCentre };
}
