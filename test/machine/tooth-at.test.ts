import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  dialReadings,
  indexAngle,
  type NearestTooth,
  parseAngle,
  type Revolutions,
  revolutions,
  type Scale,
  type Setting,
  toothAt,
} from "../../src/index.ts";
import { add, type Turns, turnsOf, turnsText, withinTurn } from "../support/bench.ts";
import { refusalLines } from "../support/refusal.ts";
import { best, head40, settings, zeros } from "../support/settings.ts";

describe("where the ring stands", () => {
  it("86 with the ring at 46.5°: past tooth 12 by 46.5° − 11·360°/86", () => {
    const { tooth, past, sure } = toothAt(best(86), parseAngle("46.5"));
    expect({ tooth, sure }).toEqual({ tooth: 12, sure: true });
    expect(turnsText(add(turnsOf(past), turnsOf("11/86")))).toBe(turnsText(turnsOf("465/3600")));
  });

  it("half-way between two teeth it is the later one, and is not sure", () => {
    expect(toothAt(best(8), revolutions("1/16"))).toEqual({ tooth: 2, past: "-1/16", sure: false, alike: null });
  });

  it("just short of the full turn it is tooth 1", () => {
    expect(toothAt(best(8), revolutions("99/100"))).toEqual({ tooth: 1, past: "-1/100", sure: true, alike: null });
  });

  it("an angle that does not divide the turn: the last position before the turn, or the start", () => {
    const setting = indexAngle(head40, revolutions("2/5")).settings[0] as Setting;
    expect(toothAt(setting, revolutions("79/100"))).toEqual({ tooth: 3, past: "-1/100", sure: true, alike: null });
    expect(toothAt(setting, revolutions("97/100"))).toEqual({ tooth: 1, past: "-3/100", sure: true, alike: null });
    expect(toothAt(setting, revolutions("81/100"))).toEqual({ tooth: 3, past: "1/100", sure: true, alike: null });
  });
});

describe("a ring that is turned to the minus side", () => {
  it.each([
    ["124", 1],
    ["120", 2],
    ["0", 32],
    ["356", 33],
    ["128", 90],
  ])("90 from 124° down: at %s° it is tooth %i", (reading, tooth) => {
    const zero = { startAngle: parseAngle("124"), side: "minus" } as const;
    const angle = reading === "0" ? revolutions(0) : parseAngle(reading);
    expect(toothAt(best(90), angle, zero)).toMatchObject({ tooth, past: "0", sure: true });
  });

  it("5° short on the ring is 5° short of the tooth: the figures fall as the work goes on", () => {
    const zero = { startAngle: parseAngle("124"), side: "minus" } as const;
    expect(toothAt(best(8), parseAngle("84"), zero)).toMatchObject({ tooth: 2, past: "-1/72" });
  });
});

describe("a reading stands for all that is within half a mark of it", () => {
  const degrees: Scale = { marksPerTurn: 360, vernierLines: 1, figures: "angle" };
  const fiveMinutes: Scale = { ...degrees, vernierLines: 12 };

  it("1000 at 180° on whole degrees: teeth 500 to 502 read the same", () => {
    expect(toothAt(best(1000), parseAngle("180"), { ring: degrees })).toEqual({
      tooth: 501,
      past: "0",
      sure: false,
      alike: { first: 500, last: 502, count: 3 },
    });
  });

  it("and at its zero teeth 1000 to 2", () => {
    expect(toothAt(best(1000), revolutions("0"), { ring: degrees }).alike).toEqual({ first: 1000, last: 2, count: 3 });
  });

  it("with a vernier to 5 minutes it is tooth 501 alone", () => {
    expect(toothAt(best(1000), parseAngle("180"), { ring: fiveMinutes })).toMatchObject({
      tooth: 501,
      sure: true,
      alike: { first: 501, last: 501, count: 1 },
    });
  });

  it("10 at 40°: the ring shows that it is 4° past tooth 2, where no tooth is", () => {
    expect(toothAt(best(10), parseAngle("40"), { ring: degrees })).toEqual({ tooth: 2, past: "1/90", sure: false, alike: null });
  });
});

describe("laws", () => {
  it("the place of every tooth, turned there by hand to either side, says which tooth it is", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        zeros,
        fc.nat(),
        (count, { startAngle = revolutions(0), side = "plus" }, pick) => {
          const tooth = 1 + (pick % count);
          const turned = { n: BigInt(side === "minus" ? 1 - tooth : tooth - 1), d: BigInt(count) };
          const ring = turnsText(withinTurn(add(turnsOf(startAngle), turned)));
          const step = { spindlePerMove: revolutions(1, count), teethPerMove: 1 };
          expect(toothAt(step, revolutions(ring), { startAngle, side })).toEqual({ tooth, past: "0", sure: true, alike: null });
        },
      ),
    );
  });

  it("of the readings of a table every tooth that reads so is among those alike, and a sure one is the only one", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        zeros,
        fc.record({ marksPerTurn: fc.integer({ min: 2, max: 400 }), vernierLines: fc.integer({ min: 1, max: 12 }) }),
        fc.nat(),
        (count, zero, scale, pick) => {
          const head = defineHead({ wormRatio: 1, plates: [{ name: "1", circles: [2] }], ring: scale });
          const { positions } = dialReadings(head, count, zero);
          const figures = positions.map(({ ring }) => ring?.figure ?? revolutions(0));
          const figure = figures[pick % count] ?? revolutions(0);
          const step = { spindlePerMove: revolutions(1, count), teethPerMove: 1 };
          const at = toothAt(step, figure, { ...zero, ring: head.ring });
          const alike = listed(at.alike, count);
          const same = positions.filter((_, index) => figures[index] === figure).map(({ tooth }) => tooth);
          expect(alike).toEqual(expect.arrayContaining(same));
          // Besides, only those half-way between two marks, which may be read as either.
          const half = turnsOf(`1/${2 * scale.marksPerTurn * scale.vernierLines}`);
          for (const tooth of alike) {
            const { n, d } = withinTurn(add(turnsOf(positions[tooth - 1]?.angle ?? ""), negative(turnsOf(figure))));
            const off = 2n * n > d ? { n: d - n, d } : { n, d };
            expect(off.n * half.d <= half.n * off.d).toBe(true);
            if (!same.includes(tooth)) expect(off.n * half.d).toBe(half.n * off.d);
          }
          expect(at.sure).toBe(alike.length === 1);
          if (at.sure) expect([at.tooth]).toEqual(same);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("a reading off a tooth is told by how much, and is sure within a quarter of a division", () => {
    fc.assert(
      fc.property(settings, fc.nat(), fc.integer({ min: -49, max: 49 }), (setting, pick, hundredths) => {
        const count = setting.proof.moves;
        const tooth = 1 + (pick % count);
        const reading = withinTurn({ n: BigInt((tooth - 1) * 100 + hundredths), d: BigInt(count * 100) });
        expect(toothAt(setting, revolutions(turnsText(reading)))).toEqual({
          tooth,
          past: turnsText(turnsOf(`${hundredths}/${count * 100}`)),
          sure: Math.abs(hundredths) <= 25,
          alike: null,
        });
      }),
    );
  });
});

it("refuses a reading that is none", () => {
  expect(refusalLines(() => toothAt(best(86), revolutions("-1/4")))).toEqual([
    'angle: "-1/4" is not an angle from 0 to 1,000 revolutions',
  ]);
  expect(refusalLines(() => toothAt(best(86), revolutions("0"), { startAngle: "1/0" as Revolutions }))).toEqual([
    'startAngle: "1/0" divides by zero; give a fraction such as 81/2',
  ]);
});

/** The teeth from the first to the last of them, over tooth 1 where need be. */
function listed(alike: NearestTooth["alike"], count: number): readonly number[] {
  if (alike === null) return [];
  return Array.from({ length: alike.count }, (_, index) => ((alike.first - 1 + index) % count) + 1);
}

function negative({ n, d }: Turns): Turns {
  return { n: -n, d };
}

it("refuses a step that is none", () => {
  const zero = revolutions(0);
  expect(refusalLines(() => toothAt({ spindlePerMove: zero, teethPerMove: 1 }, zero))).toEqual([
    'setting.spindlePerMove: "0" is no angle to move by; give one above 0',
  ]);
  expect(refusalLines(() => toothAt({ spindlePerMove: revolutions(1, 8), teethPerMove: 0 }, zero))).toEqual([
    "setting.teethPerMove: 0 is not a number of teeth; give a whole number above 0",
  ]);
  expect(refusalLines(() => toothAt(best(8), zero, { ring: { marksPerTurn: 0, vernierLines: 1, figures: "angle" } }))).toEqual([
    "ring.marksPerTurn: 0 is not a whole number from 2 to 100,000",
  ]);
});
