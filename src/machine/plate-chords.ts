import { checkIsHead } from "../head/check-is-head.ts";
import type { Head } from "../head/head.ts";
import type { Face } from "../head/plate.ts";
import { chordFactor } from "./coordinates.ts";

/** The straight distance between two holes of a circle, from middle to middle. */
export interface HoleChord {
  /** The holes, counted from 0. */
  readonly from: number;
  readonly to: number;
  /** In diameters of the circle. Above 0, at most 1. */
  readonly ratio: number;
  /** In mm; null where the circle's diameter is not known. */
  readonly length: number | null;
}

/** What is measured to check the holes of one circle. */
export interface CircleChords {
  readonly holes: number;
  /** In mm, as the head states it; null where it does not. */
  readonly diameter: number | null;
  /** From hole 0 to the next. */
  readonly first: HoleChord;
  /** From the last hole back to hole 0: where errors of spacing that add up are found. Of a true circle it is as long as the first. */
  readonly last: HoleChord;
  /** From hole 0 to the hole a quarter of the way round, rounded down; null where that is no further than the first. */
  readonly quarter: HoleChord | null;
  /** Likewise half way round: of an even number of holes, the diameter itself. */
  readonly half: HoleChord | null;
}

/** The chords of a plate face, circle by circle. */
export interface FaceChords {
  readonly plate: string;
  readonly face: string | null;
  readonly circles: readonly CircleChords[];
}

/**
 * The chords by which index plates are checked with a caliper: from the first hole of each circle to
 * the next, to a quarter and half way round, and from the last hole back to the first.
 *
 * The law: chord = diameter · sin(π·apart/holes). Where the head states a circle's diameter the
 * chords are in mm too; else the ratio serves: one chord measured gives the diameter, and the others
 * are checked by it.
 *
 * @returns In the order of the head's plates and faces, circles ascending.
 * @throws {@link InputError} when it is not a head.
 *
 * @example
 * ```ts
 * plateChords(defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [18], diameters: [80] }] }))[0].circles[0].half; // {"from":0,"to":9,"ratio":1,"length":80}
 * ```
 */
export function plateChords(head: Head): readonly FaceChords[] {
  checkIsHead(head);
  return head.plates.flatMap(({ name, faces }) =>
    faces.map((face) => ({ plate: name, face: face.name, circles: chordsOfFace(face) })),
  );
}

/**
 * The chords that tell most of one circle: from hole 0 to the first and the second after it, to a quarter and half way
 * round, and from the last hole back to hole 0. Of few holes some are one, and stand once.
 */
export function chordsToMeasure(holes: number, diameter: number): readonly HoleChord[] {
  const to = [...new Set([1, 2, Math.floor(holes / 4), Math.floor(holes / 2)])].filter((hole) => hole > 0 && hole < holes);
  const ends = to.toSorted((one, other) => one - other).map((hole) => [0, hole] as const);
  return [...ends, [holes - 1, 0] as const].map(([from, end]) => chordBetween(holes, diameter, from, end));
}

function chordBetween(holes: number, diameter: number | null, from: number, to: number): HoleChord {
  const ratio = chordFactor(Math.abs(to - from), holes);
  return { from, to, ratio, length: diameter === null ? null : diameter * ratio };
}

function chordsOfFace({ circles, diameters }: Face): readonly CircleChords[] {
  return circles.map((holes, index) => {
    const diameter = diameters?.[index] ?? null;
    const between = (from: number, to: number) => chordBetween(holes, diameter, from, to);
    const further = (to: number) => (to > 1 ? between(0, to) : null);
    return {
      holes,
      diameter,
      first: between(0, 1),
      last: between(holes - 1, 0),
      quarter: further(Math.floor(holes / 4)),
      half: further(Math.floor(holes / 2)),
    };
  });
}
