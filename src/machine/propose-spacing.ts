import { type Head, mountedPlate, ownedCircles, wormRatioOf } from "../head/head.ts";
import { byMounted } from "../methods/handling.ts";
import { checkAngle, formatAngle } from "../number/angle.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { greatestTerm } from "../number/parse-rational.ts";
import { fromExact, type Revolutions, rational, revolutionsOf, toRevolutions } from "../number/ratio.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import { type UnequalSpacing, unequalSpacing } from "./unequal-spacing.ts";
import { allDifferent, neighboursDiffer, type SpacesWanted } from "./uneven-spaces.ts";

/** What spacing is wanted. */
export interface ProposalOptions {
  /**
   * The most that a space may differ from an even one, in revolutions; left out, a thirtieth of an even
   * space, which is 2° of six flutes. Common practice, no source.
   */
  readonly uneven?: Revolutions | undefined;
  /**
   * Whether every flute has another opposite, so that the diameter can be measured: the second half repeats
   * the first. Left out, true of an even number from 4 on.
   */
  readonly opposite?: boolean | undefined;
  /** The plate that is on the head now, where it is not the head's own `mounted`. */
  readonly mounted?: string | undefined;
}

/** A spacing that is uneven on purpose, each place on a hole. */
export interface ProposedSpacing {
  /** From each flute to the next, as many as flutes; they come to exactly one turn. */
  readonly angles: readonly Revolutions[];
  /** Whether the second half repeats the first. */
  readonly opposite: boolean;
  /** Whether no two spaces are alike, but for those opposite each other; else no two neighbours are. */
  readonly allDiffer: boolean;
  /** The most that any space differs from an even one. */
  readonly uneven: Revolutions;
  /** How it is set: one circle for every place, each move exact. */
  readonly spacing: UnequalSpacing;
}

const proposalKeys = keysOf<ProposalOptions>({ uneven: true, opposite: true, mounted: true });
const mostFlutes = 200;
/** Of an even space, where nothing else is asked. */
const usualPart = 30;

/**
 * Proposes unequal spaces, as for a reamer that is not to chatter: no two neighbours alike, every place
 * on a hole of one circle that is owned, closing to exactly one turn.
 *
 * The law: a turn of the work is R·C holes of a circle of C, and each space a whole number of them. The spaces are
 * spread from the least to the greatest that is allowed, all of them different where there is room for it.
 *
 * @param head - The head, or one that was prepared.
 * @param flutes - 2 to 200.
 * @returns On the mounted plate before others and the smallest circle first, one on which all spaces differ
 * before one on which only neighbours do.
 * @throws {@link InputError} when the head has no plate, when an odd number is to stand opposite, or when no circle has
 * spaces so little uneven: it then says how much it takes.
 *
 * @example
 * ```ts
 * proposeSpacing(readyHeads[0], 6).angles.slice(0, 3); // ["97/600","103/600","1/6"]
 * ```
 */
export function proposeSpacing(head: Head | PreparedHead, flutes: number, options: ProposalOptions = {}): ProposedSpacing {
  const owned = headOf(head);
  checkKeys(options, proposalKeys, "options");
  const { many, opposite } = layoutOf(checkFlutes(flutes), options.opposite);
  const uneven = checkUneven(flutes, options.uneven ?? revolutionsOf(1, usualPart * flutes));
  const mounted = mountedPlate(owned, options.mounted);
  const circles = circlesFor(owned, flutes, many, mounted);
  for (const spread of [allDifferent, neighboursDiffer]) {
    for (const { whole, wanted } of circles) {
      const spaces = spread(wanted(uneven));
      if (spaces === null) continue;
      const angles = Array.from({ length: flutes }, (_, index) => toRevolutions(rational(spaces[index % many] ?? 0, whole)));
      return {
        angles,
        opposite,
        allDiffer: spread === allDifferent,
        uneven: toRevolutions(spaces.map((each) => offEven(each, whole, flutes)).reduce((a, b) => (b.compare(a) > 0 ? b : a))),
        spacing: unequalSpacing(head, angles, options.mounted === undefined ? {} : { mounted: options.mounted }),
      };
    }
  }
  return refuseAll(circles, flutes, uneven, options.uneven !== undefined);
}

function checkFlutes(flutes: unknown): number {
  if (typeof flutes === "number" && Number.isInteger(flutes) && flutes >= 2 && flutes <= mostFlutes) return flutes;
  return refuse(
    wholeNumberFault(flutes),
    "flutes",
    `${quoted(flutes)} is not a number of flutes; give a whole number from 2 to ${mostFlutes}`,
  );
}

/** How many spaces there are before they repeat. */
function layoutOf(flutes: number, asked: unknown): { readonly many: number; readonly opposite: boolean } {
  if (asked !== undefined && typeof asked !== "boolean")
    refuse("unreadable", "opposite", `${quoted(asked)} is neither true nor false`);
  const opposite = asked ?? (flutes % 2 === 0 && flutes >= 4);
  if (opposite && (flutes % 2 === 1 || flutes < 4))
    refuse(
      "conflict",
      "opposite",
      `${flutes} flutes cannot stand opposite each other and be unequal; give an even number from 4 on, or let none be opposite`,
    );
  return { many: opposite ? flutes / 2 : flutes, opposite };
}

function checkUneven(flutes: number, asked: unknown): Revolutions {
  const uneven = checkAngle(asked, "uneven");
  if (fromExact(uneven).compare(rational(1, flutes)) >= 0)
    refuse(
      "out-of-range",
      "uneven",
      `${formatAngle(uneven)} is as much as an even space of ${flutes} flutes, which is ${formatAngle(revolutionsOf(1, flutes))}; give less`,
    );
  return uneven;
}

/** A circle that a turn, or half of one, is whole holes of. */
interface Circle {
  /** Its holes in a turn of the work. */
  readonly whole: number;
  wanted(uneven: Revolutions): SpacesWanted;
}

/** The circles that a turn of the work closes on, in the order in which they are preferred. */
function circlesFor(head: Head, flutes: number, many: number, mounted: string | null): readonly Circle[] {
  const circles = ownedCircles(head);
  if (circles.length === 0)
    refuse(
      "not-owned",
      "head",
      "it has no index plate, so no place is on a hole; give the angles themselves to be set by a scale",
    );
  const { n, d } = fromExact(wormRatioOf(head));
  const [worm, parts, rounds] = [Number(n), Number(d), flutes / many];
  return [...circles]
    .sort((a, b) => byMounted(a, b, mounted) || a.holes - b.holes)
    .filter(({ holes }) => (worm * holes) % (parts * rounds) === 0 && worm * holes <= greatestTerm * parts)
    .map(({ holes }) => {
      const whole = (worm * holes) / parts;
      return { whole, wanted: (uneven) => spacesWanted({ whole, flutes, many }, uneven) };
    });
}

interface Round {
  readonly whole: number;
  readonly flutes: number;
  readonly many: number;
}

function spacesWanted({ whole, flutes, many }: Round, uneven: Revolutions): SpacesWanted {
  const off = fromExact(uneven);
  const even = rational(1, flutes);
  return {
    many,
    sum: whole / (flutes / many),
    least: Math.max(1, Number(even.sub(off).mul(whole).ceil().valueOf())),
    greatest: Number(even.add(off).mul(whole).floor().valueOf()),
  };
}

function offEven(spaces: number, whole: number, flutes: number) {
  return rational(spaces, whole).sub(rational(1, flutes)).abs();
}

/** The least that spaces have to be uneven on any circle: neighbours of the even one in whole holes are tried outward. */
function refuseAll(circles: readonly Circle[], flutes: number, uneven: Revolutions, isAsked: boolean): never {
  const least = circles
    .flatMap((circle) => leastUneven(circle, flutes))
    .reduce<ReturnType<typeof offEven> | null>((a, b) => (a === null || b.compare(a) < 0 ? b : a), null);
  const place = isAsked ? "uneven" : "flutes";
  if (least === null)
    refuse(
      "cannot-be-made",
      "flutes",
      `${flutes} unequal spaces close to one turn on none of this head's circles; give fewer, or let none be opposite`,
    );
  refuse(
    "cannot-be-made",
    place,
    `no circle of this head has ${flutes} spaces within ${formatAngle(uneven, 1)} of even ones, no two neighbours alike; it takes ${toRevolutions(least)} of a turn, ${formatAngle(toRevolutions(least), 1)}`,
  );
}

const mostOutward = 4;

function leastUneven({ whole, wanted }: Circle, flutes: number): readonly ReturnType<typeof offEven>[] {
  const even = Math.floor(whole / flutes);
  return Array.from({ length: 2 * mostOutward }, (_, index) => even + index - mostOutward + 1)
    .filter((spaces) => spaces >= 1)
    .map((spaces) => offEven(spaces, whole, flutes))
    .sort((a, b) => a.compare(b))
    .filter((off) => off.n > 0n && off.compare(rational(1, flutes)) < 0 && neighboursDiffer(wanted(toRevolutions(off))) !== null)
    .slice(0, 1);
}
