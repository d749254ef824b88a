import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  type GraduatedRound,
  type GraduateOptions,
  graduate,
  type Head,
  parseAngle,
  planJob,
  type RoundScale,
  readyHead,
  readyHeads,
  toNumber,
  vernier,
} from "../../src/index.ts";
import { cited } from "../published/source.ts";
import { dialOfTable, gearedToScrew, reading, rule, space, tableScale } from "../published/verniers.ts";
import { notSoOnBench } from "../support/places-on-bench.ts";
import { threePlates } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

function round(head: Head, scale: RoundScale, options?: GraduateOptions): GraduatedRound {
  const made = graduate(head, scale, options);
  return made.planned ? made : expect.fail("it cannot be cut");
}

const figures = ({ lines }: { lines: readonly { figure: string | null }[] }) => lines.map(({ figure }) => figure);

describe("published verniers", () => {
  it(cited(reading.source), () => {
    const made = round(threePlates, { divisions: 360, vernier: { spaces: 12 }, perLine: reading.minutesPerLine, figureEvery: 1 });
    expect(Number(made.leastCount && toNumber(made.leastCount)) * 21_600).toBeCloseTo(reading.minutesPerLine, 12);
    const minutes = Number(made.lines[reading.line]?.figure);
    expect(parseAngle(`12°${minutes}'`)).toBe(parseAngle(reading.reads));
  });

  it(cited(space.source), () => {
    const made = round(threePlates, { divisions: 360, vernier: { spaces: space.spaces, over: space.over } });
    expect(made.step).toBe(parseAngle(space.is));
  });

  it(cited(tableScale.source), () => {
    const made = graduate({ lead: "127/20", marks: 250 }, { space: tableScale.main, vernier: { spaces: tableScale.spaces } });
    expect(made.leastCount).toBe("127/5000");
    expect(toNumber(made.leastCount ?? expect.fail()) / 25.4).toBeCloseTo(tableScale.readsToInches, 12);
  });

  it(`${cited(rule.source)}: ${rule.formula}`, () => {
    for (let spaces = 2; spaces <= 60; spaces += 1) {
      const { leastCount, over, space: one, runs: way } = vernier({ spaces });
      expect([leastCount, over, one, way]).toEqual([`1/${spaces}`, spaces - 1, `${spaces - 1}/${spaces}`, "with"]);
    }
    expect(graduate({ lead: 5, marks: 100 }, { space: "1/20", spaces: 3 }).lines.map(({ at }) => at.marks)).toEqual([0, 1, 2, 3]);
  });

  it(cited(dialOfTable.source), () => {
    const perTurn = 21_600 / dialOfTable.minutes;
    const made = round(readyHead("ratio-90-dial"), { divisions: perTurn, vernier: { spaces: dialOfTable.spaces } });
    expect(Number(made.leastCount && toNumber(made.leastCount)) * 21_600).toBeCloseTo(dialOfTable.readsToMinutes, 12);
  });

  it(cited(gearedToScrew.source), () => {
    const head = defineHead({ wormRatio: gearedToScrew.wormRatio, plates: [{ name: "1", circles: [20] }] });
    const { travelPerTurn } = graduate({ lead: gearedToScrew.leadInches, head }, { space: 1, spaces: 1 });
    expect(toNumber(travelPerTurn) / 25.4).toBeCloseTo(gearedToScrew.travelInches, 12);
  });
});

describe("a vernier", () => {
  it("brings each line in line one least count after the line before, and no two lines at once", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom(-1, 1),
        (spaces, many, off) => {
          const over = many * spaces + off;
          const { runs: way } = vernier({ spaces, over });
          // Everything in parts of a main space of which it has as many as the vernier has spaces.
          for (let past = 0; past < spaces; past += 1) {
            const onward = way === "with" ? 1 : -1;
            const inLine = Array.from({ length: spaces }, (_, line) => line).filter(
              (line) => (past + onward * line * over) % spaces === 0,
            );
            // The line whose number is how far the zero is past the mark.
            expect(inLine).toEqual([past]);
          }
        },
      ),
      runs(60),
    );
  });

  it("has its lines both ways from its zero where it is two-sided", () => {
    const made = round(threePlates, { divisions: 360, vernier: { spaces: 6, twoSided: true }, perLine: 10 });
    expect(figures(made)).toEqual(["60", null, null, "30", null, null, "0", null, null, "30", null, null, "60"]);
    expect(made.lines.map(({ length }) => length[0]).join("")).toBe("lsslsslsslssl");
  });

  it.each([
    [10, "0 5 10"],
    [12, "0 3 6 9 12"],
    [25, "0 5 10 15 20 25"],
    [60, "0 10 20 30 40 50 60"],
    [7, "0 7"],
    [8, "0 4 8"],
  ])("of %i spaces has long lines at %s", (spaces, at) => {
    const made = graduate({ lead: 5, marks: 100 }, { space: 1, vernier: { spaces } });
    const long = made.lines.filter(({ length }) => length === "long").map(({ line }) => line);
    expect(long.join(" ")).toBe(at);
    expect(made.lines.filter(({ length }) => length === "medium")).toEqual([]);
  });
});

describe("a round scale", () => {
  it("is cut by the plan, every line where a head of the tests' own puts it", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...readyHeads),
        fc.integer({ min: 4, max: 400 }),
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom<"all" | "part" | "vernier">("all", "part", "vernier"),
        (head, divisions, some, what) => {
          const spaces = 1 + (some % (divisions - 1));
          const n = Math.min(divisions - 1, 2 + (some % 20));
          const scale = what === "all" ? {} : what === "part" ? { spaces } : { vernier: { spaces: n } };
          const made = round(head, { divisions, ...scale });
          const places = made.lines.map(({ place }) => place);
          const step = what === "vernier" ? `${n - 1}/${n * divisions}` : `1/${divisions}`;
          expect(toNumber(made.step)).toBeCloseTo(numberOf(step), 12);
          expect(notSoOnBench({ way: made.plan.way, places }, { head, target: made.plan.target })).toEqual([]);
          const lines = [...made.lines].map(({ line }) => line).sort((a, b) => a - b);
          const count = what === "all" ? divisions : what === "part" ? spaces + 1 : n + 1;
          expect(lines).toEqual(Array.from({ length: count }, (_, line) => line));
          for (const { line, place } of made.lines) expect(place.tooth).toBe(line + 1);
        },
      ),
      runs(45),
    );
  });

  it("has long, medium and short lines, and figures, as it is asked", () => {
    const usual = round(threePlates, { divisions: 20 });
    expect(usual.lines.map(({ length }) => length[0]).join("")).toBe("lssssmsssslssssmssss");
    expect(figures(usual).flatMap((figure) => figure ?? [])).toEqual(["0", "10"]);
    const asked = round(threePlates, {
      divisions: 12,
      long: 3,
      medium: 2,
      figureEvery: 2,
      figureFrom: "0.5",
      perLine: "-1/4",
    });
    expect(asked.lines.map(({ length }) => length[0]).join("")).toBe("lsmlmslsmlms");
    expect(figures(asked)).toEqual(["0.5", null, "0", null, "−0.5", null, "−1", null, "−1.5", null, "−2", null]);
    const thirds = round(threePlates, { divisions: 6, long: 1, medium: 0, perLine: "1/3" });
    expect(figures(thirds)).toEqual(["0", "1/3", "2/3", "1", "4/3", "5/3"]);
    const none = round(threePlates, { divisions: 6, long: 0, medium: 0 });
    expect(none.lines.every(({ length, figure }) => length === "short" && figure === null)).toBe(true);
    expect(figures(round(threePlates, { divisions: 8, long: 2, figureEvery: 4, perLine: "0.025" }))[4]).toBe("0.1");
  });

  it("of all its lines is the plan itself, and the order its own", () => {
    const made = round(threePlates, { divisions: 100 });
    const plan = planJob(threePlates, { divisions: 100 });
    expect(plan.planned && plan.places).toEqual(made.lines.map(({ place }) => place));
    expect([made.exact, made.worstArcSeconds, made.vernier, made.leastCount]).toEqual([true, 0, null, null]);
    expect(round(threePlates, { divisions: 100, spaces: 100 }).lines).toHaveLength(100);
  });

  it("of a part goes line by line, and a vernier of an angle that no count is as well", () => {
    const made = round(readyHead("ratio-40-plates-15-49-ungeared"), { divisions: 97, spaces: 12 });
    expect(made.lines.map(({ line }) => line)).toEqual(Array.from({ length: 13 }, (_, line) => line));
    expect([made.exact, made.plan.way.setting.teethPerMove]).toEqual([false, 1]);
    const twoThirds = round(threePlates, { divisions: 4, vernier: { spaces: 3, over: 2 } });
    expect([twoThirds.step, twoThirds.lines.length]).toEqual(["1/6", 4]);
  });

  it("is none where the head comes nowhere near", () => {
    const nose = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
    expect(graduate(nose, { divisions: 97 })).toMatchObject({ planned: false });
  });

  it("goes through JSON unchanged", () => {
    const made = round(threePlates, { divisions: 360, vernier: { spaces: 12 } });
    expect(JSON.parse(JSON.stringify(made))).toEqual(made);
  });
});

/** A ratio of two whole numbers, as near as a number comes. */
function numberOf(text: string): number {
  const [n = "0", d = "1"] = text.split("/");
  return Number(n) / Number(d);
}

describe("a straight scale", () => {
  it("is set to the nearest mark from its first line, which leaves each line off by what it says", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 2, max: 250 }),
        fc.integer({ min: 1, max: 60 }),
        (hundredths, leadTenths, marks, spaces) => {
          const [step, lead] = [hundredths / 100, leadTenths / 10];
          const made = graduate({ lead: `${leadTenths}/10`, marks }, { space: `${hundredths}/100`, spaces });
          let counted = 0;
          for (const { line, at, from, errorMm } of made.lines) {
            counted += from.turns * marks + from.marks;
            expect(at.turns * marks + at.marks).toBe(counted);
            expect(at.marks).toBeLessThan(marks);
            expect((counted / marks) * lead - line * step).toBeCloseTo(errorMm, 9);
            expect(Math.abs(errorMm)).toBeLessThanOrEqual(lead / marks / 2 + 1e-9);
          }
          expect(made.worstMm).toBe(Math.max(...made.lines.map(({ errorMm }) => Math.abs(errorMm))));
          expect(made.exact).toBe(made.worstMm === 0);
        },
      ),
      runs(90),
    );
  });

  it("by a head geared to the screw takes the circle that leaves the least, the smallest of those alike", () => {
    // A turn of the crank is 0.1 mm: 0.25 mm is 2 turns and half of one more.
    const made = graduate({ lead: 4, head: threePlates }, { space: "1/4", spaces: 4 });
    expect(made).toMatchObject({ exact: true, travelPerTurn: "1/10", counter: { by: "crank", holes: 16, plate: "1" } });
    expect(made.lines[3]).toMatchObject({ travel: "3/4", at: { turns: 7, marks: 8 }, from: { turns: 2, marks: 8 } });
    // By 2 turns of the spindle for 3 of the screw it is 0.15 mm: 5/3 of a turn.
    const geared = graduate({ lead: 4, head: threePlates, turnsPerSpindle: "3/2" }, { space: "1/4", spaces: 4 });
    expect(geared).toMatchObject({ exact: true, counter: { holes: 15 } });
    // 100ths of a millimetre on a lead of 3 mm: 40·0.01/3 = 2/15 of a turn.
    expect(graduate({ lead: 3, head: threePlates }, { space: "1/100", spaces: 200 })).toMatchObject({
      exact: true,
      counter: { holes: 15 },
    });
  });

  it("is not taken for exact because of its first lines: a circle that closes goes before one that nearly does", () => {
    const head = defineHead({ wormRatio: 1, plates: [{ name: "1", circles: [2, 9973] }] });
    // 1/9973 of a turn for each line: a circle of 2 would leave the first lines off by little.
    expect(graduate({ lead: 1, head }, { space: "1/9973", spaces: 200 })).toMatchObject({
      exact: true,
      counter: { holes: 9973 },
    });
  });

  it.each([
    [() => graduate({ lead: 0, marks: 100 }, { space: 1, spaces: 10 }), "lead: 0 is not above 0"],
    [() => graduate({ lead: 5, marks: 0 }, { space: 1, spaces: 10 }), "marks: 0 is not a number of marks; give 1 to 100,000"],
    [() => graduate({ lead: 5, marks: 100 }, { space: -1, spaces: 10 }), "space: -1 is not above 0"],
    [() => graduate({ lead: 5, marks: 100 }, { space: 1 }), "spaces: undefined is not a number of spaces"],
    [() => graduate({ lead: 5, marks: 100 }, { space: 1, spaces: 50_000 }), "spaces: 50,001 places are too many to list"],
    [() => graduate({ lead: 5, head: readyHead("ratio-90-dial") }, { space: 1, spaces: 9 }), "head: has no index plate to count"],
    [
      () => graduate({ lead: 5, marks: 9 } as never, { space: 1, spaces: 9 } as never, { by: "moves" }),
      "by: goes with a round scale",
    ],
    [() => graduate(threePlates, { divisions: 0 }), "divisions: 0 is not a count of divisions"],
    [() => graduate(threePlates, { divisions: 50_001 }), "divisions: 50,001 places are too many to list"],
    [() => graduate(threePlates, { divisions: 12, spaces: 13 }), "spaces: 14 lines go round the whole circle and more"],
    [
      () => graduate(threePlates, { divisions: 4, vernier: { spaces: 10 } }),
      "vernier: 11 lines go round the whole circle and more",
    ],
    [() => graduate(threePlates, { divisions: 4, spaces: 2, vernier: { spaces: 10 } }), "spaces: are given beside a vernier"],
    [
      () => graduate(threePlates, { divisions: 12, long: 1.5 }),
      "long: 1.5 is not how many lines apart; give a whole number, or 0 for none",
    ],
    [() => graduate(threePlates, { divisions: 12, perLine: "half" }), 'perLine: "half" is not an exact number'],
    [() => vernier({ spaces: 1 }), "vernier.spaces: 1 is not a number of spaces for a vernier; give 2 to 120"],
    [
      () => vernier({ spaces: 12, over: 14 }),
      "vernier.over: 12 spaces over 14 are no vernier; give 11 or 13 of the main scale, or one off a multiple of 12, such as 23",
    ],
    [() => vernier({ spaces: 12, twoSided: 1 as never }), "vernier.twoSided: 1 is neither true nor false"],
  ])("refuses %#", (act, why) => {
    expect(refusalLines(act).join("\n")).toContain(why);
  });
});
