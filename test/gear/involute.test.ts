import fc from "fast-check";
import { expect, it } from "vitest";
import { angleOfInvolute, degrees, involute, pressureAngleAt, radians } from "../../src/gear/involute.ts";
import { involutes } from "../published/gear-geometry.ts";
import { cited } from "../published/source.ts";

it.each(involutes.rows)(`inv $angle° = $printed (${cited(involutes.source)})`, ({ angle, printed }) => {
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

it("the pressure angle at a diameter is that whose cosine is the base over it, and none on the base circle or below", () => {
  expect(degrees(pressureAngleAt(10, 20))).toBeCloseTo(60, 12);
  expect([pressureAngleAt(10, 10), pressureAngleAt(10, 9)]).toEqual([0, 0]);
});
