import { divisors, fromExact, lcm } from "../number/ratio.ts";
import { firstSetting, type Search } from "../search/exact-settings.ts";
import { mostDivisions, usualTeethPerMove } from "../setting/target.ts";

/** How far differential settings are looked for on either side, count by count; less far where many teeth per move are tried. */
function stepsEitherWay({ teethPerMove }: Search): number {
  return Math.ceil(36_000 / Math.max(teethPerMove, usualTeethPerMove));
}

/** Counts on either side that are tried by every method before the far ones are listed: most often one of them closes. */
const neighbours = 10;

/**
 * The nearest counts below and above one that cannot be done, by any method asked for.
 *
 * Counts done without gears are divisors of D, R·C, R·lcm(C1, C2) and R times the dial's places,
 * so the nearest are found however far away; differential settings are looked for among the
 * 3,000 counts on either side, or fewer where over 12 teeth per move are tried.
 */
export function nearestCounts(search: Search, divisions: number): readonly number[] {
  const below = countdown(divisions - 1, Math.max(1, divisions - neighbours)).find((count) => closes(search, count));
  const above = countUp(divisions + 1, Math.min(mostDivisions, divisions + neighbours)).find((count) => closes(search, count));
  if (below !== undefined && above !== undefined) return [below, above];
  const far = farCounts(search, divisions);
  return [below ?? far.below, above ?? far.above].filter((count) => count > 0 && Number.isFinite(count));
}

/** The nearest beyond the neighbours: 0 below and infinity above where there is none. */
function farCounts(search: Search, divisions: number): { readonly below: number; readonly above: number } {
  const ungeared = { ...search, methods: search.methods.filter((method) => method !== "differential") };
  const plain = countsWithoutGears(search).filter((count) => count <= mostDivisions);
  const below = plain.filter((count) => count < divisions).findLast((count) => closes(ungeared, count)) ?? 0;
  const above = plain.find((count) => count > divisions && closes(ungeared, count)) ?? Number.POSITIVE_INFINITY;
  const steps = stepsEitherWay(search);
  const greatest = greatestWithGears(search);
  const top = Math.min(divisions - 1, greatest);
  const bottom = divisions + 1;
  const last = Math.min(above - 1, greatest, bottom + steps, mostDivisions);
  return {
    below: countdown(top, Math.max(below + 1, top - steps)).find((count) => closes(search, count)) ?? below,
    above: countUp(bottom, last).find((count) => closes(search, count)) ?? above,
  };
}

function closes(search: Search, divisions: number): boolean {
  return firstSetting(search, { divisions }) !== null;
}

/** Counts among which all that close without gears are found, ascending. */
function countsWithoutGears({ layout, methods }: Search): number[] {
  const wholes = new Set<number>();
  if (methods.includes("direct")) for (const { holes } of layout.head.directPlates) wholes.add(holes);
  if (methods.includes("simple")) {
    if (layout.circles.length > 0 || layout.head.dial !== null) wholes.add(layout.worm.n);
    for (const { holes } of layout.circles) wholes.add(layout.worm.n * holes);
  }
  const { dial } = layout.head;
  if (methods.includes("dial") && dial !== null) wholes.add(layout.worm.n * dial.marksPerTurn * dial.vernierLines);
  if (methods.includes("compound") && layout.head.rearPin) {
    for (const { faces } of layout.head.plates) {
      for (const { circles } of faces) {
        for (const first of circles)
          for (const second of circles) if (first < second) wholes.add(layout.worm.n * lcm(first, second));
      }
    }
  }
  return [...new Set([...wholes].flatMap(divisors))].sort((a, b) => a - b);
}

/** N·h = C·k·(R − g) bounds the counts that gearing can reach. */
function greatestWithGears({ layout, methods, teethPerMove }: Search): number {
  const { gearing, gears, wormRatio } = layout.head;
  if (!methods.includes("differential") || gearing === null || gears.length < 2) return 0;
  const net = fromExact(wormRatio).add(fromExact(gearing.greatestPlateRatio)).valueOf();
  return Math.floor(Math.max(...layout.circles.map(({ holes }) => holes)) * teethPerMove * net);
}

function countUp(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => from + step);
}

function countdown(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, from - to + 1) }, (_, step) => from - step);
}
