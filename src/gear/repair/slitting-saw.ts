import { refuse } from "../../number/errors.ts";
import { faultList } from "../../number/fault-list.ts";
import { lengthSentence, said } from "../../number/length-sentence.ts";
import { checkIsGear } from "../check-is-gear.ts";
import { firstWhere } from "../halving.ts";
import { lengthBounds, readIfGiven, readMeasured } from "../measured.ts";
import type { SpurGear } from "../spur-gear.ts";
import { type CutTooth, halfSpaceAngle } from "../tooth-thickness.ts";

/** How a space is to be sawn out; in mm. */
export interface SawOptions {
  /** From the tip circle down; left out, to the depth that the mate's teeth reach, above the root's fillets. */
  readonly depth?: number | undefined;
  /** The saw at hand; left out, the greatest that the space takes. */
  readonly width?: number | undefined;
  /** The least to be left on each flank for the file, at the bottom of the cut; left out, 0. */
  readonly leave?: number | undefined;
}

/** The saw reaches below the mate's teeth, where the original root is filleted. */
export interface SawNote {
  readonly code: "saw-in-fillets";
}

/** What a straight saw does in a space; in mm. */
export interface SawCut {
  readonly depth: number;
  /** The widest saw that leaves what is asked on each flank. */
  readonly greatestWidth: number;
  /** The saw that the rest is reckoned for. */
  readonly width: number;
  /** What is left on each flank, measured square to the saw's side. */
  readonly leftOnFlank: { readonly atBottom: number; readonly atReference: number; readonly atTip: number };
  /** What is left under the saw to the root circle. */
  readonly leftAtRoot: number;
  /** Empty where there is nothing to say. */
  readonly warnings: readonly SawNote[];
}

const widthBounds = { what: "a saw width", ...lengthBounds };
const depthBounds = { what: "a depth of cut", ...lengthBounds };
const leaveBounds = { what: "an amount to leave on the flank", least: 0, most: 1000, unit: "length" } as const;

/**
 * The widest slitting saw for a space, and what it leaves for the file or the form cutter.
 *
 * A straight saw takes most of a space and never all of it: the space widens outwards. Set central,
 * its corners come nearest the flanks at the bottom of the cut. A corner stands at (w/2, y) with
 * y = d_a/2 − depth; the flank passes there at r sin η, where r cos η = y and η is half the angle of
 * the space at r. So w = 2 (r sin η − what is to be left). Below the base circle the flank is taken
 * as radial, and no fillet is reckoned (our own derivation).
 *
 * @param gear - As {@link spurGear} returns it.
 * @returns Lengths in mm.
 * @throws {@link InputError} when the depth reaches below the root, or the saw is wider than allowed.
 *
 * @example
 * ```ts
 * slittingSaw(spurGear({ teeth: 86, module: 2 })).greatestWidth.toFixed(3); // "1.786"
 * ```
 */
export function slittingSaw(gear: SpurGear, options: SawOptions = {}): SawCut {
  checkIsGear(gear);
  return sawCut(gear, options, 0);
}

/**
 * As {@link slittingSaw}, leaving so much on each flank where nothing is said of it and the saw and
 * the space have room for it.
 */
export function sawCut(gear: SpurGear, options: SawOptions | undefined, toLeave: number): SawCut {
  const { depth, width: given, leave } = checkSaw(gear, options === undefined ? {} : options);
  const halfAtBottom = halfWidthAtHeight(gear, gear.tipDiameter / 2 - depth);
  const hasRoom = 2 * (halfAtBottom - toLeave) > (given ?? 0);
  const greatestWidth = 2 * (halfAtBottom - (leave ?? (hasRoom ? toLeave : 0)));
  if (leave !== undefined && greatestWidth <= 0) {
    refuse(
      "out-of-range",
      "saw.leave",
      lengthSentence`${said.given(leave)} on each flank is more than half the space; give less than ${said.most(halfAtBottom)}`,
    );
  }
  const width = given ?? greatestWidth;
  if (width > greatestWidth + roundingError) {
    refuse(
      "out-of-range",
      "saw.width",
      lengthSentence`${said.given(width)} would cut into the flanks; give at most ${said.most(greatestWidth)}`,
    );
  }
  const left = (half: number) => half - width / 2;
  return {
    depth,
    greatestWidth,
    width,
    leftOnFlank: {
      atBottom: left(halfAtBottom),
      atReference: left(halfWidthOnCircle(gear, gear.referenceDiameter)),
      atTip: left(halfWidthOnCircle(gear, gear.tipDiameter)),
    },
    leftAtRoot: Math.max(0, gear.wholeDepth - depth),
    warnings: depth > usualDepth(gear) ? [{ code: "saw-in-fillets" }] : [],
  };
}

/** In mm: what reckoning may add to a bound, so that the bound itself can be given. */
const roundingError = 1e-9;

function checkSaw(gear: SpurGear, options: unknown) {
  const faults = faultList();
  const spec = faults.object(options, "saw", ["depth", "width", "leave"]) ?? {};
  const checked = {
    depth: readMeasured(spec.depth ?? usualDepth(gear), "saw.depth", depthBounds, faults),
    width: readIfGiven(spec.width, "saw.width", widthBounds, faults),
    leave: readIfGiven(spec.leave, "saw.leave", leaveBounds, faults),
  };
  faults.throwIfAny();
  if (checked.depth > gear.wholeDepth + roundingError) {
    refuse(
      "out-of-range",
      "saw.depth",
      lengthSentence`${said.given(checked.depth)} is deeper than the tooth; give at most the whole depth, ${said.most(gear.wholeDepth)}`,
    );
  }
  return checked;
}

/** How deep the mate's teeth reach: twice the addendum without shift, and never below the root. */
function usualDepth({ wholeDepth, addendum, profileShift, module }: SpurGear): number {
  const unshifted = addendum - profileShift * module;
  const working = Math.min(2 * unshifted, wholeDepth);
  return working > 0 ? working : wholeDepth;
}

/** Half the space across its middle line, where the circle of a diameter meets the flank. */
function halfWidthOnCircle(tooth: CutTooth, diameter: number): number {
  return (diameter / 2) * Math.sin(halfSpaceAngle(tooth, diameter));
}

/** Half the space square to its middle line, at a height over the gear's axis, or at the tips where they are lower. */
function halfWidthAtHeight(tooth: CutTooth, height: number): number {
  const isAbove = (diameter: number) => (diameter / 2) * Math.cos(halfSpaceAngle(tooth, diameter)) >= height;
  return halfWidthOnCircle(tooth, firstWhere(isAbove, 2 * height, tooth.tipDiameter));
}
