import fc from "fast-check";
import { expect } from "vitest";
import { fromExact, type HeadSpec, type NearFromZero, type NearMove, type NearSetting } from "../../src/index.ts";
import { type HeadSize, headSpecs } from "./arbitraries.ts";

export const arcSecondsPerTurn = 1_296_000;

export const isMove = (near: NearSetting): near is NearMove => near.moves === "equal";
export const isFromZero = (near: NearSetting): near is NearFromZero => near.moves === "from-zero";

const scales = fc.record(
  {
    ring: fc.record({ marksPerTurn: fc.integer({ min: 2, max: 360 }) }),
    dial: fc.record({ marksPerTurn: fc.integer({ min: 2, max: 100 }), vernierLines: fc.integer({ min: 1, max: 12 }) }),
  },
  { requiredKeys: [] },
);

/** What a ring counts as off by: it is read by eye, no nearer than half of what it shows (common practice, no source). */
export const ofRingByEye = (arcSeconds: number, placesPerTurn: number) =>
  Math.max(arcSeconds, arcSecondsPerTurn / 2 / placesPerTurn);

/** What a near setting counts as off by beside others. */
export const offByEye = (near: NearSetting) =>
  near.kind === "ring" ? ofRingByEye(near.worstArcSeconds, near.placesPerTurn) : near.worstArcSeconds;

/** Heads of every sort, with or without scales. */
export const withScales = (size?: HeadSize): fc.Arbitrary<HeadSpec> =>
  fc.tuple(headSpecs(size), scales).map(([spec, more]): HeadSpec => ({ ...spec, ...more }));

type Fraction = ReturnType<typeof fromExact>;

/** The errors of all teeth, found one by one, against those that a setting states. */
export function expectErrors(near: NearSetting, errors: ReadonlyMap<number, Fraction>, closing: string): void {
  const at = (tooth: number) => errors.get(tooth) ?? fromExact("0");
  const largest = (list: readonly Fraction[]) => list.map((each) => each.abs()).reduce((a, b) => (a.gt(b) ? a : b));
  const teeth = errors.size;
  const steps = Array.from({ length: teeth }, (_, index) => at(((index + 1) % teeth) + 1).sub(at(index + 1)));
  expect(near.error.closing).toBe(closing);
  expect(at(near.error.worstTooth).toFraction()).toBe(near.error.worst);
  expect(fromExact(near.error.worst).abs().toFraction()).toBe(largest([...errors.values()]).toFraction());
  expect(near.error.pitch).toBe(largest(steps).toFraction());
  expect(near.closingArcSeconds).toBeCloseTo(Math.abs(fromExact(closing).valueOf()) * arcSecondsPerTurn, 6);
  expect(near.worstArcSeconds).toBeCloseTo(Math.abs(fromExact(near.error.worst).valueOf()) * arcSecondsPerTurn, 6);
  expect(near.pitchArcSeconds).toBeCloseTo(fromExact(near.error.pitch).valueOf() * arcSecondsPerTurn, 6);
}
