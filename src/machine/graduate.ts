import { type Head, type HeadInShort, inShort } from "../head/head.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { fromExact, groupDigits, type Ratio, type Revolutions, rational, toRatio, toRevolutions } from "../number/ratio.ts";
import { searchKeys } from "../search/exact-settings.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import { checkDivisions } from "../setting/target.ts";
import { checkListed } from "./listed.ts";
import type { Place } from "./place.ts";
import { type NoJob, type PlannedJob, planJob } from "./plan.ts";
import type { PlanOptions } from "./plan-options.ts";
import { type LineStyle, type ScaleLine, scaleLines, styleKeys } from "./scale-lines.ts";
import { length, type ScrewDial, type ScrewGeared, type StraightLines, straightLines } from "./straight-scale.ts";
import { type Vernier, type VernierSpec, vernier } from "./vernier.ts";

/** A scale round a dial or a sector. */
export interface RoundScale extends LineStyle {
  /** Spaces of the whole circle. */
  readonly divisions: number;
  /** Spaces that are cut, one line more; left out, all round. Not beside a vernier. */
  readonly spaces?: number | undefined;
  /** Cuts the vernier to this scale instead. */
  readonly vernier?: VernierSpec | undefined;
}

/** A scale along a rule or a slide. */
export interface StraightScale extends LineStyle {
  /** From line to line, in mm, exact: `1`, `"0.5"`, `"127/200"` for a fortieth of an inch. */
  readonly space: number | string;
  /** Spaces that are cut, one line more. Not beside a vernier. */
  readonly spaces?: number | undefined;
  /** Cuts the vernier to this scale instead. */
  readonly vernier?: VernierSpec | undefined;
}

/** How the head is set for a round scale, as for a plan. */
export type GraduateOptions = Pick<
  PlanOptions,
  "methods" | "teethPerMove" | "prefer" | "mounted" | "setting" | "by" | "startHole" | "startAngle" | "side"
>;

const roundKeys = keysOf<RoundScale>({ divisions: true, spaces: true, vernier: true, ...styleKeys });
const straightKeys = keysOf<StraightScale>({ space: true, spaces: true, vernier: true, ...styleKeys });
const optionKeys = keysOf<GraduateOptions>({
  ...searchKeys,
  setting: true,
  by: true,
  startHole: true,
  startAngle: true,
  side: true,
});

/** A line of a round scale: `place` says how it is gone to, as its plan does. */
export interface RoundLine extends ScaleLine {
  readonly place: Place;
}

/** A round scale, line by line. */
export interface GraduatedRound {
  readonly planned: true;
  readonly shape: "round";
  readonly head: HeadInShort;
  /** Of the main scale, spaces of the whole circle. */
  readonly divisions: number;
  /** Null where the scale itself is cut. */
  readonly vernier: Vernier | null;
  /** From line to line, exact. */
  readonly step: Revolutions;
  /** The finest that scale and vernier show, exact; null without one. */
  readonly leastCount: Revolutions | null;
  readonly exact: boolean;
  /** No line lies further from its place, in arc-seconds. */
  readonly worstArcSeconds: number;
  /** The plan that is followed; its places stand with the lines. */
  readonly plan: Omit<PlannedJob, "places">;
  /** In the order of the work. */
  readonly lines: readonly RoundLine[];
}

/** A straight scale, line by line. */
export interface GraduatedStraight extends StraightLines {
  readonly planned: true;
  readonly shape: "straight";
  /** Of the main scale, from line to line in mm, exact. */
  readonly space: Ratio;
  readonly vernier: Vernier | null;
  /** From line to line, in mm, exact. */
  readonly step: Ratio;
  /** The finest that scale and vernier show, in mm, exact; null without one. */
  readonly leastCount: Ratio | null;
  readonly exact: boolean;
}

/** A scale, line by line; `shape` tells which. */
export type Graduated = GraduatedRound | GraduatedStraight;

/**
 * The lines of a dial, a sector or a rule, or of the vernier to it: where the crank or the screw stands for each, whether
 * it is long, medium or short, and what is stamped at it.
 *
 * A round scale is cut on a head, by its plan. A straight one is cut by the table's screw: by its dial, or geared to a
 * head; every line by itself from the first.
 *
 * @param on - The head, or one that was prepared, for a round scale; the screw for a straight one.
 * @param scale - What is cut.
 * @param options - How the head is set for a round scale.
 * @returns The scale, or why the head can set none of it, not even nearly: `planned` tells which.
 * @throws {@link InputError} when a part is not allowed, the scale goes more than round, or it has over 50,000 lines.
 *
 * @example
 * ```ts
 * graduate(readyHeads[0], { divisions: 100 }).lines[10].figure; // "10"
 * graduate({ lead: 5, marks: 250 }, { space: 1, spaces: 20 }).lines[7].at; // {"turns":1,"marks":100}
 * ```
 */
export function graduate(on: Head | PreparedHead, scale: RoundScale, options?: GraduateOptions): GraduatedRound | NoJob;
export function graduate(on: ScrewDial | ScrewGeared, scale: StraightScale): GraduatedStraight;
export function graduate(
  on: Head | PreparedHead | ScrewDial | ScrewGeared,
  scale: RoundScale | StraightScale,
  options: GraduateOptions = {},
): Graduated | NoJob {
  checkKeys(options, optionKeys, "options");
  if (!isScrew(on)) {
    checkKeys(scale, roundKeys, "scale");
    return round(on, scale as RoundScale, options);
  }
  checkKeys(scale, straightKeys, "scale");
  const [idle] = Object.keys(options);
  if (idle !== undefined) refuse("no-effect", idle, "goes with a round scale on a head; leave it out");
  return straight(on, scale as StraightScale);
}

function isScrew(on: unknown): on is ScrewDial | ScrewGeared {
  return typeof on === "object" && on !== null && "lead" in on;
}

function round(on: Head | PreparedHead, scale: RoundScale, options: GraduateOptions): GraduatedRound | NoJob {
  const head = headOf(on);
  const divisions = checkDivisions(scale.divisions);
  const ofVernier = scale.vernier === undefined ? null : vernier(scale.vernier);
  const step = rational(1, divisions).mul(ofVernier === null ? 1 : fromExact(ofVernier.space));
  const isAllRound = ofVernier === null && (scale.spaces === undefined || scale.spaces === divisions);
  const count = isAllRound ? divisions : linesOf(scale, ofVernier);
  checkListed(count, "divisions");
  if (!isAllRound && step.mul(count - 1).compare(1) >= 0)
    refuse(
      "cannot-be-made",
      ofVernier === null ? "spaces" : "vernier",
      `${groupDigits(count)} lines go round the whole circle and more; give fewer spaces`,
    );
  const target = step.n === 1n ? { divisions: Number(step.d) } : { angle: toRevolutions(step) };
  const plan = planJob(on, target, {
    ...options,
    // Of a part of the circle every line is gone to from the one before it.
    ...(!isAllRound && { teethPerMove: options.teethPerMove ?? 1, teeth: Array.from({ length: count }, (_, line) => line + 1) }),
  });
  if (!plan.planned) return plan;
  const { places, ...planned } = plan;
  const style = scaleLines(count, styleOf(scale), ofVernier);
  return {
    planned: true,
    shape: "round",
    head: inShort(head),
    divisions,
    vernier: ofVernier,
    step: toRevolutions(step),
    leastCount: ofVernier && toRevolutions(fromExact(ofVernier.leastCount).div(divisions)),
    exact: plan.exact,
    worstArcSeconds: plan.worstArcSeconds,
    plan: planned,
    lines: places.map((place): RoundLine => ({ ...(style[place.tooth - 1] as ScaleLine), place })),
  };
}

function straight(on: ScrewDial | ScrewGeared, scale: StraightScale): GraduatedStraight {
  const space = length(scale.space, "space");
  const ofVernier = scale.vernier === undefined ? null : vernier(scale.vernier);
  const count = linesOf(scale, ofVernier);
  checkListed(count, "spaces");
  const step = ofVernier === null ? space : space.mul(fromExact(ofVernier.space));
  const lines = straightLines(on, step, scaleLines(count, styleOf(scale), ofVernier));
  return {
    planned: true,
    shape: "straight",
    space: toRatio(space),
    vernier: ofVernier,
    step: toRatio(step),
    leastCount: ofVernier && toRatio(space.mul(fromExact(ofVernier.leastCount))),
    exact: lines.worstMm === 0,
    ...lines,
  };
}

/** Lines to cut where they do not go all round: one more than the spaces. */
function linesOf({ spaces }: RoundScale | StraightScale, ofVernier: Vernier | null): number {
  if (ofVernier !== null) {
    if (spaces !== undefined) refuse("conflict", "spaces", "are given beside a vernier, which has its own; leave them out");
    return ofVernier.spaces * (ofVernier.twoSided ? 2 : 1) + 1;
  }
  if (typeof spaces === "number" && Number.isInteger(spaces) && spaces >= 1) return spaces + 1;
  return refuse(wholeNumberFault(spaces), "spaces", `${quoted(spaces)} is not a number of spaces; give a whole number from 1`);
}

function styleOf({ long, medium, figureEvery, figureFrom, perLine }: LineStyle): LineStyle {
  return { long, medium, figureEvery, figureFrom, perLine };
}
