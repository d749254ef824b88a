import fc from "fast-check";
import { expect, it } from "vitest";
import { angleOfInvolute, degrees, involute, radians } from "../../src/gear/involute.ts";

it.each([
  [14.5, "0.005545"],
  [20, "0.014904"],
  [25, "0.029975"],
  [30, "0.053751"],
])("inv %f° = %s (printed tables of the involute, from memory)", (angle, printed) => {
  expect(involute(radians(angle)).toFixed(6)).toBe(printed);
});

it("the angle of an involute is the angle it was taken of, from next to nothing to 85°", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 85_000 }), (thousandths) => {
      const angle = radians(thousandths / 1000);
      expect(degrees(angleOfInvolute(involute(angle)))).toBeCloseTo(thousandths / 1000, thousandths < 100 ? 4 : 8);
    }),
  );
  expect(angleOfInvolute(0)).toBe(0);
});
