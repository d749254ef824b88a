import { numberFault, refuse } from "../number/errors.ts";
import { lengthSentence, said } from "../number/length-sentence.ts";
import { checkIsTooth } from "./check-is-gear.ts";
import { firstWhere } from "./halving.ts";
import { angleOfInvolute, involute, pressureAngleAt, radians } from "./involute.ts";
import { asGiven } from "./measured.ts";
import { type CutTooth, flankStart, type InvoluteTooth } from "./tooth-thickness.ts";

/** Pins (or balls) that can be used in the spaces of a gear; diameters in mm. */
export interface PinRange {
  /** The smallest that rests on the flanks and stands above the tips. */
  readonly least: number;
  /** The largest that still touches the flanks below the tips. */
  readonly greatest: number;
}

/**
 * Half the space at the base circle as an angle, taken negative: s/d + inv α − π/z, in radians.
 * A pin at pressure angle α_k rests where inv α_k is this plus pin/d_b.
 */
function spaceConstant(tooth: InvoluteTooth): number {
  return tooth.toothThickness / tooth.referenceDiameter + involute(radians(tooth.pressureAngle)) - Math.PI / tooth.teeth;
}

/** The diameter of the circle on which the centre of a pin lies that rests in a space. */
export function pinCircle(tooth: InvoluteTooth, pinDiameter: number): number {
  const angle = angleOfInvolute(spaceConstant(tooth) + pinDiameter / tooth.baseDiameter);
  return tooth.baseDiameter / Math.cos(angle);
}

/** The pin that touches both flanks of a space at the circle of a diameter, by the string drawn from contact to centre. */
function pinTouchingAt(tooth: InvoluteTooth, diameter: number): number {
  const contact = Math.tan(pressureAngleAt(tooth.baseDiameter, diameter));
  return tooth.baseDiameter * (Math.tan(contact - spaceConstant(tooth)) - contact);
}

/**
 * The pins that can be used: they touch the involute between its start and the tip, stand above the
 * tips so that a micrometer reaches them, and clear the root.
 *
 * @param gear - As {@link spurGear} returns it.
 * @returns Both ends of the range, in mm; null where no pin does.
 *
 * @example
 * ```ts
 * pinRange(spurGear({ teeth: 86, module: 2 })).greatest.toFixed(3); // "5.319"
 * ```
 */
export function pinRange(gear: CutTooth): PinRange | null {
  checkIsTooth(gear);
  const greatest = pinTouchingAt(gear, gear.tipDiameter);
  const touching = pinTouchingAt(gear, flankStart(gear));
  const serves = (pin: number) => standsAndClears(gear, pin);
  if (!serves(greatest)) return null;
  // A larger pin lies higher.
  return { least: serves(touching) ? touching : firstWhere(serves, touching, greatest), greatest };
}

/** Whether a pin is within {@link pinRange}, which need not be found for it. */
export function pinFits(gear: CutTooth, pin: number): boolean {
  const touchesFlanks = pin >= pinTouchingAt(gear, flankStart(gear)) && pin <= pinTouchingAt(gear, gear.tipDiameter);
  return touchesFlanks && standsAndClears(gear, pin);
}

function standsAndClears(gear: CutTooth, pin: number): boolean {
  const circle = pinCircle(gear, pin);
  return circle + pin > gear.tipDiameter && circle - pin > gear.rootDiameter;
}

/**
 * Measurement over two pins, or balls, in opposite spaces; for an odd count, in spaces as nearly
 * opposite as there are.
 *
 * inv α_k = s/d + inv α + D/d_b − π/z; the pins' centres lie on d_k = d_b / cos α_k. Over the pins:
 * d_k + D for an even count, d_k cos(90°/z) + D for an odd one (ISO 21771, from memory).
 *
 * @param gear - As {@link spurGear} returns it.
 * @param pinDiameter - D in mm, within {@link pinRange}.
 * @returns In mm.
 * @throws {@link InputError} when such a pin does not rest on the flanks, is below the tips or
 * strikes the root.
 *
 * @example
 * ```ts
 * overPins(spurGear({ teeth: 86, module: 2 }), 3.5).toFixed(3); // "177.051"
 * ```
 */
export function overPins(gear: CutTooth, pinDiameter: number): number {
  checkIsTooth(gear);
  if (!(typeof pinDiameter === "number" && pinFits(gear, pinDiameter))) return refusePin(gear, pinDiameter);
  const circle = pinCircle(gear, pinDiameter);
  return overPinCircles(circle, circle, pinDiameter, gear.teeth % 2 === 0 ? 0 : Math.PI / gear.teeth);
}

function refusePin(gear: CutTooth, pinDiameter: unknown): never {
  const range = pinRange(gear);
  if (range === null)
    return refuse("cannot-be-made", "pinDiameter", "no pin both rests on the flanks of this gear and stands above its tips");
  return refuse(
    numberFault(pinDiameter),
    "pinDiameter",
    lengthSentence`a pin of ${asGiven(pinDiameter)} cannot be used on this gear; give one from ${said.least(range.least)} to ${said.most(range.greatest)}`,
  );
}

/**
 * Over two pins whose centres lie on the circles of two diameters, so many radians from opposite
 * each other. On like circles it is d_k + D where they are opposite, d_k cos(90°/z) + D where they
 * are 180°/z from it.
 */
export function overPinCircles(first: number, second: number, pinDiameter: number, fromOpposite: number): number {
  return Math.sqrt(first ** 2 + second ** 2 + 2 * first * second * Math.cos(fromOpposite)) / 2 + pinDiameter;
}
