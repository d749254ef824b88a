import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scaleBookOf } from "../../booklet/content/scale-sheet.ts";
import { flattened, type GroupMark, type Mark, type Page } from "../../booklet/layout/marks.ts";
import { mm } from "../../booklet/layout/paper.ts";
import { paperNamed, paperNames } from "../../booklet/layout/papers.ts";
import { type Graduated, graduate, type RoundScale, type StraightScale } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { runs } from "../support/sweep.ts";
import { faultsIn } from "./page-faults.ts";
import { scaleOn } from "./scale-on-page.ts";
import { edition, pagesOn } from "./set-pages.ts";

const head = ready("ratio-90-dial");

function round(scale: RoundScale): Graduated {
  const made = graduate(head, scale);
  return made.planned ? made : expect.fail("it cannot be cut");
}

const straight = (scale: StraightScale) => graduate({ lead: 5, marks: 250 }, scale);

function setOn(scale: Graduated, paper: (typeof paperNames)[number] = "a4"): readonly Page[] {
  return pagesOn(paperNamed(paper), scaleBookOf({ scale, head, inches: false }, edition));
}

/** The page with the drawing of a scale, and what it is drawn with. */
function drawingOf(scale: Graduated) {
  for (const page of setOn(scale)) {
    const figure = figuresIn(page.marks).find(({ alt }) => alt?.includes("as they will look"));
    if (figure !== undefined) return { page, marks: [...flattened(figure.marks)] };
  }
  return expect.fail("no scale is drawn");
}

function figuresIn(marks: readonly Mark[]): readonly GroupMark[] {
  return marks.flatMap((mark) => (mark.kind !== "group" ? [] : mark.role === "Figure" ? [mark] : figuresIn(mark.marks)));
}

interface DrawnRule {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly long: number;
}

/** The lines of the scale as drawn, in their order; the edges that they stand on are thinner. */
function linesIn(marks: readonly Mark[]): readonly DrawnRule[] {
  return marks.flatMap((mark) =>
    mark.kind === "rule" && mark.width === 0.7
      ? [{ from: mark.from, to: mark.to, long: Math.hypot(mark.to[0] - mark.from[0], mark.to[1] - mark.from[1]) }]
      : [],
  );
}

const textsIn = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));

/** Long lines are longer than medium ones, and those than short ones, all of a kind alike. */
function expectLengths(drawn: readonly DrawnRule[], scale: Graduated): void {
  const size = { long: 17, medium: 12.5, short: 8 };
  for (const [index, { long }] of drawn.entries()) expect(long).toBeCloseTo(size[scale.lines[index]?.length ?? "short"], 6);
}

describe("a dial as it will look", () => {
  it.each([12, 40, 100, 250])("of %i lines has each in its place, and its figure at it", (divisions) => {
    const scale = round({ divisions });
    const { marks } = drawingOf(scale);
    const drawn = linesIn(marks);
    expect(drawn).toHaveLength(divisions);
    expectLengths(drawn, scale);
    const circle = marks.find((mark) => mark.kind === "shape") ?? expect.fail("no circle");
    if (circle.kind !== "shape") return;
    const [x, y] = [(circle.box[0] + circle.box[2]) / 2, (circle.box[1] + circle.box[3]) / 2];
    const clockwise = ([toX, toY]: readonly [number, number]) => (Math.atan2(toX - x, y - toY) / (2 * Math.PI) + 1) % 1;
    for (const [line, { from, to }] of drawn.entries()) {
      for (const end of [from, to]) {
        const off = Math.abs(clockwise(end) - line / divisions);
        expect(Math.min(off, 1 - off)).toBeLessThan(1e-6);
      }
    }
    const figures = textsIn(marks).filter(({ text }) => /^\d+$/.test(text));
    expect(figures.map(({ text }) => text)).toEqual(scale.lines.flatMap(({ figure }) => figure ?? []));
    for (const { text, x: left, y: base, width, size } of figures) {
      const off = Math.abs(clockwise([left + width / 2, base - size * 0.35]) - Number(text) / divisions);
      expect(Math.min(off, 1 - off)).toBeLessThan(1e-3);
    }
  });

  it("of more lines than have room is drawn out straight, and says which lines stand there", () => {
    const { marks } = drawingOf(round({ divisions: 900 }));
    const note = textsIn(marks).find(({ text }) => text.startsWith("Drawn out straight"))?.text ?? "";
    const [, last] = /; lines 0 to (\d+) only$/.exec(note) ?? [];
    // Where a strip ends the next begins with the same line.
    expect(linesIn(marks).length - 2).toBe(Number(last) + 1);
  });
});

describe("a rule as it will look", () => {
  it.each([
    [1, 150],
    [0.5, 100],
    [10, 12],
    [2, 3],
    [900, 2],
    [300, 60],
  ])("of spaces of %d mm, %i of them, stands to the scale that it names", (space, spaces) => {
    const scale = straight({ space, spaces });
    const { page, marks } = drawingOf(scale);
    const drawn = linesIn(marks);
    expect(drawn).toHaveLength(spaces + 1);
    expectLengths(drawn, scale);
    const start = drawn[0]?.from[0] ?? 0;
    for (const [line, { from, to }] of drawn.entries()) {
      expect(from[0]).toBe(to[0]);
      expect((from[0] - start) / mm(scaleOn(page))).toBeCloseTo(line * space, 6);
    }
  });

  it("is at true size where its lines stand far enough apart", () => {
    expect(scaleOn(drawingOf(straight({ space: 1, spaces: 150 })).page)).toBe(1);
    expect(scaleOn(drawingOf(straight({ space: "0.5", spaces: 100 })).page)).toBe(3);
  });
});

describe("a rule that one strip does not hold", () => {
  it.each([
    ["0.5", 300, 2],
    ["25.4", 400, 1 / 30],
  ])("of spaces of %s mm, %i of them, goes on in others, no smaller than its lines can be told apart", (space, spaces, scale) => {
    const { page, marks } = drawingOf(straight({ space, spaces }));
    expect(scaleOn(page)).toBeCloseTo(scale, 9);
    const drawn = linesIn(marks);
    const edges = [...new Set(drawn.map(({ from }) => from[1]))];
    expect(edges.length).toBeGreaterThan(1);
    // The last line of a strip is the first of the next.
    expect(drawn).toHaveLength(spaces + edges.length);
    for (const row of edges.map((edge) => drawn.filter(({ from }) => from[1] === edge)))
      for (const [index, { from }] of row.slice(1).entries())
        expect((from[0] - (row[index]?.from[0] ?? 0)) / mm(scale)).toBeCloseTo(Number(space), 6);
  });
});

describe("a vernier as it will look", () => {
  it.each([
    [{ spaces: 10 }, 0, 1],
    [{ spaces: 10, over: 11 }, 0, -1],
    [{ spaces: 12, over: 23, twoSided: true }, 12, 1],
  ] as const)("%j stands against the main scale, its zero at a line of it", (vernier, zero, way) => {
    const scale = round({ divisions: 360, vernier });
    const { marks } = drawingOf(scale);
    const drawn = linesIn(marks).map(({ from }) => from[0]);
    const main = marks.flatMap((mark) => (mark.kind === "rule" && mark.width === 0.4 ? [mark.from[0]] : []));
    const apart = (main[1] ?? 0) - (main[0] ?? 0);
    const ordered = way === 1 ? drawn : drawn.toReversed();
    const atZero = ordered[zero] ?? 0;
    expect(Math.min(...main.map((x) => Math.abs(x - atZero)))).toBeLessThan(1e-6);
    const over = "over" in vernier ? vernier.over : vernier.spaces - 1;
    for (const [line, x] of ordered.entries())
      expect((x - atZero) / apart).toBeCloseTo((way * (line - zero) * over) / vernier.spaces, 6);
    // Its last line is one of the main scale's again.
    expect(Math.min(...main.map((x) => Math.abs(x - (ordered.at(-1) ?? 0))))).toBeLessThan(1e-6);
  });
});

describe("any drawing of a scale", () => {
  const style = {
    long: fc.integer({ min: 0, max: 30 }),
    medium: fc.integer({ min: 0, max: 10 }),
    figureFrom: fc.integer({ min: -1000, max: 1000 }),
    perLine: fc.constantFrom(1, "0.25", "1/3", -5),
  };

  it("lies within the margins and over nothing else, on any paper", () => {
    const rounds = fc.record({ divisions: fc.integer({ min: 2, max: 200 }), ...style }).map((scale) => round(scale));
    const straights = fc
      .record({ space: fc.constantFrom("0.1", "1/3", "1", "25.4", "900"), spaces: fc.integer({ min: 1, max: 200 }), ...style })
      .map((scale) => straight(scale));
    fc.assert(
      fc.property(fc.oneof(rounds, straights), fc.constantFrom(...paperNames), (scale, paper) => {
        expect(faultsIn(setOn(scale, paper), paperNamed(paper))).toEqual([]);
      }),
      runs(20),
    );
  });
});
