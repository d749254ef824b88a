import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RebuiltCheck } from "../../../src/gear/repair/rebuilt-checks.ts";
import { toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { type SpurGear, spurGear } from "../../../src/gear/spur-gear.ts";
import { checkItems, checksInWords, conditionItems } from "../../../src/words/gear/rebuilt-check-words.ts";
import { lengthsIn } from "../../../src/words/lengths.ts";
import { type DrawnGear, measuredAcross, measuredOverPins, measuredSpan, shared } from "../../support/drawn-gear.ts";
import { runs } from "../../support/sweep.ts";

const mm = lengthsIn("mm");
const worn = spurGear({ teeth: 40, module: 3, thinning: 0.24945 });

describe("the checks of 40 teeth of module 3, the sound ones a quarter of a millimetre thin", () => {
  const repair = toothRepair(worn, { damaged: [7, 8], backlash: 0.3 });

  it("span and pins reckon each flank by its own tooth", () => {
    expect(checksInWords(worn, repair, mm)).toEqual([
      {
        code: "across",
        what: "Across the tooth, caliper blade set to 3.046 mm",
        limits: expect.stringMatching(/^4\.56\d mm to 4\.71\d mm$/),
        places: ["tooth 7", "tooth 8"],
      },
      {
        code: "span",
        what: "Span over 5 teeth, from a rebuilt tooth to a sound one",
        limits: "41.347 mm to 41.417 mm",
        places: ["3–7", "7–11", "4–8", "8–12"],
      },
      {
        code: "over-pins",
        what: "Over pins of 5.250 mm, one in the space between a rebuilt tooth and a sound one, one in the sound space opposite",
        limits: expect.stringMatching(/^12\d\.\d{3} mm to 12\d\.\d{3} mm$/),
        places: ["space 6 | 26", "space 8 | 28"],
      },
      {
        code: "over-pins",
        what: "Over pins of 5.250 mm, one in the space between two rebuilt teeth, one in the sound space opposite",
        limits: expect.stringMatching(/^12\d\.\d{3} mm to 12\d\.\d{3} mm$/),
        places: ["space 7 | 27"],
      },
    ]);
  });

  it("says what the limits hold under, and what decides", () => {
    expect(conditionItems(repair).map(({ text }) => text)).toEqual([
      "Spans and pins judge a tooth that has lost as much on one flank as on the other; the mean of its spans to both sides judges it however the loss is shared. Pins between two rebuilt teeth tell of both together. Where measures disagree, the one across the tooth decides.",
    ]);
    expect(conditionItems(toothRepair(worn, { damaged: [7] }))[0]?.text).not.toContain("two rebuilt teeth");
  });

  it("names the measures once, and twelve places whole", () => {
    expect(checkItems(worn, repair, mm).map(({ term }) => term)).toEqual(["Measure", "", "", "", "They hold"]);
    // Each of six teeth that stand apart has a span to either side; a seventh makes fourteen.
    const said = (damaged: readonly number[]) => checkItems(worn, toothRepair(worn, { damaged }), mm)[1]?.text;
    expect(said([1, 8, 15, 22, 29, 36])).toMatch(
      / \(teeth 37–1, 1–5, 4–8, 8–12, 11–15, 15–19, 18–22, 22–26, 25–29, 29–33, 32–36, 36–40\)$/,
    );
    expect(said([1, 3, 8, 15, 22, 29, 36])).toMatch(/ \(teeth 37–1, 1–5, 39–3, 3–7, .*, 25–29, 29–33 and so on\)$/);
  });

  it("has nothing to hold where each measure judges a tooth by itself, and decides only by one that is there", () => {
    const across = { code: "across", holdsIf: [], blade: 3, teeth: [7], most: 4.7, least: null } as const;
    const span = { code: "span", holdsIf: ["loss-shared"], teeth: 5, spans: [], most: 41.4, least: null } as const;
    const said = (...checks: readonly RebuiltCheck[]) => conditionItems({ ...repair, checks }).map(({ text }) => text);
    expect([said(), said(across)]).toEqual([[], []]);
    expect(said(span)[0]).toMatch(/however the loss is shared\.$/);
    expect(said(span, across)[0]).toMatch(/shared\. Where measures disagree, the one across the tooth decides\.$/);
  });

  it("stands in inches for who works in inches, and names the places of long lists in part", () => {
    const text = checkItems(worn, repair, lengthsIn("in")).map((item) => item.text);
    expect(text.join(" ")).not.toMatch(/mm/);
    expect(text[1]).toBe(
      "Span over 5 teeth, from a rebuilt tooth to a sound one: 1.6279 in to 1.6305 in (teeth 3–7, 7–11, 4–8, 8–12)",
    );
    const many = toothRepair(worn, { damaged: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14] });
    const said = checkItems(worn, many, mm).map((item) => item.text);
    expect(said[0]).toMatch(/at most$/);
    expect(said[2]).toMatch(/at most \(space 40 \| 20, space 14 \| 34\)$/);
    expect(said[3]).toMatch(/at most \(space 1 \| 21, .*space 12 \| 32 and so on\)$/);
  });

  it("without a backlash there is only the most", () => {
    const span = checksInWords(worn, toothRepair(worn, { damaged: [7, 8] }), mm)[1];
    expect(span?.limits).toBe("41.417 mm at most");
  });
});

describe("a window narrower than its last decimal", () => {
  it("has as many decimals as it needs, and never a lower end above the upper", () => {
    const gear = spurGear({ teeth: 40, module: 3 });
    const limits = (backlash: number) =>
      checksInWords(gear, toothRepair(gear, { damaged: [7], backlash }), mm).map((check) => check.limits);
    expect(limits(0.0008)[1]).toMatch(/^41\.534\d mm to 41\.534\d mm$/);
    expect(limits(0)[1]).toBe("41.534 mm as near as can be");
    for (const backlash of [0.2, 0.01, 0.001, 0.0001]) {
      for (const each of limits(backlash)) {
        const [least = 0, most = 0] = [...each.matchAll(/([\d.]+) mm/g)].map(([, figure]) => Number(figure));
        expect(least).toBeLessThanOrEqual(most);
      }
    }
  });
});

const jobs = fc
  .record({
    teeth: fc.integer({ min: 14, max: 80 }),
    hundredths: fc.integer({ min: 100, max: 800 }),
    pressureAngle: fc.constantFrom(14.5, 20, 25),
    soundLoss: fc.constantFrom(0, 30, 90),
    backlash: fc.integer({ min: 20, max: 150 }),
    unit: fc.constantFrom("mm", "in"),
  })
  .map(({ teeth, hundredths, pressureAngle, soundLoss, backlash, unit }) => {
    const module = hundredths / 100;
    const gear = spurGear({ teeth, module, pressureAngle, profileShift: 0.1, thinning: (soundLoss * module) / 1000 });
    return { gear, unit, backlash: (backlash * module) / 1000 };
  });

/** What is printed: the length set, if any, and both limits, in mm; and the numbers of the places. */
function printed({ what, limits, places }: ReturnType<typeof checksInWords>[number]) {
  const lengths = (text: string) =>
    [...text.matchAll(/([\d.]+) (mm|in)\b/g)].map(([, figure, unit]) => Number(figure) * (unit === "in" ? 25.4 : 1));
  const [least = Number.NaN, most = Number.NaN] = lengths(limits);
  const [set = Number.NaN] = lengths(what);
  return { what, least, most, set, at: places.map((place) => place.match(/\d+/g)?.map(Number) ?? []) };
}

function drawnOf({ teeth, module, pressureAngle, profileShift, tipDiameter, thinning }: SpurGear, loss: number): DrawnGear {
  return { teeth, module, pressureAngle, profileShift, tipDiameter, lost: (tooth) => shared(tooth === 3 ? loss : thinning) };
}

it("from what is printed alone: a tooth at a printed limit is right, by caliper, jaws and pins as they are printed", () => {
  fc.assert(
    fc.property(jobs, ({ gear, unit, backlash }) => {
      const repair = toothRepair(gear, { damaged: [3], backlash });
      const mayLose = repair.check?.mayLose ?? 0;
      for (const { what, least, most, set, at } of checksInWords(gear, repair, lengthsIn(unit)).map(printed)) {
        const measured = (loss: number): readonly number[] => {
          const drawn = drawnOf(gear, loss);
          return at.map(([first = 0, second = 0]) => {
            if (what.startsWith("Across")) return measuredAcross(drawn, first, set);
            if (what.startsWith("Span")) return measuredSpan(drawn, first, second);
            return measuredOverPins(drawn, set, first, second);
          });
        };
        const hair = 1e-7 * gear.referenceDiameter;
        for (const full of measured(0)) expect(full).toBeGreaterThanOrEqual(most - hair);
        for (const thin of measured(mayLose)) expect(thin).toBeLessThanOrEqual(least + hair);
        // And no good tooth is refused for more than a few units of the last decimal.
        const unitOfLast = unit === "in" ? 0.00254 : 0.001;
        for (const full of measured(0)) expect(full - most).toBeLessThanOrEqual(unitOfLast + hair);
      }
    }),
    runs(60),
  );
});
