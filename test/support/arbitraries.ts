import fc from "fast-check";
import { type CirclesSpec, defineHead, type Head, type HeadSpec } from "../../src/index.ts";

/** How large the heads of an arbitrary may be. */
export interface HeadSize {
  readonly mostTurns: number;
  readonly mostHoles: number;
  readonly mostCircles: number;
  readonly mostGears: number;
}

const common: HeadSize = { mostTurns: 90, mostHoles: 50, mostCircles: 5, mostGears: 8 };

/** Small enough that every move of the head can be made one by one. */
export const small: HeadSize = { mostTurns: 8, mostHoles: 18, mostCircles: 3, mostGears: 5 };

/** A worm ratio of at least 1, often a fraction. */
export function wormRatios(mostTurns: number): fc.Arbitrary<string> {
  return fc.integer({ min: 1, max: 3 }).chain((d) => fc.integer({ min: d, max: mostTurns * d }).map((n) => `${n}/${d}`));
}

function circles({ mostHoles, mostCircles }: HeadSize): fc.Arbitrary<number[]> {
  return fc.uniqueArray(fc.integer({ min: 2, max: mostHoles }), { minLength: 1, maxLength: mostCircles });
}

/** The circles of a face, at times with a diameter to each. */
function faceOf(size: HeadSize): fc.Arbitrary<CirclesSpec> {
  return fc
    .tuple(circles(size), fc.option(fc.integer({ min: 1, max: 90 }), { freq: 1 }))
    .map(([list, apart]) =>
      apart === null ? { circles: list } : { circles: list, diameters: list.map((_, index) => 40.5 + index * apart) },
    );
}

function plates(size: HeadSize): fc.Arbitrary<NonNullable<HeadSpec["plates"]>> {
  const oneFace = faceOf(size);
  const twoFaces = fc.tuple(oneFace, oneFace).map(([front, back]) => ({
    faces: [front, back].map((face, side) => ({ name: ["front", "back"][side] ?? "", ...face })),
  }));
  return fc
    .array(fc.oneof(oneFace, twoFaces), { minLength: 1, maxLength: 2 })
    .map((list) => list.map((plate, index) => ({ name: `plate ${index + 1}`, ...plate })));
}

/** Specs of heads with plates, and with or without all the rest. */
export function headSpecs(size: HeadSize = common): fc.Arbitrary<HeadSpec> {
  return fc.record(
    {
      wormRatio: wormRatios(size.mostTurns),
      plates: plates(size),
      directPlates: fc
        .array(fc.integer({ min: 2, max: 36 }), { maxLength: 2 })
        .map((list) => list.map((holes, index) => ({ name: `ring ${index + 1}`, holes }))),
      rearPin: fc.boolean(),
      dial: fc.record({ marksPerTurn: fc.integer({ min: 2, max: 24 }), vernierLines: fc.integer({ min: 1, max: 3 }) }),
      gears: fc.array(fc.integer({ min: 8, max: 48 }), { maxLength: size.mostGears }),
      idlers: fc.array(fc.integer({ min: 20, max: 60 }), { maxLength: 2 }),
      gearing: fc.record({
        idlersWithCrank: fc.record({ onePair: fc.integer({ min: 0, max: 2 }), twoPairs: fc.integer({ min: 0, max: 2 }) }),
        greatestPlateRatio: fc
          .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 2 }))
          .map(([n, d]) => `${n}/${d}`),
      }),
    },
    { requiredKeys: ["wormRatio", "plates"] },
  );
}

/** Heads with plates, checked. */
export function heads(size: HeadSize = common): fc.Arbitrary<Head> {
  return headSpecs(size).map((spec) => defineHead(spec));
}

/** Counts of divisions. */
export const counts: fc.Arbitrary<number> = fc.integer({ min: 1, max: 400 });

/** The most teeth per move to try. */
export const teethPerMove: fc.Arbitrary<number> = fc.integer({ min: 1, max: 5 });
