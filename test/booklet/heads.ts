import fc from "fast-check";
import { defineHead, type Head } from "../../src/index.ts";
import { ready } from "../support/ready.ts";

const usual = ready("ratio-40-plates-15-49");

/** A set with one plate lost, a direct plate, and a few gears. */
export const secondHand: Head = defineHead({
  id: "second-hand-40",
  name: "Second-hand 40:1 head, plate 2 lost",
  wormRatio: 40,
  plates: [
    { name: "1", circles: [15, 16, 17, 18, 19, 20] },
    { name: "3", circles: [37, 39, 41, 43, 47, 49] },
  ],
  directPlates: [{ name: "nose", holes: 24 }],
  rearPin: true,
  gears: [24, 28, 32, 40, 48, 56, 72],
});

/** Most counts of the book have more divisions than its crank reaches holes: nothing comes near them. */
export const fiveToOne: Head = defineHead({
  id: "ratio-5",
  wormRatio: 5,
  plates: usual.plates.slice(0, 1),
});

/** Hundreds of turns a division: what a move gives without its gears is hardly off the count, and is none. */
export const manyTurns: Head = defineHead({
  id: "ratio-4000",
  wormRatio: 4000,
  plates: usual.plates,
  rearPin: true,
  gears: usual.gears,
});

/** A worm ratio that is no whole number, so that some counts need two teeth a move. */
export const halfTurn: Head = defineHead({
  id: "ratio-81-over-2",
  wormRatio: "81/2",
  plates: [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }],
  rearPin: true,
});

/** A dial on a ratio that is no whole number: a move of one tooth does not fall on a mark, one of several does. */
export const dialThird: Head = defineHead({
  id: "dial-ratio-1-over-3",
  wormRatio: "1/3",
  dial: { marksPerTurn: 2, vernierLines: 4 },
});

/** As long as names may be. */
export const longNames: readonly string[] = [
  "first plate, bought with the head, its rim is chipped at one",
  "second plate, from the old machine in the shed by the river",
  "third plate, drilled in the spring from a blank of cast iron",
];

/** A direct plate by a long name. */
export const brassPlate = "the brass plate on the spindle nose, turning with the work";

/** The usual head as someone has it who names plates by where they came from. */
export const longNamed: Head = defineHead({
  id: "long-names",
  name: "The old dividing head from the tool room, with all its parts",
  wormRatio: 40,
  plates: usual.plates.map(({ faces }, index) => ({ name: longNames[index] ?? "", faces })),
  directPlates: [{ name: brassPlate, holes: 24 }],
  rearPin: true,
  gears: usual.gears,
});

const name = fc
  .string({ unit: fc.constantFrom(..."ABCXYZabcxyz0123456789 -&<>()/°′"), minLength: 1, maxLength: 60 })
  .filter((text) => text.trim() !== "");
const circles = fc.uniqueArray(fc.integer({ min: 2, max: 400 }), { minLength: 1, maxLength: 40 });
/** The circles of a face, at times with diameters, the outermost first or last. */
const face = fc
  .tuple(circles, fc.constantFrom(null, 1, -1), fc.integer({ min: 1, max: 9 }))
  .map(([list, way, apart]) =>
    way === null ? { circles: list } : { circles: list, diameters: list.map((_, index) => 120 + way * apart * 0.3 * index) },
  );
const plate = fc.oneof(
  face,
  fc.tuple(face, face).map(([front, back]) => ({
    faces: [
      { name: "front", ...front },
      { name: "back", ...back },
    ],
  })),
);
const scale = fc.record({
  marksPerTurn: fc.integer({ min: 2, max: 400 }),
  vernierLines: fc.integer({ min: 1, max: 12 }),
  figures: fc.constantFrom("marks" as const, "angle" as const),
});

/** Heads of every make: ratios to 4,000 and fractional, circles to 400, names of 60 letters, 60 gears. */
export const headSpec = fc.record({
  name,
  wormRatio: fc.oneof(
    fc.integer({ min: 1, max: 4000 }),
    fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 2, max: 9 })).map(([n, d]) => `${n}/${d}`),
  ),
  plates: fc
    .uniqueArray(fc.tuple(name, plate), { selector: ([text]) => text.trim(), minLength: 1, maxLength: 5 })
    .map((plates) => plates.map(([text, rest]) => ({ name: text, ...rest }))),
  directPlates: fc.uniqueArray(fc.record({ name, holes: fc.integer({ min: 2, max: 60 }) }), {
    selector: (each) => each.name.trim(),
    maxLength: 2,
  }),
  rearPin: fc.boolean(),
  gears: fc.array(fc.integer({ min: 16, max: 120 }), { maxLength: 60 }),
  ring: fc.option(scale),
  dial: fc.option(scale),
});
