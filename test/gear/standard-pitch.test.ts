import { describe, expect, it } from "vitest";
import { lookAlikes, type StandardPitch, standardPitches } from "../../src/gear/standard-pitch.ts";
import { cited } from "../published/source.ts";
import { customaryPitches, isoModules, modulesBesides } from "../published/standards.ts";
import { refusal } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

const named = (name: string) => {
  const pitch = standardPitches.find((other) => other.name === name);
  if (pitch === undefined) throw new Error(`no pitch ${name}`);
  return pitch;
};

describe("the series", () => {
  const system = (wanted: string) => standardPitches.filter((pitch) => pitch.system === wanted);

  it("name every pitch once, by the figure that it is", () => {
    const figure = (name: string) =>
      name
        .split(" ")
        .map((part) => part.split("/").map(Number))
        .filter(([first]) => first !== undefined && !Number.isNaN(first))
        .reduce((sum, [first = 0, second = 1]) => sum + first / second, 0);
    for (const { name, module } of system("module")) expect(module).toBe(figure(name));
    for (const { name, module } of system("diametral pitch")) expect(module).toBeCloseTo(25.4 / figure(name), 12);
    for (const { name, module } of system("circular pitch")) expect(module).toBeCloseTo((25.4 * figure(name)) / Math.PI, 12);
    expect(new Set(standardPitches.map(({ name }) => name)).size).toBe(standardPitches.length);
  });

  it(`hold the modules from 1 mm, series I preferred (${cited(isoModules.source)})`, () => {
    const from1 = (preference: number) =>
      system("module")
        .filter((pitch) => pitch.preference === preference && pitch.module >= 1)
        .map(({ module }) => module);
    expect(from1(1)).toEqual(isoModules.seriesOne);
    expect(from1(2)).toEqual([...isoModules.seriesTwo, ...modulesBesides.modules.filter((module) => module >= 1)]);
  });
});

it(`the series hold finer modules, diametral and circular pitches as they are met (${cited(customaryPitches.source)})`, () => {
  const namesOf = (system: string, preference: number) =>
    standardPitches.filter((pitch) => pitch.system === system && pitch.preference === preference).map(({ name }) => name);
  for (const preference of [1, 2] as const) {
    const finest = namesOf("module", preference).filter((name) => Number.parseFloat(name) < 1);
    const besides = preference === 2 ? modulesBesides.modules.filter((module) => module < 1) : [];
    const wanted = [...(customaryPitches.finestModules[preference - 1] ?? []), ...besides];
    expect(finest).toEqual(wanted.map((module) => `${module} module`));
    expect(namesOf("diametral pitch", preference)).toEqual(
      customaryPitches.diametral[preference - 1]?.map((pitch) => `${pitch} DP`),
    );
  }
  expect(namesOf("circular pitch", 3)).toEqual(customaryPitches.circular.map((inches) => `${inches} in circular pitch`));
});

describe("look-alikes (reckoned from 25.4/DP)", () => {
  it.each([
    ["32 DP", "0.8 module", 0.79],
    ["64 DP", "0.4 module", 0.79],
    ["20 DP", "1.25 module", -1.57],
    ["2 module", "1/4 in circular pitch", 1.06],
  ])("%s is named with %s, %f per cent off", (name, other, percent) => {
    expect(lookAlikes(named(name)).find((alike) => alike.name === other)?.percent).toBeCloseTo(percent, 1);
    expect(lookAlikes(named(other)).map((alike) => alike.name)).toContain(name);
  });

  it("are all that are within 2 per cent, never the pitch itself, the nearest first", () => {
    for (const pitch of standardPitches) {
      const percentOf = ({ module }: StandardPitch) => 100 * (module / pitch.module - 1);
      const wanted = standardPitches.filter((other) => other !== pitch && Math.abs(percentOf(other)) <= 2);
      const alike = lookAlikes(pitch);
      expect(alike.map(({ name }) => name).sort()).toEqual(wanted.map(({ name }) => name).sort());
      for (const { name, percent } of alike) expect(percent).toBeCloseTo(percentOf(named(name)), 12);
      const off = alike.map(({ percent }) => Math.abs(percent));
      expect(off).toEqual([...off].sort((a, b) => a - b));
    }
  });

  it("of 12 DP, which is 2.1167 mm, there is none: 2 and 2.25 module are 5 and 6 per cent off", () => {
    expect(lookAlikes(named("12 DP"))).toEqual([]);
  });

  it.each([undefined, null, 2, {}, { name: "2.1 module" }])("of %j, which is no standard pitch, are refused", (pitch) => {
    expect(refusal(() => lookAlikes(wrong(pitch)))).toEqual([
      {
        code: "unknown-word",
        place: "pitch",
        problem: expect.stringMatching(/is not one of standardPitches; take it from there$/),
      },
    ]);
  });
});

it("the series can be changed by nobody", () => {
  expect([standardPitches, ...standardPitches].every((each) => Object.isFrozen(each))).toBe(true);
});
