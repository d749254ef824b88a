import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import { spindleTurnsPerMove } from "../mechanism/prove.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { fromExact, type Ratio, rational } from "../number/ratio.ts";
import type { PlaceByHole, PlaceByScale } from "./place.ts";
import { nearestHoleAt, scalesAt } from "./readings.ts";
import { turnedTo, type Work } from "./work.ts";

/** Where the crank's pin stands on a circle: whole turns and a hole, counted from the start. */
interface Standing {
  readonly turns: number;
  readonly hole: number;
}

const atStart: Standing = { turns: 0, hole: 0 };

/**
 * Every tooth by the nearest hole of a circle, each by itself from the start: the pin is never more
 * than half a space from its place, and no error adds to the next.
 *
 * @param before - The tooth that the first is gone to from; left out, the start.
 */
export function placesByHole(work: Work, circle: number, teeth: readonly number[], before?: number): readonly PlaceByHole[] {
  let last = before === undefined ? atStart : standingAt(work, circle, before);
  return teeth.map((tooth) => {
    const here = standingAt(work, circle, tooth);
    const from = between(last, here, circle);
    last = here;
    return placeAt(work, circle, tooth, here, from);
  });
}

function placeAt(work: Work, circle: number, tooth: number, { turns, hole }: Standing, from: PlaceByHole["from"]): PlaceByHole {
  const turned = turnedTo(work, tooth);
  const error = reached(work.head.wormRatio, circle, { turns, hole }).sub(turned);
  const { dial, ring } = scalesAt(work.head, turned.add(error), work.zero);
  return {
    by: "nearest-hole",
    tooth,
    angle: scalesAt({ ...work.head, dial: null, ring: null }, turned, work.zero).angle,
    errorArcSeconds: error.mul(arcSecondsPerTurn).valueOf(),
    turns,
    hole: (work.startHole + hole) % circle,
    dial,
    ring,
    from,
  };
}

function standingAt(work: Work, circle: number, tooth: number): Standing {
  const { turns, mark } = nearestHoleAt(turnedTo(work, tooth), circle, work.head.wormRatio);
  return { turns, hole: mark };
}

/** Turns the crank to the hole on the mechanism, and looks where that leaves the work. */
function reached(wormRatio: Ratio, circle: number, { turns, hole }: Standing): Fraction {
  if (turns === 0 && hole === 0) return rational(0);
  return fromExact(spindleTurnsPerMove({ wormRatio, turns, spaces: hole, circle }));
}

function between(from: Standing, to: Standing, circle: number): PlaceByHole["from"] {
  const spaces = (to.turns - from.turns) * circle + to.hole - from.hole;
  const size = Math.abs(spaces);
  return { direction: spaces < 0 ? "back" : "forward", turns: Math.floor(size / circle), spaces: size % circle };
}

/** Every tooth by the nearest mark of the dial or the ring, each by itself from the zero. */
export function placesByScale(work: Work, by: "dial" | "ring", teeth: readonly number[]): readonly PlaceByScale[] {
  return teeth.map((tooth) => {
    const { angle, dial, ring } = scalesAt(work.head, turnedTo(work, tooth), work.zero);
    return { by, tooth, angle, errorArcSeconds: (by === "dial" ? dial : ring)?.errorArcSeconds ?? 0, dial, ring };
  });
}

/** The circles of a head on which a job can be set from zero. */
export function hasCircle({ plates }: Head, circle: number): boolean {
  return plates.some(({ faces }) => faces.some(({ circles }) => circles.includes(circle)));
}
