import fc from "fast-check";
import { type DirectForm, defineHead, type Head } from "../../src/index.ts";

/** A plate of 36 holes with ten holes in a row for its pin: every whole degree. */
export const byDegrees: Head = defineHead({
  id: "degree-indexer",
  name: "Degree indexer",
  wormRatio: null,
  directPlates: [{ name: "body", holes: 36, vernierHoles: 10 }],
  ring: { marksPerTurn: 360 },
});

/** Two gears on one arbor, each with a detent, and a notched collar. */
export const byGears: Head = defineHead({
  id: "two-gears",
  name: "Arbor with two gears",
  wormRatio: null,
  directPlates: [
    { name: "large", holes: 60, form: "gear" },
    { name: "small", holes: 56, form: "gear" },
    { name: "collar", holes: 24, form: "collar" },
    { name: "five", holes: 72, form: "detents" },
  ],
});

/** A ring to be read, and nothing else. */
export const byRing: Head = defineHead({
  id: "ring-alone",
  name: "Ring alone",
  wormRatio: null,
  ring: { marksPerTurn: 360, vernierLines: 12 },
});

const plates = fc.uniqueArray(
  fc.record(
    {
      holes: fc.integer({ min: 2, max: 120 }),
      vernierHoles: fc.integer({ min: 2, max: 12 }),
      form: fc.constantFrom<DirectForm>("collar", "detents", "gear"),
    },
    { requiredKeys: ["holes"] },
  ),
  { minLength: 1, maxLength: 4, selector: ({ holes }) => holes },
);

/** Heads that no crank turns, with one plate or a few. */
export const withoutCrank: fc.Arbitrary<Head> = fc.record({ plates, ring: fc.boolean() }).map(({ plates, ring }) =>
  defineHead({
    wormRatio: null,
    directPlates: plates.map((plate, index) => ({ name: `p${index + 1}`, ...plate })),
    ring: ring ? { marksPerTurn: 360 } : null,
  }),
);
