import { describe, expect, it } from "vitest";
import { countsFromMarks, identifyGear, overPins as measureOverPins, spurGear, thinningFromSpan } from "../../src/index.ts";
import { gearWithTexts, identificationWithTexts } from "../../src/words/index.ts";
import { run } from "../support/command.ts";

const plain = (value: unknown) => JSON.parse(JSON.stringify(value));
const json = async (...words: string[]) => JSON.parse((await run(["gear", ...words, "--json"])).stdout);

describe("the words of a gear", () => {
  it.each([
    { asked: "86 teeth of module 2", words: ["86", "--module", "2"] },
    { asked: "40 teeth of 12 DP at 14½ degrees, in inches", words: ["40", "--dp", "12", "--pressure-angle", "14.5"] },
    { asked: "45 teeth of 6 DP, for which half numbers are made", words: ["45", "--dp", "6"] },
    { asked: "8 teeth, undercut and without a form cutter", words: ["8", "--module", "3"] },
    { asked: "what 86 teeth over 176.1 mm are", words: ["86", "--outside", "176.1", "--depth", "4.5"] },
    {
      asked: "what 32 teeth over 1.0625 inches are: two pitches look alike",
      words: ["32", "--outside", "1.0625in", "--mate", "64", "--centres", "1.5in"],
    },
    {
      asked: "spans tell the pressure angle",
      words: ["86", "--outside", "176", "--span", "58.4 over 10, 64.3 over 11"],
    },
    { asked: "how many teeth, from marks", words: ["--mate", "24", "--turns", "12", "--mate-turns", "43"] },
    { asked: "how many teeth, from the turns of one alone", words: ["--mate", "24", "--turns", "12", "--most", "60"] },
  ])("$asked", async ({ words }) => {
    const said = await run(["gear", ...words]);
    expect([said.code, said.stderr]).toEqual([0, ""]);
    expect(said.stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
    expect(said.stdout).toMatchSnapshot();
  });

  it("who works in inches, by the pitch or by a length, gets inches alone, and in millimetres the same gear", async () => {
    const inches = [
      ["40", "--outside", "3.52in"],
      ["40", "--dp", "12", "--pins", "0.15in", "--span", "1.15in over 5"],
      ["9", "--dp", "12"],
      ["41", "--outside", '3.5"', "--depth", "0.18in", "--span", "1in over 4", "--mate", "20", "--centres", "2.5in"],
    ];
    for (const words of inches) {
      const { code, stdout } = await run(["gear", ...words]);
      expect(code).toBe(0);
      expect(stdout).toMatch(/ in\b/);
      // A circular pitch is told in both, since older gears are of either.
      expect(stdout.replace(/\s+/g, " ").replace(/circular pitch [\d.]+ mm \(/g, "")).not.toMatch(/\bmm\b/);
    }
    const [inch, metric] = await Promise.all([json("40", "--outside", "3.5in"), json("40", "--outside", "88.9")]);
    const toNanometres = (data: unknown) =>
      JSON.stringify(data, (_, value) => (typeof value === "number" ? Math.round(value * 1e6) / 1e6 : value));
    expect(toNanometres(inch)).toBe(toNanometres(metric));
    const { stdout } = await run(["gear", "40", "--outside", "88.9"]);
    expect(stdout.replace(/\s+/g, " ").replace(/\([\d.]+ in\)/g, "")).not.toMatch(/\d in\b/);
  });

  it.each([
    ["--pins", ["40", "--dp", "12", "--pins", "0.5in"], "a pin of 0.5 in cannot be used on this gear; give one from 0.1"],
    ["--span", ["86", "--module", "2", "--span", "2.4in over 10"], "the sound teeth measure 0.1031 in thicker than drawn"],
    ["--span", ["86", "--dp", "12", "--span", "4.7in over 10"], "4.7 in over 10 teeth is not this gear, whose span is 2.4"],
    ["--depth", ["40", "--dp", "12", "--depth", "5000in"], "5000 in is not a whole depth; give 0.0"],
    ["", ["12", "--dp", "12", "--shift", "1.5"], "the teeth come to a point at 1.3581 in, below the tip diameter of 1.4167 in"],
  ])("a refusal of %s too: %j", async (_, words, said) => {
    const { code, stderr } = await run(["gear", ...words]);
    expect(code).toBe(2);
    expect(stderr).toContain(said);
    expect(stderr).not.toMatch(/\bmm\b/);
  });

  it("a bound that a refusal names is taken", async () => {
    for (const [words, unit] of [
      [["40", "--dp", "12"], "in"],
      [["40", "--module", "2"], ""],
    ] as const) {
      const { stderr } = await run(["gear", ...words, "--pins", `500${unit}`]);
      const bounds = /give one from ([\d.]+) (?:mm|in) to ([\d.]+)/.exec(stderr)?.slice(1) ?? [];
      expect(bounds).toHaveLength(2);
      for (const bound of bounds) expect((await run(["gear", ...words, "--pins", `${bound}${unit}`])).code).toBe(0);
    }
  });
});

describe("gear --json is what the library returns", () => {
  it("measures, over pins of one's own, thinning shown by a span", async () => {
    const { gear, overPins } = await json("86", "--module", "2", "--pins", "3.6");
    expect(gear).toEqual(plain(gearWithTexts(spurGear({ teeth: 86, module: 2 }))));
    expect(overPins).toEqual({ pinDiameter: 3.6, length: measureOverPins(spurGear({ teeth: 86, module: 2 }), 3.6) });
    const spec = { teeth: 86, diametralPitch: 12, pressureAngle: 14.5, profileShift: 0.1, wholeDepth: 4.6 };
    const words = ["86", "--dp", "12", "--pressure-angle", "14.5°", "--shift", "0.1", "--depth", "4.6"];
    expect((await json(...words)).gear).toEqual(plain(gearWithTexts(spurGear(spec))));
  });

  it("sound teeth measured thin make a thin gear", async () => {
    const { gear } = await json("86", "--module", "2", "--span", "58.4 over 10");
    expect(gear.thinning).toBe(thinningFromSpan(spurGear({ teeth: 86, module: 2 }), { length: 58.4, teeth: 10 }));
    expect(gear.span.length).toBeCloseTo(58.4, 9);
  });

  it("candidates and counts", async () => {
    const { identification } = await json(
      "86",
      "--outside",
      "176.1",
      "--depth",
      "4.5",
      "--mate",
      "43",
      "--centres",
      "129",
      "--mate-outside",
      "90",
      "--limit",
      "3",
    );
    const measures = { teeth: 86, tipDiameter: 176.1, wholeDepth: 4.5, mateTeeth: 43, centreDistance: 129, mateTipDiameter: 90 };
    expect(identification).toEqual(plain(identificationWithTexts(identifyGear(measures, { limit: 3 }))));
    const { counts } = await json("--mate", "24", "--turns", "12");
    expect(counts).toEqual(countsFromMarks({ mateTeeth: 24, turns: 12 }));
  });
});

describe.concurrent("a gear that cannot be read", () => {
  it.each([
    ["no count", [], "how many teeth? Begin with the count"],
    ["a word", ["abc", "--module", "2"], '"abc" is not a count of teeth'],
    ["two counts", ["86", "43", "--module", "2"], '"43" was not expected'],
    ["neither pitch nor outside", ["86"], "neither the pitch nor the outside diameter is given"],
    ["too few teeth", ["2", "--module", "2"], "2 is not a whole number from 4 to 10,000"],
    ["both pitches", ["86", "--module", "2", "--dp", "12"], "--module: is given beside --dp"],
    ["a module that is no number", ["86", "--module", "two"], '--module: "two" is not a number'],
    ["a module of 0", ["86", "--module", "0"], "--module: 0 is not a module"],
    [
      "a pressure angle out of reason",
      ["86", "--module", "2", "--pressure-angle", "60"],
      "--pressure-angle: 60 is not a pressure angle",
    ],
    ["an unknown depth rule", ["86", "--module", "2", "--depth-rule", "3"], '--depth-rule: "3" is not a depth rule'],
    ["pins that fall through", ["86", "--module", "2", "--pins", "30"], "--pins: a pin of 30 mm cannot be used"],
    ["a span without its teeth", ["86", "--outside", "176", "--span", "58.4"], '--span: "58.4" is not a span'],
    ["a span of another gear", ["86", "--module", "2", "--span", "20 over 10"], "--span: 20 mm over 10 teeth is not this gear"],
    [
      "teeth thicker than drawn",
      ["86", "--module", "2", "--span", "59 over 10"],
      "--span: the sound teeth measure 0.533 mm thicker",
    ],
    ["a shift without a pitch", ["86", "--outside", "176", "--shift", "0.2"], "--shift: needs the pitch"],
    [
      "centres without a mate",
      ["86", "--outside", "176", "--centres", "129"],
      "--centres: tells nothing without the mate's teeth",
    ],
    ["a mate where the pitch is known", ["86", "--module", "2", "--mate", "43"], "--mate: helps to find a pitch, which is given"],
    ["a length below 0", ["86", "--outside=-5"], '--outside: "-5" is not a length above 0'],
    ["marks without a mate", ["--turns", "12"], "--mate: is needed"],
    ["marks with a count", ["86", "--mate", "24", "--turns", "12"], '"86" is a count, which the marks are to tell'],
    ["marks that met sooner", ["--mate", "24", "--turns", "12", "--mate-turns", "4"], "count to the first meeting"],
    ["an unknown option", ["86", "--colour", "red"], "gear --help lists the options"],
  ])("%s", async (_, words, said) => {
    const { code, stdout, stderr } = await run(["gear", ...words]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^turns-and-holes: [^\n]+\n$/);
    expect(stderr).toContain(said);
  });
});

it("gear --help", async () => {
  const { code, stdout } = await run(["gear", "--help"]);
  expect(code).toBe(0);
  expect(stdout).toContain("What gear is it?");
  expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
});
