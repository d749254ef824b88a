import { describe, expect, it } from "vitest";
import { bookletPdf } from "../../booklet/index.ts";
import { defineHead, fromExact, type Head, indexTable, readyHeads } from "../../src/index.ts";
import { closes, type PrintedRow, printedRows } from "./printed-rows.ts";
import { linesOf, openPdf, piecesOf } from "./read-pdf.ts";

const secondHand = defineHead({
  id: "second-hand-40",
  name: "Second-hand 40:1 head, plate 2 lost",
  wormRatio: 40,
  plates: [
    { name: "1", circles: [15, 16, 17, 18, 19, 20] },
    { name: "3", circles: [37, 39, 41, 43, 47, 49] },
  ],
  directPlates: [{ name: "nose", holes: 24 }],
  rearPin: true,
  gears: [24, 28, 32, 40, 48, 56, 72],
});

const halfTurn = defineHead({
  id: "ratio-81-over-2",
  wormRatio: "81/2",
  plates: [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }],
  rearPin: true,
});

describe("the book, read back from the page", () => {
  it.each([...readyHeads, secondHand, halfTurn].map((head) => [head.id, head] as const))(
    "%s: every row closes on the mechanism",
    async (_, head) => {
      const pages = await piecesOf(await bookletPdf(head));
      const rows = printedRows(pages, { wormRatio: ratioPrinted(pages[0] ?? []) });
      expect(rows.filter((row) => row.setting !== null && !closes(row))).toEqual([]);
      expect(rows.filter(({ setting }) => setting?.armsEnclose != null && setting.armsEnclose !== setting.spaces + 1)).toEqual(
        [],
      );
      expect(wrongIdlers(rows, head)).toEqual([]);
      expect(missing(rows)).toEqual([]);
      expect(impossibleRows(rows)).toEqual(
        indexTable(head, { from: 2, to: 400 })
          .filter(({ setting }) => setting === null)
          .map(({ divisions }) => divisions),
      );
    },
  );

  it("sets apart what needs gears: no geared count has a simple row, and each is pointed to in its place", async () => {
    const [head] = readyHeads as readonly [Head];
    const pages = await piecesOf(await bookletPdf(head));
    const rows = printedRows(pages, head);
    const counts = (mark: string) => new Set(rows.filter((row) => row.mark === mark).map(({ divisions }) => divisions));
    expect([...counts("G")].filter((count) => counts("S").has(count))).toEqual([]);
    const pointers = pages.flatMap(linesOf).flatMap((line) => /^(\d+)(?:–(\d+))?\|G\|needs gears: page (\d+)$/.exec(line) ?? []);
    expect(pointers.length).toBeGreaterThan(0);
    const pointed = pages.flatMap(linesOf).flatMap((line) => {
      const found = /^(\d+)(?:–(\d+))?\|G\|needs gears: page \d+$/.exec(line);
      if (!found) return [];
      const [first, last] = [Number(found[1]), Number(found[2] ?? found[1])];
      return Array.from({ length: last - first + 1 }, (_, step) => first + step);
    });
    expect(new Set(pointed)).toEqual(counts("G"));
  });

  it("points to the page where the count is", async () => {
    const [head] = readyHeads as readonly [Head];
    const pages = await piecesOf(await bookletPdf(head));
    const wrong = pages.flatMap(linesOf).flatMap((line) => {
      const found = /^(\d+)(?:–\d+)?\|G\|needs gears: page (\d+)$/.exec(line);
      if (!found) return [];
      const there = linesOf(pages[Number(found[2]) - 1] ?? []);
      return there.some((each) => each.startsWith(`${found[1]}|G|`)) ? [] : [line];
    });
    expect(wrong).toEqual([]);
  });

  it("names ratio, plates, rule, edition and page on every page", async () => {
    const [head] = readyHeads as readonly [Head];
    const pages = await piecesOf(await bookletPdf(head));
    for (const [index, page] of pages.entries()) {
      const text = linesOf(page).join("\n");
      expect(text).toContain("40 : 1");
      expect(text).toContain("Plates 1: 15 16 17 18 19 20");
      expect(text).toContain("Crank turns of one division = 40 ÷ count");
      expect(text).toMatch(/Turns & Holes \d+\.\d+\.\d+ · [0-9a-f]{12}/);
      expect(text).toContain(`page ${index + 1} of ${pages.length}`);
    }
  });
});

describe("the file", () => {
  it("is the same bytes from the same inputs", async () => {
    const [head] = readyHeads as readonly [Head];
    const [one, other] = [await bookletPdf(head, { to: 60 }), await bookletPdf(head, { to: 60 })];
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0);
  });

  it("has a title, a language, an outline and page labels, and its links lead somewhere", async () => {
    const [head] = readyHeads as readonly [Head];
    const document = await openPdf(await bookletPdf(head, { to: 60 }));
    const { info } = await document.getMetadata();
    expect(info).toMatchObject({ Title: head.name, Creator: "Turns & Holes", Language: "en" });
    expect((await document.getOutline()).map(({ title }) => title)).toContain("Counts by simple indexing");
    expect(await document.getPageLabels()).toEqual(Array.from({ length: document.numPages }, (_, index) => String(index + 1)));
    const page = await document.getPage(1);
    const links = (await page.getAnnotations()).filter(({ subtype }) => subtype === "Link");
    expect(links.length).toBeGreaterThan(0);
    for (const { dest } of links) expect(await document.getDestination(dest)).not.toBeNull();
    await document.destroy();
  });

  it.each([["a paper there is none of", { paper: "a9" as "a4" }, /no paper "a9"; the papers are a4, a5/]])(
    "refuses %s",
    async (_, options, message) => {
      await expect(bookletPdf(readyHeads[0] as Head, options)).rejects.toThrow(message);
    },
  );

  it("refuses a name with a letter that its type lacks, rather than print nothing there", async () => {
    const head = defineHead({ name: "割出台", wormRatio: 40, plates: [{ name: "1", circles: [15] }] });
    await expect(bookletPdf(head)).rejects.toThrow(/no letter "割"/);
  });
});

function ratioPrinted(page: readonly { text: string }[]): string {
  const found = /(\d+) : (\d+)/.exec(page.map(({ text }) => text).join(" "));
  return found?.[2] === "1" ? (found[1] ?? "") : `${found?.[1]}/${found?.[2]}`;
}

function impossibleRows(rows: readonly PrintedRow[]): number[] {
  return rows.filter(({ mark }) => mark === "×").map(({ divisions }) => divisions);
}

function missing(rows: readonly PrintedRow[]): number[] {
  const there = new Set(rows.map(({ divisions }) => divisions));
  return Array.from({ length: 399 }, (_, index) => index + 2).filter((count) => !there.has(count));
}

/** The printed direction against what the printed idlers and gears make on this head. */
function wrongIdlers(rows: readonly PrintedRow[], { gearing }: Head): PrintedRow[] {
  return rows.filter(({ setting }) => {
    if (!setting?.gears || !gearing) return false;
    const { drivers, driven, idlers, direction, platePerSpindle } = setting.gears;
    const withCrank = drivers.length === 1 ? gearing.idlersWithCrank.onePair : gearing.idlersWithCrank.twoPairs;
    const product = (teeth: readonly number[]) => teeth.reduce((all, each) => all * each, 1);
    const turns = fromExact(`${product(drivers)}/${product(driven)}`);
    return idlers !== withCrank + (direction === "against" ? 1 : 0) || !fromExact(platePerSpindle).abs().equals(turns);
  });
}
