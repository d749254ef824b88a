import { type Head, type HeadInShort, inShort } from "../head/head.ts";
import { allMethods } from "../methods/registry.ts";
import { take } from "../number/effort.ts";
import { type Search, searchOn } from "../search/exact-settings.ts";
import { type PreparedHead, prepare } from "../search/prepare.ts";
import { type Kind, kindOf } from "../setting/kind.ts";
import type { Method } from "../setting/setting.ts";
import { indexRows, type TableRow } from "../table.ts";
import { bestCircles, type CircleTally, type CircleToAdd, tallyCircles } from "./circles-to-add.ts";
import { addCount, anyOf, type CountSet, hasCount, noCounts } from "./count-set.ts";
import { type KitEfforts, kitEfforts, type UntriedOfKit, untriedOfKit } from "./efforts.ts";
import { type ExpectedCount, expectationsOf } from "./expected.ts";
import { type GearTally, tallyGears } from "./gear-tally.ts";
import { bestGears, type GearsToBuy } from "./gears-to-buy.ts";
import { type CoverageOptions, checkKitOptions, type KitAsked } from "./kit-options.ts";
import type { Lacking } from "./lacking.ts";
import { bestPlates, type PlateToAdd } from "./plates-to-add.ts";
import { smallestSet } from "./smallest-set.ts";
import { type WithoutPlate, withoutEachPlate } from "./without-plate.ts";

/** What a list of one's own takes. */
export interface WantedCounts {
  /** What the head does of it now. */
  readonly done: readonly number[];
  /** What it does not, though it would with the set. */
  readonly missing: readonly number[];
  /** What no circle and no gears of the sizes tried would do. */
  readonly left: readonly number[];
  /** The fewest circles and gears that do all that is missing. */
  readonly set: {
    readonly circles: readonly number[];
    readonly gears: readonly number[];
    /** Whether every smaller set was tried in vain; else it is the best found. */
    readonly smallest: boolean;
  };
}

/** What a head does over a range, what is lost with a plate, and what would add the most. */
export interface Coverage {
  readonly head: HeadInShort;
  readonly from: number;
  readonly to: number;
  /** Each count of the range with the kind of setting that is preferred for it; null where there is none. */
  readonly counts: readonly { readonly divisions: number; readonly kind: Kind | null }[];
  /** The counts of the range by the method that is preferred for each. */
  readonly byMethod: Readonly<Record<Method, readonly number[]>>;
  /** The counts of the range, and of the list, that the head cannot do; ascending. */
  readonly missing: readonly number[];
  /** Those of them that one would think are done, and why. */
  readonly expected: readonly ExpectedCount[];
  /** What of the range is lost with each plate. */
  readonly withoutPlate: readonly WithoutPlate[];
  /** One circle more, on a plate of its own: up to six, the best first. */
  readonly bestCircles: readonly CircleToAdd[];
  /** One plate more, the best first: those that common heads come with, and one to drill. */
  readonly bestPlates: readonly PlateToAdd[];
  /** One gear more, and two: up to three of each, the best first. */
  readonly bestGears: readonly GearsToBuy[];
  /** What the list takes; null where none was given. */
  readonly want: WantedCounts | null;
  /** Whether all of this was worked out to its end. */
  readonly complete: boolean;
  /** What was not; empty on any head that a usual shop has. What is there stands, but there may be better. */
  readonly untried: readonly UntriedOfKit[];
}

const mostCircles = 6;
const mostGears = 3;

/**
 * What a head does over a range of counts, what it loses with each plate, and what to buy or drill next.
 *
 * A circle, a plate or gears that are added are given with the missing counts that they make possible, by
 * any method: each of them is found by the search on the head with this added, and proved there. With a
 * list of one's own, what does most of the list comes first, and the smallest set that does all of it is found.
 *
 * @param on - The head, or one that was prepared.
 * @returns Ranked by how many counts each adds: of the list first, where there is one; of those that
 * add as much, the smaller first. A circle is on a plate of its own, and has no other to be paired with.
 * @throws {@link InputError} when the range is upside down or over 2,000 counts, or when a count, a size
 * or a method is not allowed.
 *
 * @example
 * ```ts
 * coverage(readyHeads[1], { from: 50, to: 60 }).bestCircles.map(({ circle, unlocks }) => `${circle}: ${unlocks}`)[0]; // "53: 53"
 * ```
 */
export function coverage(on: Head | PreparedHead, options: CoverageOptions): Coverage {
  const { from, to, want, circleSizes, gearSizes, ...asked } = checkKitOptions(options);
  const prepared = prepare(on);
  const search = searchOn(prepared, asked);
  const rows = [...indexRows(prepared, { from, to, ...asked })];
  const beyond = (want ?? [])
    .filter((each) => each < from || each > to)
    .flatMap((each) => [...indexRows(prepared, { from: each, to: each, ...asked })]);
  const all = [...rows, ...beyond].sort((a, b) => a.divisions - b.divisions);
  const efforts = kitEfforts();
  const lacking = lackingOf(search, all, want);
  // No circle and no gear does anything where no crank turns the spindle.
  const sizes = prepared.head.wormRatio === null ? { circleSizes: [], gearSizes: [] } : { circleSizes, gearSizes };
  const toAdd = whatToAdd(lacking, sizes, efforts);
  const answer = {
    head: inShort(prepared.head),
    from,
    to,
    counts: rows.map(({ divisions, setting }) => ({ divisions, kind: setting === null ? null : kindOf(setting) })),
    byMethod: byMethod(rows),
    missing: lacking.counts,
    expected: expectedOf(lacking.counts),
    withoutPlate: withoutEachPlate(search, rows, efforts.plates),
    ...toAdd.best,
    want: want === null ? null : wantedOf(want, lacking, toAdd, efforts),
  };
  const untried = untriedOfKit(
    efforts,
    all.every(({ complete }) => complete),
  );
  return { ...answer, complete: untried.length === 0, untried };
}

function byMethod(rows: readonly TableRow[]): Coverage["byMethod"] {
  const counts = (method: Method) => rows.filter(({ setting }) => setting?.method === method).map(({ divisions }) => divisions);
  return Object.fromEntries(allMethods.map((method) => [method, counts(method)])) as unknown as Coverage["byMethod"];
}

function expectedOf(missing: readonly number[]): readonly ExpectedCount[] {
  return missing
    .map((divisions) => ({ divisions, because: expectationsOf(divisions) }))
    .filter(({ because }) => because.length > 0);
}

function lackingOf(search: Search, rows: readonly TableRow[], want: readonly number[] | null): Lacking {
  const counts = rows.filter(({ setting }) => setting === null).map(({ divisions }) => divisions);
  const wanted = noCounts(counts.length);
  for (const [place, divisions] of counts.entries()) if (want?.includes(divisions)) addCount(wanted, place);
  return { search, counts, wanted };
}

/** What was tallied, and the best of it. */
interface ToAdd {
  readonly circles: readonly CircleTally[];
  readonly gears: GearTally;
  readonly best: Pick<Coverage, "bestCircles" | "bestPlates" | "bestGears">;
}

function whatToAdd(
  lacking: Lacking,
  { circleSizes, gearSizes }: Pick<KitAsked, "circleSizes" | "gearSizes">,
  efforts: KitEfforts,
): ToAdd {
  const circles = tallyCircles(lacking, circleSizes, efforts.circles);
  const gears = tallyGears(lacking, gearSizes, efforts.gears);
  return {
    circles,
    gears,
    best: {
      bestCircles: bestCircles(lacking, circles, mostCircles, efforts.circles),
      bestPlates: bestPlates(lacking, circles, efforts["plates-to-add"]),
      bestGears: bestGears(lacking, gears, mostGears, efforts.gears),
    },
  };
}

function wantedOf(
  want: readonly number[],
  lacking: Lacking,
  { circles, gears }: Pick<ToAdd, "circles" | "gears">,
  efforts: KitEfforts,
): WantedCounts {
  const can = whatCanBe(lacking, { circles, gears }, efforts);
  const set = smallestSet(can, lacking.counts.length, circles, gears, efforts.set);
  const placed = (is: (place: number) => boolean) =>
    lacking.counts.filter((_, place) => hasCount(lacking.wanted, place) && is(place));
  return {
    done: want.filter((divisions) => !lacking.counts.includes(divisions)),
    missing: placed((place) => hasCount(can, place)),
    left: placed((place) => !hasCount(can, place)),
    set: {
      circles: set.circles.map(({ holes }) => holes).sort((a, b) => a - b),
      gears: [...set.gears].sort((a, b) => a - b),
      smallest: set.smallest,
    },
  };
}

/** Those of the list that any circle, any gear or any two gears would do. */
function whatCanBe(
  { wanted, counts }: Lacking,
  { circles, gears }: Pick<ToAdd, "circles" | "gears">,
  { set }: KitEfforts,
): CountSet {
  let can = anyOf(noCounts(counts.length), ...circles.map(({ does }) => does));
  for (const [index, one] of gears.sizes.entries()) {
    can = anyOf(can, gears.one(one));
    for (const other of gears.sizes.slice(index)) {
      if (take(set, counts.length >> 3)) can = anyOf(can, gears.two(one, other));
    }
  }
  const both = noCounts(counts.length);
  for (const place of counts.keys()) if (hasCount(can, place) && hasCount(wanted, place)) addCount(both, place);
  return both;
}
