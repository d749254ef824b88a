import fc from "fast-check";
import { type SpurGear, spurGear } from "../../src/index.ts";

/** Gears that are common in repair: 12 teeth and more, full depth, plain or enlarged. */
export const gears: fc.Arbitrary<SpurGear> = fc
  .record({
    teeth: fc.integer({ min: 12, max: 200 }),
    hundredths: fc.integer({ min: 50, max: 800 }),
    pressureAngle: fc.constantFrom(14.5, 20, 25),
    shift: fc.integer({ min: 0, max: 30 }),
  })
  .map(({ teeth, hundredths, pressureAngle, shift }) =>
    spurGear({ teeth, module: hundredths / 100, pressureAngle, profileShift: shift / 100 }),
  );

/** A share of a whole, neither nothing nor all. */
export const part: fc.Arbitrary<number> = fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000);
