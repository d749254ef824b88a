import { numberFault, quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { lengthSentence, said } from "../number/length-sentence.ts";
import { checkIsTooth } from "./check-is-gear.ts";
import { involute, radians } from "./involute.ts";
import { asGiven } from "./measured.ts";
import { type CutTooth, flankStart, type InvoluteTooth } from "./tooth-thickness.ts";

/** A span (base tangent) measurement: flat jaws over some teeth, touching two flanks square on. */
export interface Span {
  /** Teeth between the jaws. */
  readonly teeth: number;
  /** In mm. */
  readonly length: number;
}

/** A span with the place where the jaws touch. */
export interface SpanOnFlanks extends Span {
  /** In mm. */
  readonly contactDiameter: number;
}

/** Base pitch: the distance from flank to like flank along any line that touches the base circle; π d_b / z. */
export function basePitchOf({ teeth, baseDiameter }: InvoluteTooth): number {
  return (Math.PI * baseDiameter) / teeth;
}

/**
 * The span over some teeth, wherever the jaws would touch.
 *
 * W_k = (k − 1) p_b + s_b, with s_b = d_b (s/d + inv α) the thickness at the base circle: the string
 * unwound from the base circle keeps its length. It is the same as
 * m cos α [(k − ½)π + z inv α] + 2 x m sin α (ISO 21771, from memory).
 */
export function spanLength(tooth: InvoluteTooth, teethSpanned: number): number {
  const baseThickness =
    tooth.baseDiameter * (tooth.toothThickness / tooth.referenceDiameter + involute(radians(tooth.pressureAngle)));
  return (teethSpanned - 1) * basePitchOf(tooth) + baseThickness;
}

/**
 * The span over a number of teeth of one's own choice.
 *
 * @param gear - As {@link spurGear} returns it.
 * @param teethSpanned - Teeth between the jaws.
 * @returns Lengths in mm.
 * @throws {@link InputError} when the jaws would not rest on the flanks: too few teeth and they are
 * below the flanks, too many and they are past the tips.
 *
 * @example
 * ```ts
 * spanOver(spurGear({ teeth: 86, module: 2 }), 9).length.toFixed(3); // "52.595"
 * ```
 */
export function spanOver(gear: CutTooth, teethSpanned: number): SpanOnFlanks {
  checkIsTooth(gear);
  const fitting = spansOnFlanks(gear);
  const span = fitting.find(({ teeth }) => teeth === teethSpanned);
  if (span) return span;
  const counts = fitting.map(({ teeth }) => teeth);
  const allowed = counts.length === 0 ? "no count does on this gear" : `give ${counts[0]} to ${counts.at(-1)}`;
  return refuse(
    wholeNumberFault(teethSpanned),
    "teeth",
    `jaws over ${quoted(teethSpanned)} teeth do not rest on the flanks of this gear; ${allowed}`,
  );
}

/**
 * The best number of teeth to span: that whose jaws touch nearest a circle, which is d + 2xm for the
 * middle of the flank (ISO 21771, from memory). One tooth alone is spanned only where two reach past
 * the tips. Null where no count serves.
 */
export function bestSpan(gear: CutTooth, middleDiameter: number): SpanOnFlanks | null {
  const fitting = spansOnFlanks(gear);
  const several = fitting.filter(({ teeth }) => teeth >= 2);
  const offMiddle = ({ contactDiameter }: SpanOnFlanks) => Math.abs(contactDiameter - middleDiameter);
  return (several.length > 0 ? several : fitting).sort((a, b) => offMiddle(a) - offMiddle(b))[0] ?? null;
}

/** Every span whose jaws touch between the start of the involute and the tip, the shortest first. */
function spansOnFlanks(gear: CutTooth): SpanOnFlanks[] {
  const spans: SpanOnFlanks[] = [];
  const longest = Math.sqrt(gear.tipDiameter ** 2 - gear.baseDiameter ** 2);
  const shortest = Math.sqrt(flankStart(gear) ** 2 - gear.baseDiameter ** 2);
  const pitch = basePitchOf(gear);
  const first = Math.max(1, Math.ceil((shortest - spanLength(gear, 1)) / pitch + 1));
  for (let teeth = first; teeth <= gear.teeth / 2; teeth += 1) {
    const length = spanLength(gear, teeth);
    if (length >= longest) break;
    spans.push({ teeth, length, contactDiameter: Math.hypot(gear.baseDiameter, length) });
  }
  return spans;
}

/**
 * How much thinner the teeth are than drawn, from a span measured on them: (W − W measured)/cos α.
 *
 * On a worn gear this is what the sound teeth have lost.
 *
 * @param gear - The gear as drawn, without thinning.
 * @param measured - Over teeth that are alike; the length in mm.
 * @returns In mm along the reference circle; below 0 where the teeth are thicker than drawn.
 * @throws {@link InputError} when the span cannot be measured on this gear.
 *
 * @example
 * ```ts
 * thinningFromSpan(spurGear({ teeth: 86, module: 2 }), { teeth: 10, length: 58.4 }).toFixed(3); // "0.106"
 * ```
 */
export function thinningFromSpan(gear: CutTooth, measured: Span): number {
  checkIsTooth(gear);
  if (typeof measured !== "object" || measured === null)
    refuse("unreadable", "measured", `${quoted(measured)} is not a span; give its length and the teeth between the jaws`);
  if (!(typeof measured.length === "number" && measured.length > 0))
    refuse(
      numberFault(measured.length),
      "length",
      lengthSentence`${asGiven(measured.length)} is not a span; give its length, above 0`,
    );
  const drawn = spanOver(gear, measured.teeth).length;
  if (Math.abs(drawn - measured.length) > basePitchOf(gear) / 2) {
    refuse(
      "conflict",
      "length",
      lengthSentence`${said.given(measured.length)} over ${measured.teeth} teeth is not this gear, whose span is ${said.measure(drawn)}; count the teeth between the jaws again`,
    );
  }
  return (drawn - measured.length) / Math.cos(radians(gear.pressureAngle));
}
