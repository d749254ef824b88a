import { describe, expect, it } from "vitest";
import { asGiven, lengthBounds, readIfGiven, readMeasured } from "../../src/gear/measured.ts";
import { faultList } from "../../src/number/fault-list.ts";

const read = (value: unknown, bounds: Parameters<typeof readMeasured>[2]) => {
  const faults = faultList();
  const number = readMeasured(value, "place", bounds, faults);
  return { number, said: faults.all.map(({ code, problem }) => `${code}: ${problem}`) };
};

describe("a number that was measured", () => {
  it("is taken from its least to its most", () => {
    const bounds = { what: "a pressure angle", least: 10, most: 35, unit: "degrees" } as const;
    for (const value of [10, 14.5, 35]) expect(read(value, bounds)).toEqual({ number: value, said: [] });
    const told = "is not a pressure angle; give a number from 10 to 35 degrees";
    expect(read(9.99, bounds).said).toEqual([`out-of-range: 9.99 ${told}`]);
    expect(read(35.01, bounds).said).toEqual([`out-of-range: 35.01 ${told}`]);
    expect(read("20", bounds).said).toEqual([`unreadable: "20" ${told}`]);
    expect(read(undefined, bounds).said).toEqual([`unreadable: undefined ${told}`]);
  });

  it("has a unit, or none to name", () => {
    expect(read(6, { what: "a profile shift in modules", least: -5, most: 5 }).said).toEqual([
      "out-of-range: 6 is not a profile shift in modules; give a number from -5 to 5",
    ]);
  });

  it("is a length from a thousandth of a millimetre to a hundred metres, said in the unit of the person", () => {
    const bounds = { what: "a diameter", ...lengthBounds };
    for (const value of [0.001, 100_000]) expect(read(value, bounds).said).toEqual([]);
    expect(read(100_000.5, bounds).said).toEqual(["out-of-range: 100000.5 mm is not a diameter; give 0.001 mm to 100000 mm"]);
    expect(read(Number.NaN, bounds).said).toEqual(["unreadable: NaN is not a diameter; give 0.001 mm to 100000 mm"]);
  });

  it("stands at its least where it is refused, so that the rest can be read on", () => {
    expect(read(9, { what: "an angle", least: 10, most: 35 }).number).toBe(10);
  });

  it("may be left out where it is asked for so", () => {
    const faults = faultList();
    expect(readIfGiven(undefined, "place", { what: "a diameter", ...lengthBounds }, faults)).toBeUndefined();
    expect(faults.all).toEqual([]);
    expect(readIfGiven(5, "place", { what: "a diameter", ...lengthBounds }, faults)).toBe(5);
  });

  it("is shown as a length where it is one", () => {
    expect([asGiven("2"), asGiven(Number.POSITIVE_INFINITY), asGiven(null)]).toEqual(['"2"', "Infinity", "null"]);
    expect(asGiven(2)).toMatchObject({ mm: 2 });
  });
});
