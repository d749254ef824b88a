import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DamageOptions, recutPlan } from "../../../src/gear/repair/damaged-teeth.ts";
import { fromExact } from "../../../src/number/ratio.ts";
import { refusalKinds, refusalLines } from "../../support/refusal.ts";
import { wrong } from "../../support/wrong.ts";

describe("a wheel of 86 with teeth 31 and 32 gone", () => {
  const plan = recutPlan(86, { damaged: [32, 31] });

  it("recuts the three spaces beside them, from the sound one before", () => {
    expect(plan).toMatchObject({
      teeth: 86,
      damaged: [31, 32],
      startSpace: 29,
      proofSpace: { toothSpace: 33, teethFromStart: 4 },
    });
    expect(
      plan.spaces.map(({ toothSpace, teethFromStart, angleFromStart }) => [toothSpace, teethFromStart, angleFromStart]),
    ).toEqual([
      [30, 1, "1/86"],
      [31, 2, "1/43"],
      [32, 3, "3/86"],
    ]);
  });

  it("says which flanks are cut and which are not to be touched", () => {
    expect(plan.spaces.map(({ flanks }) => flanks.map(({ tooth, state }) => `${tooth} ${state}`))).toEqual([
      ["30 sound", "31 built up"],
      ["31 built up", "32 built up"],
      ["32 built up", "33 sound"],
    ]);
  });
});

it("goes over the end of the numbering", () => {
  const plan = recutPlan(20, { damaged: [1, 20] });
  expect(plan.startSpace).toBe(18);
  expect(plan.spaces.map(({ toothSpace }) => toothSpace)).toEqual([19, 20, 1]);
  expect(plan.spaces.at(-1)?.flanks).toEqual([
    { tooth: 1, state: "built up" },
    { tooth: 2, state: "sound" },
  ]);
});

it("starts after the longest sound stretch, so that the cuts lie close together", () => {
  expect(recutPlan(60, { damaged: [3, 10] }).startSpace).toBe(1);
  expect(recutPlan(60, { damaged: [3, 50] }).startSpace).toBe(48);
  expect(recutPlan(60, { damaged: [3, 50], startSpace: 20 }).spaces.map(({ teethFromStart }) => teethFromStart)).toEqual([
    29, 30, 42, 43,
  ]);
});

const damage = fc.integer({ min: 4, max: 120 }).chain((teeth) =>
  fc.record({
    teeth: fc.constant(teeth),
    damaged: fc.uniqueArray(fc.integer({ min: 1, max: teeth }), { minLength: 1, maxLength: Math.max(1, teeth - 3) }),
  }),
);

describe("laws", () => {
  it("cuts both flanks of each built-up tooth, no sound space, each exactly where it belongs", () => {
    fc.assert(
      fc.property(damage, ({ teeth, damaged }) => {
        // Tooth t stands at t, space s at s + ½, all modulo the count; counted without the library.
        const beside = new Set(damaged.flatMap((tooth) => [(tooth + teeth - 2) % teeth, (tooth - 1) % teeth]));
        if (beside.size === teeth) {
          expect(() => recutPlan(teeth, { damaged })).toThrow(/no sound space is left/);
          return;
        }
        const plan = recutPlan(teeth, { damaged });
        expect(beside.has(plan.startSpace - 1)).toBe(false);
        expect(new Set(plan.spaces.map(({ toothSpace }) => toothSpace - 1))).toEqual(beside);
        let before = 0;
        for (const { toothSpace, teethFromStart, angleFromStart, flanks } of plan.spaces) {
          expect((plan.startSpace + teethFromStart - toothSpace) % teeth).toBe(0);
          expect(teethFromStart).toBeGreaterThan(before);
          expect(fromExact(angleFromStart).mul(teeth).valueOf()).toBe(teethFromStart);
          expect(flanks.map(({ tooth }) => tooth)).toEqual([toothSpace, (toothSpace % teeth) + 1]);
          expect(flanks.every(({ tooth, state }) => (state === "built up") === damaged.includes(tooth))).toBe(true);
          before = teethFromStart;
        }
        expect(beside.has(plan.proofSpace.toothSpace - 1)).toBe(false);
        expect(plan.proofSpace.teethFromStart).toBe(before + 1);
      }),
    );
  });

  it("no other start makes the last cut come sooner", () => {
    fc.assert(
      fc.property(damage, fc.nat(), ({ teeth, damaged }, pick) => {
        const startSpace = (pick % teeth) + 1;
        let plan: ReturnType<typeof recutPlan>;
        let other: ReturnType<typeof recutPlan>;
        try {
          plan = recutPlan(teeth, { damaged });
          other = recutPlan(teeth, { damaged, startSpace });
        } catch {
          return;
        }
        expect(other.spaces.at(-1)?.teethFromStart).toBeGreaterThanOrEqual(plan.spaces.at(-1)?.teethFromStart ?? 0);
      }),
    );
  });
});

it("names each wrong number once, and a wrong count with them", () => {
  expect(() => recutPlan(20, { damaged: [0, 21] })).toThrow(/^damaged\[0\]: [^;]*; damaged\[1\]: [^;]*$/);
  expect(() => recutPlan(0, { damaged: [1] })).toThrow(/^teeth: 0 is not a whole number from 4 to 10,000/);
});

it("starts from any sound space that is named, the first and the last among them, and proves past the last cut", () => {
  for (const startSpace of Array.from({ length: 20 }, (_, index) => index + 1).filter((space) => space !== 3 && space !== 4)) {
    const plan = recutPlan(20, { damaged: [4], startSpace });
    expect(plan.startSpace).toBe(startSpace);
    const on = (startSpace < 3 ? 0 : 20) - startSpace;
    expect(plan.spaces.map(({ teethFromStart }) => teethFromStart)).toEqual([on + 3, on + 4]);
    expect(plan.proofSpace).toEqual({ toothSpace: 5, teethFromStart: on + 5 });
  }
});

describe("refusals", () => {
  it.each([
    [{ damaged: [] }, /no tooth is named/],
    [
      { damaged: [0, 21, 1.5] },
      /damaged\[0\]: 0 is not.*damaged\[1\]: 21 is not.*damaged\[2\]: 1.5 is not a whole number from 1 to 20/,
    ],
    [{ damaged: [4, 4] }, /tooth 4 is named twice/],
    [{ damaged: 4 }, /damaged: 4 is not a list/],
    [{ damaged: [2, 4, 6, 8, 10, 12, 14, 16, 18, 20] }, /no sound space is left/],
    [{ damaged: [4], startSpace: 4 }, /space 4 is beside a damaged tooth; start from a sound one, such as 2/],
    [{ damaged: [4], startSpace: 21 }, /21 is not a tooth space of 20; give 1 to 20/],
    [{ damaged: [4], startSpace: 0 }, /0 is not a tooth space of 20; give 1 to 20/],
    [{ damaged: [4], startSpace: 6.5 }, /6.5 is not a tooth space of 20; give 1 to 20/],
    [{ damaged: [4], startSpace: "6" }, /"6" is not a tooth space of 20; give 1 to 20/],
    // Beside it on the other side; and where the longest sound stretch is elsewhere.
    [{ damaged: [4], startSpace: 3 }, /space 3 is beside a damaged tooth; start from a sound one, such as 2/],
    [{ damaged: [4, 9], startSpace: 8 }, /space 8 is beside a damaged tooth; start from a sound one, such as 2/],
  ] as unknown as [DamageOptions, RegExp][])("%j", (options, sentence) => {
    expect(() => recutPlan(20, options)).toThrow(sentence);
  });
});

describe("what is given for a plan", () => {
  it("is damaged teeth in any order", () => {
    expect(recutPlan(86, { damaged: [32, 7, 31] }).damaged).toEqual([7, 31, 32]);
  });

  it.each([
    [2.5, "teeth: 2.5 is not a whole number from 4 to 10,000"],
    [Number.NaN, "teeth: NaN is not a whole number from 4 to 10,000"],
  ])("of %d teeth is refused for that alone: no number of a tooth can be right or wrong then", (teeth, line) => {
    expect(refusalLines(() => recutPlan(teeth, { damaged: [3, 3] }))).toEqual([line]);
  });

  it("is no nothing, and has no other key", () => {
    expect(refusalKinds(() => recutPlan(86, wrong(null)))).toEqual(["unreadable options"]);
    expect(refusalKinds(() => recutPlan(86, wrong({ damaged: [3], start: 1 })))).toEqual(["unknown-key options"]);
  });
});
