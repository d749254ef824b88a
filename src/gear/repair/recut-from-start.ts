import { type Head, type OwnedCircle, ownedCircles } from "../../head/head.ts";
import { type HolePosition, nearestHole } from "../../machine/nearest-holes.ts";
import { type Reading, scalesAt } from "../../machine/readings.ts";
import { fromExact, rational } from "../../number/ratio.ts";
import type { RecutPlan } from "./damaged-teeth.ts";
import { type Place, placesOf, type RecutOptions, type RecutPurpose } from "./recut-moves.ts";

/** One place of a repair set by itself from the start space. */
export interface NearRecutPlace {
  readonly toothSpace: number;
  readonly purpose: RecutPurpose;
  /** The nearest hole; null where the place is set by a scale. Its `tooth` counts from the start space, which is tooth 1. */
  readonly hole: HolePosition | null;
  readonly dial: Reading | null;
  readonly ring: Reading | null;
  /** What setting it so leaves, from the start space; + is too far. */
  readonly errorArcSeconds: number;
}

/** The places of a repair set each by itself from the sound start space. */
export interface NearRecutFromStart {
  readonly by: "nearest-hole" | "dial" | "ring";
  /** The circle that leaves the spaces to be recut least far off; null where they are set by a scale. */
  readonly circle: OwnedCircle | null;
  readonly places: readonly NearRecutPlace[];
  /** The greatest error of any space to be recut, without sign. */
  readonly worstArcSeconds: number;
}

/** The places by the nearest holes of the best circle, by the dial and by the ring, as far as the head has them. */
export function recutsFromStart(head: Head, plan: RecutPlan, options: RecutOptions): readonly NearRecutFromStart[] {
  const scales = placesOf(plan).map((place) => ({ place, ...scalesFor(head, plan, place, options) }));
  const best = bestCircle(head, plan);
  const ways: (Omit<NearRecutFromStart, "worstArcSeconds"> | null)[] = [
    best && {
      by: "nearest-hole",
      circle: best.circle,
      places: scales.map(({ place, dial, ring }, index) => {
        const hole = best.holes[index] ?? null;
        return { ...named(place), hole, dial, ring, errorArcSeconds: hole?.errorArcSeconds ?? 0 };
      }),
    },
    ...(["dial", "ring"] as const).map((by) =>
      head[by] === null
        ? null
        : {
            by,
            circle: null,
            places: scales.map(({ place, dial, ring }) => ({
              ...named(place),
              hole: null,
              dial,
              ring,
              errorArcSeconds: (by === "dial" ? dial : ring)?.errorArcSeconds ?? 0,
            })),
          },
    ),
  ];
  return ways.filter((way) => way !== null).map((way) => ({ ...way, worstArcSeconds: worstOf(way.places) }));
}

function named({ toothSpace, purpose }: Place) {
  return { toothSpace, purpose };
}

function scalesFor(head: Head, { teeth }: RecutPlan, { tooth }: Place, { startAngle = "0", side = "plus" }: RecutOptions) {
  return scalesAt(head, fromExact(startAngle).add(rational(tooth - 1, teeth)), side);
}

/** The circle whose holes lie nearest to the spaces to be recut; of equal ones a mounted one, then the largest. */
function bestCircle(head: Head, plan: RecutPlan): { circle: OwnedCircle; holes: readonly HolePosition[] } | null {
  const wanted = placesOf(plan);
  const tried = ownedCircles(head).map((circle) => {
    const holes = wanted.map(({ tooth }) => nearestHole(head, plan.teeth, circle.holes, tooth));
    const worst = worstOf(holes.map((hole, index) => ({ ...hole, purpose: wanted[index]?.purpose ?? "recut" })));
    return { circle, holes, worst };
  });
  const isMounted = ({ circle }: (typeof tried)[number]) => Number(circle.plate === head.mounted);
  return tried.sort((a, b) => a.worst - b.worst || isMounted(b) - isMounted(a) || b.circle.holes - a.circle.holes)[0] ?? null;
}

/** Only the spaces that are cut: where the start and the proof space stand hurts no tooth. */
export function worstOf(places: readonly { readonly purpose: RecutPurpose; readonly errorArcSeconds: number }[]): number {
  const cuts = places.filter(({ purpose }) => purpose === "recut");
  return Math.max(0, ...cuts.map(({ errorArcSeconds }) => Math.abs(errorArcSeconds)));
}
