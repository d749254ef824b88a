import { wormRatioOf } from "../head/head.ts";
import { invariant } from "../number/errors.ts";
import { fromExact } from "../number/ratio.ts";
import type { PlaceByHole, PlaceByScale } from "./place.ts";
import {
  angleOnScales,
  holesReader,
  placesReader,
  type Reading,
  ringReader,
  scaleReader,
  scalesReader,
  type Turned,
} from "./scale-reader.ts";
import type { WayFromZero } from "./way.ts";
import { partsTo, type Work, wayRound } from "./work.ts";

/**
 * Where the teeth of a list lie from the start, one after the other, in parts of a turn of which the
 * work has as many as places. A list that never turns back reaches what lies behind a whole turn on,
 * the start as well.
 *
 * @param before - The tooth that the first is gone to from; left out, the start.
 */
export function partsVisited(work: Work, teeth: readonly number[], before?: number): readonly number[] {
  let parts = before === undefined ? 0 : partsTo(work, before);
  return teeth.map((tooth) => {
    parts += wayRound(work, parts, partsTo(work, tooth));
    return parts;
  });
}

/** A tooth with where it lies from the start, the whole rounds of the list among it. */
export interface Wanted {
  readonly tooth: number;
  readonly turned: Turned;
}

/** The teeth of a list, each with where it lies. */
export function placesWanted(work: Work, teeth: readonly number[], before?: number): readonly Wanted[] {
  const parts = partsVisited(work, teeth, before);
  return teeth.map((tooth, index) => ({ tooth, turned: partOf(work, parts[index] ?? 0) }));
}

/** So many parts of a turn of the work. */
export function partOf({ count }: Work, parts: number): Turned {
  return { n: BigInt(parts), d: BigInt(count) };
}

/**
 * Every tooth by the nearest hole of a circle or of a direct plate, each by itself from the start: the pin is never
 * more than half a space from its place, and no error adds to the next.
 */
export function placesByHole(
  work: Work,
  { by, setting }: WayFromZero<"nearest-hole"> | WayFromZero<"nearest-direct">,
  teeth: readonly number[],
  before?: number,
): readonly PlaceByHole[] {
  const { circle } = setting;
  const row = by === "nearest-direct" ? setting.vernierHoles : undefined;
  const holes = by === "nearest-direct" ? placesReader(circle) : holesReader(circle, wormRatioOf(work.head));
  const scalesShow = scalesReader(work.head, work.zero);
  const spacesOf = ({ turns, mark }: Reading) => turns * circle + mark;
  let last = before === undefined ? 0 : spacesOf(holes.read(partOf(work, partsTo(work, before))));
  return placesWanted(work, teeth, before).map(({ tooth, turned }) => {
    const hole = holes.read(turned);
    const spaces = spacesOf(hole);
    const from = between(spaces - last, circle);
    last = spaces;
    return {
      by,
      tooth,
      angle: angleAt(work, turned),
      errorArcSeconds: hole.errorArcSeconds,
      turns: hole.turns,
      ...holeOf(work, hole.mark, circle, row),
      ...scalesShow(holes.set(turned)),
      from,
    };
  });
}

/**
 * The hole that a pin stands in after so many places of a circle, from where it starts. Through a row of
 * holes each space of a direct plate is as many places: the hole is that of the plate, and the row has one of its own.
 */
export function holeOf(
  { startHole }: Pick<Work, "startHole">,
  place: number,
  circle: number,
  row: number | undefined,
): Pick<PlaceByHole, "hole" | "vernierHole"> {
  if (row === undefined) return { hole: (startHole + place) % circle };
  return { hole: (startHole + Math.floor(place / row)) % (circle / row), vernierHole: place % row };
}

function between(spaces: number, circle: number): PlaceByHole["from"] {
  const size = Math.abs(spaces);
  return { direction: spaces < 0 ? "back" : "forward", turns: Math.floor(size / circle), spaces: size % circle };
}

/**
 * Every tooth by the nearest mark of the dial or the ring, each by itself from the zero. The other
 * scale shows where that leaves the work.
 */
export function placesByScale(
  work: Work,
  by: "dial" | "ring",
  teeth: readonly number[],
  before?: number,
): readonly PlaceByScale[] {
  const { head, zero } = work;
  const scale = head[by];
  invariant(scale !== null, () => `${head.id} has no ${by} to set places by`);
  const reader = by === "dial" ? scaleReader(scale, fromExact(wormRatioOf(head)), zero) : ringReader(scale, zero);
  const other = scalesReader(by === "dial" ? { ...head, dial: null } : { ...head, ring: null }, zero);
  return placesWanted(work, teeth, before).map(({ tooth, turned }) => {
    const read = reader.read(turned);
    const { dial, ring } = other(reader.set(turned));
    return {
      by,
      tooth,
      angle: angleAt(work, turned),
      errorArcSeconds: read.errorArcSeconds,
      dial: by === "dial" ? read : dial,
      ring: by === "ring" ? read : ring,
    };
  });
}

/** The true place on the ring, which is at the same mark after each turn of the work. */
export function angleAt({ zero }: Work, { n, d }: Turned): PlaceByScale["angle"] {
  return angleOnScales({ n: ((n % d) + d) % d, d }, zero);
}
