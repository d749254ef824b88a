import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import { jobSheetPdf, plateDrawings } from "../../booklet/index.ts";
import { printBooklet } from "../../scripts/booklet.ts";
import { defineHead, type Head, indexDivisions, readyHeads } from "../../src/index.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";

const measured = defineHead({
  id: "measured",
  name: 'Head & plates <"measured">',
  wormRatio: 40,
  plates: [
    { name: "1", circles: [20, 15, 18], diameters: [104.5, 62, 87.5] },
    {
      name: "A/B & <C>",
      faces: [
        { name: "front", circles: [24, 30], diameters: [80, 96] },
        { name: "back", circles: [46] },
      ],
    },
    { name: "a b c", circles: [21] },
    { name: "a-b-c", circles: [21] },
  ],
});

/** Every element of a file opened and closed in order, and no text that is no XML. */
function wellFormed(svg: string): void {
  const open: string[] = [];
  for (const [, closing, name, own] of svg.matchAll(/<(\/?)([a-z]+)(?:\s+[a-zA-Z-]+="[^"<]*")*\s*(\/?)>/g)) {
    if (closing === "/") expect(open.pop()).toBe(name);
    else if (own !== "/") open.push(name ?? "");
  }
  expect(open).toEqual([]);
  const outside = svg.replace(/<(\/?)([a-z]+)(?:\s+[a-zA-Z-]+="[^"<]*")*\s*(\/?)>/g, "");
  expect(outside).not.toMatch(/[<>]|&(?!(?:amp|lt|gt|quot);)/);
}

type Point = readonly [number, number];
const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Millimetres to a unit of the drawing, from what the file says of its size. */
function scaleOf(svg: string): number {
  const [, wide, , units] = /^<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) [\d.]+"/.exec(svg) ?? [];
  return Number(wide) / Number(units);
}

/** The middles of the crosses of a path: each cross is two lines. */
function crossesOf(path: string): readonly Point[] {
  const lines = [...path.matchAll(/M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)/g)].map((line) => line.slice(1).map(Number));
  return lines
    .filter((_, index) => index % 2 === 0)
    .map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]): Point => [(x1 + x2) / 2, (y1 + y2) / 2]);
}

/** The circles of crosses in a file, each from hole 0 round. */
function circlesOf(svg: string): readonly (readonly Point[])[] {
  return [...svg.matchAll(/ d="((?:M[-\d.]+ [-\d.]+L[-\d.]+ [-\d.]+){4,})"/g)].map(([, path = ""]) => crossesOf(path));
}

/** The words of a file, which stand beside the shapes of their letters. */
function wordsOf(svg: string): readonly string[] {
  return [...svg.matchAll(/aria-label="([^"]*)"/g)].map(([, text = ""]) =>
    text.replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&"),
  );
}

const drawn = await plateDrawings(measured);

describe("plates as SVG files", () => {
  it("each face is one, under a name of its own that any file may have", () => {
    expect(drawn.map(({ name }) => name)).toEqual([
      "measured-plate-1",
      "measured-plate-a-b-c-front",
      "measured-plate-a-b-c-back",
      "measured-plate-a-b-c",
      "measured-plate-a-b-c-no-2",
    ]);
  });

  it("each is well-formed, whatever the names, which are told as they are", () => {
    for (const { svg } of drawn) wellFormed(svg);
    expect(drawn[1]?.svg).toContain(
      "<title>Plate A/B &amp; &lt;C&gt; front: Head &amp; plates &lt;&quot;measured&quot;&gt;</title>",
    );
    expect(wordsOf(drawn[1]?.svg ?? "").join(" ")).toContain('Plate A/B & <C> front: Head & plates <"measured">');
  });

  it.each([
    [
      0,
      [
        [15, 62],
        [18, 87.5],
        [20, 104.5],
      ],
    ],
    [
      1,
      [
        [24, 80],
        [30, 96],
      ],
    ],
  ] as const)("drawing %i: measured with a rule, every hole is where it is on the plate", (at, circles) => {
    const svg = drawn[at]?.svg ?? "";
    const mm = scaleOf(svg);
    expect(mm).toBeCloseTo(25.4 / 72, 4);
    const found = circlesOf(svg);
    expect(found.map((holes) => holes.length)).toEqual(circles.map(([holes]) => holes));
    for (const [index, [holes, diameter]] of circles.entries()) {
      const marks = found[index] ?? [];
      const middle: Point = [marks.reduce((sum, [x]) => sum + x, 0) / holes, marks.reduce((sum, [, y]) => sum + y, 0) / holes];
      for (const [hole, mark] of marks.entries()) {
        expect(apart(mark, middle) * mm * 2).toBeCloseTo(diameter, 1);
        // Clockwise from the top, as seen on the page.
        const turns = (Math.atan2(mark[0] - middle[0], middle[1] - mark[1]) / (2 * Math.PI) + 1) % 1;
        expect(Math.abs(turns - hole / holes) % 1).toBeLessThan(1e-4);
        const next = marks[(hole + 1) % holes] ?? middle;
        expect(apart(mark, next) * mm).toBeCloseTo(diameter * Math.sin(Math.PI / holes), 1);
      }
    }
  });

  it("carries scales of 50 mm and 2 inches that are so long", () => {
    for (const { svg } of drawn) {
      const mm = scaleOf(svg);
      const level = [...svg.matchAll(/ d="M([\d.]+) ([\d.]+)L([\d.]+) \2" fill="none" stroke="#000000" stroke-width="0.6"/g)];
      expect(level.map(([, from, , to]) => ((Number(to) - Number(from)) * mm).toFixed(1))).toEqual(["50.0", "50.8"]);
      expect(wordsOf(svg)).toEqual(expect.arrayContaining(["50 mm", "2 in"]));
    }
  });

  it("of a face that was not measured names the diameters it is drawn on", () => {
    const [, , back] = drawn;
    expect(wordsOf(back?.svg ?? "").join(" ")).toContain("46 on 150 mm. The head file gives no diameters");
    expect(circlesOf(back?.svg ?? "").map((holes) => holes.length)).toEqual([46]);
  });

  it("the same head gives the same files", async () => {
    expect(await plateDrawings(measured)).toEqual(drawn);
  });

  it("each ready head is drawn, and none that has no plates", async () => {
    for (const head of readyHeads) {
      const files = await plateDrawings(head);
      expect(files.length).toBe(head.plates.flatMap(({ faces }) => faces).length);
      for (const { svg } of files) wellFormed(svg);
    }
  });
});

describe("a card to lay under the arms", () => {
  const [usual] = readyHeads as readonly [Head];
  it.each([
    [usual, 9],
    [usual, 127],
    [usual, 97],
    [measured, 12],
  ] as const)("%#: has the holes of the move filled, as far apart as the arms", async (head, divisions) => {
    const [setting] = indexDivisions(head, divisions, { limit: 1 }).settings;
    const { circle, spaces } = setting as { circle: number; spaces: number };
    const [card, more] = await plateDrawings(head, { job: { divisions } });
    expect(more).toBeUndefined();
    const svg = card?.svg ?? "";
    wellFormed(svg);
    const groups = [...svg.matchAll(/<g fill="#000000">((?:<circle [^>]*>)+)<\/g>/g)].map(([, inner = ""]) =>
      [...inner.matchAll(/cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]): Point => [Number(x), Number(y)]),
    );
    const filled = groups.at(-1) ?? [];
    expect(filled.length).toBe(spaces + 1);
    const [first, last] = [filled[0] as Point, filled.at(-1) as Point];
    const [, x, y] = /<path d="M([\d.]+) ([\d.]+)L[^"]*A/.exec(svg) ?? [];
    const middle: Point = [Number(x), Number(y)];
    expect(first[0]).toBeCloseTo(middle[0], 2);
    const turns = (Math.atan2(last[0] - middle[0], middle[1] - last[1]) / (2 * Math.PI) + 1) % 1;
    expect(turns).toBeCloseTo(spaces / circle, 5);
    expect(wordsOf(svg).join(" ")).toContain(`The arms enclose ${spaces + 1} hole`);
  });

  it("is at true size where the circle's diameter is known", async () => {
    const [setting] = indexDivisions(measured, 12, { limit: 1 }).settings;
    const [card] = await plateDrawings(measured, { job: { divisions: 12 } });
    const svg = card?.svg ?? "";
    const [, x = "0", y = "0"] = /<path d="M([\d.]+) ([\d.]+)L[^"]*A/.exec(svg) ?? [];
    const [, cx = "0", cy = "0"] = /<circle cx="([\d.]+)" cy="([\d.]+)"/.exec(svg) ?? [];
    const diameter = { 15: 62, 18: 87.5, 20: 104.5, 24: 80, 30: 96 }[setting?.circle ?? 0];
    expect(2 * apart([Number(x), Number(y)], [Number(cx), Number(cy)]) * scaleOf(svg)).toBeCloseTo(diameter ?? 0, 1);
  });

  it("there is none of a job that takes no arms", async () => {
    for (const divisions of [2, 40])
      await expect(plateDrawings(usual, { job: { divisions } })).rejects.toThrow(/takes no arms on a circle of an index plate/);
  });
});

describe("--as drawings", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "drawings-"));
    vi.spyOn(process.stdout, "write").mockReturnValue(true);
  });
  afterAll(() => {
    vi.restoreAllMocks();
    rmSync(folder, { recursive: true });
  });

  it("makes the directory, and writes over its own files and no others", async () => {
    const out = join(folder, "plates");
    await printBooklet(["--as", "drawings", "--out", out]);
    await printBooklet(["--as", "drawings", "--job", "127", "--out", out]);
    await printBooklet(["--as", "drawings", "--out", out]);
    const files = readdirSync(out).sort();
    expect(files).toEqual([
      "ratio-40-plates-15-49-arms-127-divisions.svg",
      "ratio-40-plates-15-49-plate-1.svg",
      "ratio-40-plates-15-49-plate-2.svg",
      "ratio-40-plates-15-49-plate-3.svg",
    ]);
    const last = join(out, "ratio-40-plates-15-49-plate-3.svg");
    const first = join(out, "ratio-40-plates-15-49-plate-1.svg");
    writeFileSync(last, "<svg xmlns='mine'/>");
    rmSync(first);
    await expect(printBooklet(["--as", "drawings", "--out", out])).rejects.toThrow(/is there already and is not/);
    expect(existsSync(first)).toBe(false);
    expect(readFileSync(last, "utf8")).toBe("<svg xmlns='mine'/>");
  });

  it.each([
    ["a paper", ["--paper", "a5"], /^--paper: has no effect on drawings; leave it out$/],
    ["counts", ["--from", "3"], /^--from: has no effect on drawings; leave it out$/],
    ["teeth without a job", ["--teeth", "3"], /^--teeth: goes with --job/],
    ["a head without plates", ["--head", "ratio-90-dial"], /^--as: this head has no index plates to draw/],
    ["a file for a directory", ["--out", "package.json"], /^package.json: is a file; name a directory for the drawings$/],
    ["a directory in none", ["--out", "none/there"], /^none\/there: there is no directory "none"/],
    ["a job without arms", ["--job", "40"], /^--job: 40 divisions takes no arms/],
  ])("refuses %s", async (_, words, told) => {
    await expect(printBooklet(["--as", "drawings", ...words])).rejects.toThrow(told);
  });
});

it("leaves the text of what is printed after it in the same process as it reads", async () => {
  const { outlines } = await openPrintShop();
  // The shape of « is put together from that of ‹, by its number alone: the font must not keep that for the letter.
  for (const weight of ["regular", "semibold", "bold"] as const) outlines("«»", { weight, size: 10 });
  const head = defineHead({ name: "Head ‹north›", wormRatio: 40, plates: [{ name: "1", circles: [15, 16] }] });
  const pages = await piecesOf(await jobSheetPdf(head, { divisions: 12 }));
  expect(pages.flatMap(linesOf).join("\n")).toContain("Head ‹north›");
});
