import { describe, expect, it } from "vitest";
import { paperNames, wallPaperNames } from "../../booklet/index.ts";
import { flattened, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { paperNamed, wallPaperNamed } from "../../booklet/layout/papers.ts";
import { defineHead, type Head, readyHeads, wormRatioOf } from "../../src/index.ts";
import { eachWithEach } from "../support/sweep.ts";
import { halfTurn, secondHand } from "./heads.ts";
import { linesIn, pagesOn, wallBook, wholeBook } from "./set-pages.ts";

const all = { from: 2, to: 400 };
/** Its two pairs of gears may foul: one of 12 teeth is in the way of a shaft. */
const fewGears = defineHead({ ...secondHand, id: "few-gears", rearPin: false, gears: [12, 12, 24, 24] });
const heads = [...readyHeads, secondHand, halfTurn, fewGears].map((head) => [head.id, head] as const);

/** What stands on a sheet before its table, in one line, and the rows with a mark. */
function sheetOf(page: Page) {
  const lines = linesIn(page);
  const table = lines.findIndex((line) => /(?:^|\|)Count\|/.test(line));
  const rows = lines.filter((line) => /^\d+(?:–\d+)?\|[SGCDH×]\|/.test(line));
  return { lines, said: lines.slice(0, Math.max(0, table)).join(" "), heads: lines[table] ?? "", rows };
}

const markOf = (row: string) => /\|([SGCDH×])\|/.exec(row)?.[1] ?? "";

function textsOn({ marks }: Page): readonly TextMark[] {
  return [...flattened(marks)].filter((mark): mark is TextMark => mark.kind === "text");
}

function gearsOf({ gears }: Head): string {
  return gears.length === 0 ? "no gears" : `with gears ${gears.join(" ")}`;
}

function gearsInShort({ gears }: Head): string {
  return gears.length === 0 ? "no gears" : `with ${gears.length} gears`;
}

describe.each(heads)("the wall sheets of %s, each by itself", (_, head) => {
  const book = wallBook(head, all);
  const papers = wallPaperNames.map((name) => ({ name, pages: pagesOn(wallPaperNamed(name), book) }));
  const sheets = papers.flatMap(({ name, pages }) =>
    pages.map((page, index) => ({ on: `${name} ${index + 1}`, ...sheetOf(page) })),
  );

  it("say what each of their marks means", () => {
    for (const { on, said, rows } of sheets) {
      for (const mark of new Set(rows.map(markOf))) expect(said, `${on}: ${mark}`).toMatch(new RegExp(`(?:^| )${mark}: \\w`));
    }
  });

  it("say where the stop pin is: IN for simple rows, OUT for geared and compound ones", () => {
    for (const { on, said, rows } of sheets) {
      const marks = new Set(rows.filter((row) => !/: page \d/.test(row)).map(markOf));
      if (marks.has("S") && head.plates.length > 0) expect(said, on).toMatch(/stop pin IN/);
      if (marks.has("G") || marks.has("C")) expect(said, on).toMatch(/plate stop pin OUT/i);
    }
  });

  it("say what both parts of a compound move are, and in which order", () => {
    for (const { on, said, rows } of sheets.filter(({ rows }) => rows.some((row) => /\|C\|\d/.test(row)))) {
      expect(said, on).toMatch(/crank and plate turned together by the spaces of the rear circle/);
      const isBack = rows.some((row) => row.includes("|against|"));
      expect(said, on).toMatch(isBack ? /First both BACK by the rear pin, then the crank/ : /First the crank, then both on/);
      expect(
        rows.filter((row) => row.includes("|against|") !== isBack),
        on,
      ).toEqual([]);
    }
  });

  it("say that the work goes round more than once where it does", () => {
    for (const { on, said, rows } of sheets.filter(
      ({ heads, rows }) => heads.includes("a move") && rows.some((row) => row.includes("|G|")),
    )) {
      expect(rows.length, on).toBeGreaterThan(0);
      expect(said, on).toMatch(/the work goes round as often as there are teeth a move/);
    }
  });

  it("say whose head they are for in full, and with what gears", () => {
    for (const { on, lines } of sheets) {
      expect(lines.join("\n"), on).toContain(head.name);
      const said = [gearsOf(head), gearsInShort(head)].some((text) => lines.join("\n").includes(text));
      expect(said, on).toBe(true);
    }
  });

  it("tell ratio and counts in figures that are read at two metres", () => {
    for (const { name, pages } of papers) {
      for (const page of pages) {
        // 16 minutes of arc; figures are 0.698 of the size of the type.
        const least = (2000 * Math.tan((16 / 60 / 180) * Math.PI)) / 0.698 / (25.4 / 72);
        const large = textsOn(page)
          .filter(({ size }) => size >= least)
          .map(({ text }) => text);
        expect(large, name).toContain(
          `${wormRatioOf(head)
            .replace(/^(\d+)$/, "$1/1")
            .replace("/", " : ")}`,
        );
        if (page.headwords !== "") expect(large, name).toContain(page.headwords);
      }
    }
  });

  it("leave no warning at their foot with what it warns of overleaf", () => {
    for (const { name, pages } of papers) {
      for (const { marks } of pages) {
        const last = marks.findLast((mark) => mark.kind === "group");
        const bold =
          last?.kind === "group" &&
          last.role === "P" &&
          last.marks.some((mark) => mark.kind === "text" && mark.weight === "bold");
        expect(bold, name).toBe(false);
      }
    }
  });
});

describe("the wall sheets", () => {
  it("print the near move where it is the best, as large as the figures", () => {
    const head = readyHeads.find(({ id }) => id === "ratio-40-plates-15-49-ungeared") as Head;
    const texts = pagesOn(wallPaperNamed("a4"), wallBook(head, all)).flatMap(textsOn);
    const near = texts.filter(({ text }) => /^near move \d+ \+ \d+ of \d+/.test(text));
    expect(near.length).toBeGreaterThan(100);
    expect(Math.min(...near.map(({ size }) => size))).toBeGreaterThanOrEqual(14);
  });

  it("warn of gears that may foul", () => {
    const fouling = wholeBook(fewGears, all)
      .parts.flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === "table" ? block.rows : []));
    const warned = fouling.filter((row) => JSON.stringify(row).includes("may foul")).length;
    expect(warned).toBeGreaterThan(0);
    const texts = pagesOn(wallPaperNamed("a3"), wallBook(fewGears, all)).flatMap(textsOn);
    expect(texts.filter(({ text }) => text.includes("may foul")).length).toBeGreaterThanOrEqual(warned);
  });
});

describe("the head of a page in a book", () => {
  const all = heads.map(([, head]) => head);
  it.each(eachWithEach(paperNames, all))(
    "never cuts the name of the head; where it has no room it says with what gears: %s",
    (_, paper, head) => {
      for (const page of pagesOn(paperNamed(paper), wholeBook(head, { from: 2, to: 60 }))) {
        const texts = textsOn(page).map(({ text }) => text);
        expect(
          texts.some((text) => [head.name, gearsOf(head), gearsInShort(head)].includes(text)),
          page.label,
        ).toBe(true);
      }
    },
  );
});
