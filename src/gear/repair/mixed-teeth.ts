/**
 * Measures that take in flanks of teeth which have lost different amounts: a rebuilt tooth among
 * worn ones.
 *
 * A loss is along the reference circle, in mm, and is taken as shared by both flanks of its tooth: a
 * flank that has lost l/2 there is its own involute turned by l/d about the axis. So the space
 * between two such teeth is an ordinary one, wider by the mean of their losses, with its middle
 * turned by a quarter of their difference over the reference radius towards the thinner tooth (our
 * own derivation).
 */
import { firstWhere } from "../halving.ts";
import { radians } from "../involute.ts";
import { overPinCircles, pinCircle, pinFits } from "../over-pins.ts";
import { spanLength } from "../span.ts";
import type { SpurGear } from "../spur-gear.ts";
import { type CutTooth, chordOf, flankStart } from "../tooth-thickness.ts";

/** The gear's tooth with a loss from its full thickness. */
export function toothWithLoss(gear: SpurGear, loss: number): CutTooth {
  return { ...gear, toothThickness: gear.toothThickness + gear.thinning - loss };
}

/**
 * The span between jaws of which one rests on a tooth with one loss, the other on a tooth with
 * another: W − cos α (l₁ + l₂)/2, W being the span of full teeth.
 *
 * @returns In mm; null where the jaws would not rest on the flanks.
 */
export function spanBetween(gear: SpurGear, teeth: number, [first, second]: readonly [number, number]): number | null {
  const full = spanLength(toothWithLoss(gear, 0), teeth);
  const length = full - (Math.cos(radians(gear.pressureAngle)) * (first + second)) / 2;
  const [shortest, longest] = [flankStart(gear), gear.tipDiameter].map((diameter) => diameter ** 2 - gear.baseDiameter ** 2);
  return length ** 2 >= (shortest ?? 0) && length ** 2 <= (longest ?? 0) ? length : null;
}

/** The losses of the two teeth beside a space. */
export interface PinnedSpace {
  /** Of the tooth over which the shorter way leads to the opposite space; of an even count, of either. */
  readonly near: number;
  /** Of the tooth on the other side. */
  readonly far: number;
}

/**
 * Over two pins of a diameter, one in a space between teeth of two losses, one in a
 * space between two sound teeth, as nearly opposite as there is.
 *
 * @returns In mm; null where that pin cannot be used in one of the spaces.
 */
export function overPinsBetween(gear: SpurGear, pin: number, { near, far }: PinnedSpace): number | null {
  const spaces = [toothWithLoss(gear, (near + far) / 2), toothWithLoss(gear, gear.thinning)];
  if (!spaces.every((space) => pinFits(space, pin))) return null;
  const [first = 0, second = 0] = spaces.map((space) => pinCircle(space, pin));
  const turned = (near - far) / (2 * gear.referenceDiameter);
  return overPinCircles(first, second, pin, (gear.teeth % 2 === 0 ? 0 : Math.PI / gear.teeth) + turned);
}

/** Across a tooth with a loss, by a caliper whose blade reaches so far down from the tip. */
export function acrossAtBlade(gear: SpurGear, loss: number, blade: number): number {
  const tooth = toothWithLoss(gear, loss);
  const isAbove = (diameter: number) => chordOf(tooth, diameter).addendum <= blade;
  return chordOf(tooth, firstWhere(isAbove, gear.tipDiameter - 2 * blade, gear.tipDiameter)).thickness;
}
