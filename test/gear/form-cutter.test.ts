import { describe, expect, it } from "vitest";
import { type FormCutters, formCutters } from "../../src/gear/form-cutter.ts";
import { spurGear } from "../../src/gear/spur-gear.ts";
import { formCutterRanges } from "../published/form-cutters.ts";
import { cited } from "../published/source.ts";
import { refusalLines } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

const inch = 25.4;
const ofPitch = (teeth: number, module: number): FormCutters => {
  const cutters = formCutters({ teeth, module });
  if (cutters === null) throw new Error(`no cutter for ${teeth}`);
  return cutters;
};
/** For a pitch that has half numbers too: 5 DP. */
const cuttersFor = (teeth: number) => {
  const { inchHalf, reversedHalf, ...whole } = ofPitch(teeth, inch / 5);
  if (inchHalf === null || reversedHalf === null) throw new Error(`no half numbers for ${teeth}`);
  return { ...whole, inchHalf, reversedHalf };
};
const counts = Array.from({ length: 389 }, (_, index) => 12 + index);

describe("published ranges", () => {
  it.each(formCutterRanges.whole)(
    `cutter $cutter cuts $min to $max (${cited(formCutterRanges.source)})`,
    ({ cutter, min, max }) => {
      for (const teeth of [min, max ?? 5000]) {
        expect(cuttersFor(teeth).inch).toEqual({ number: cutter, from: min, to: max });
      }
    },
  );

  it.each(formCutterRanges.half)(
    `cutter $cutter cuts $min to $max (${cited(formCutterRanges.source)})`,
    ({ cutter, min, max }) => {
      for (const teeth of [min, max]) expect(cuttersFor(teeth).inchHalf).toEqual({ number: cutter, from: min, to: max });
    },
  );

  it("does not agree with the misprint of cutter 4 1/2", () => {
    const { cutter, min, max } = formCutterRanges.suspect;
    expect(cuttersFor(min).inchHalf).toEqual({ number: cutter, from: min, to: 25 });
    expect(cuttersFor(max).inchHalf.number).not.toBe(cutter);
  });
});

describe("half numbers", () => {
  const { least, most } = formCutterRanges.halfPitches;

  it.each([least, 3, 5, most])(`are offered for %i DP (${cited(formCutterRanges.source)})`, (pitch) => {
    const { diametralPitch, module } = spurGear({ teeth: 40, diametralPitch: pitch });
    expect(diametralPitch).toBeCloseTo(pitch, 12);
    expect(ofPitch(45, module).inchHalf).toEqual({ number: "2 1/2", from: 42, to: 54 });
    expect(ofPitch(45, module).reversedHalf).toEqual({ number: "6 1/2", from: 42, to: 54 });
  });

  it.each([
    ["1.75 DP", inch / 1.75],
    ["9 DP", inch / 9],
    ["12 DP", inch / 12],
    ["0.5 module", 0.5],
    ["3 module", 3],
    ["13 module", 13],
  ])("are not for %s, where whole numbers serve", (_, module) => {
    expect(ofPitch(45, module)).toMatchObject({
      inch: { number: "3", from: 35, to: 54 },
      reversed: { number: "6", from: 35, to: 54 },
      inchHalf: null,
      reversedHalf: null,
    });
  });
});

describe("laws", () => {
  it("every count from 12 is in the range of its cutters, and a half number's range is within its set's", () => {
    for (const teeth of counts) {
      for (const { from, to } of Object.values(cuttersFor(teeth))) {
        expect(teeth >= from && (to === null || teeth <= to)).toBe(true);
      }
      const { inch, inchHalf } = cuttersFor(teeth);
      expect(inchHalf.from >= inch.from && (inch.to === null || (inchHalf.to ?? 0) <= inch.to || inchHalf.to === null)).toBe(
        true,
      );
    }
  });

  it("the numberings run against each other over the same ranges", () => {
    const value = (number: string) => Number(number.replace(" 1/2", ".5"));
    for (const teeth of counts) {
      const { inch, inchHalf, reversed, reversedHalf } = cuttersFor(teeth);
      expect(value(inch.number) + value(reversed.number)).toBe(9);
      expect(value(inchHalf.number) + value(reversedHalf.number)).toBe(9);
      expect([reversed.from, reversed.to, reversedHalf.from, reversedHalf.to]).toEqual([
        inch.from,
        inch.to,
        inchHalf.from,
        inchHalf.to,
      ]);
    }
  });

  it("a rack is cutter 1, or 8 where the numbers are reversed (the latter from memory)", () => {
    expect(cuttersFor(135)).toMatchObject({ inch: { number: "1", to: null }, reversed: { number: "8", to: null } });
    expect(cuttersFor(13)).toMatchObject({ inchHalf: { number: "7 1/2", from: 13, to: 13 }, reversedHalf: { number: "1 1/2" } });
  });
});

it("has no cutter below 12 teeth, and refuses what is no count or no pitch", () => {
  for (const teeth of [1, 11]) expect(formCutters({ teeth, module: 2 })).toBeNull();
  for (const gear of [undefined, null, 40, "40"]) {
    expect(refusalLines(() => formCutters(wrong(gear)))).toEqual([
      `gear: ${JSON.stringify(gear)} is not a gear; give one, or its teeth and module`,
    ]);
  }
  for (const teeth of [0, -5, 12.5, Number.NaN]) {
    expect(() => formCutters({ teeth, module: 2 })).toThrow(/is not a count of teeth/);
  }
  for (const module of [0, -2, Number.NaN, "2"]) {
    expect(() => formCutters({ teeth: 20, module: module as number })).toThrow(/is not a module/);
  }
});
