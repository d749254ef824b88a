import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BookletOptions, bookletPdf, jobSheetPdf } from "../../booklet/index.ts";
import { defineHead, type Head, type HeadSpec, indexTable, type Ratio, ratio, readyHeads } from "../../src/index.ts";
import { everyOf, farthest, runs } from "../support/sweep.ts";
import { halfTurn, headSpec, secondHand } from "./heads.ts";
import { headAsPrinted } from "./plate-keys.ts";
import { printedFile } from "./printed-file.ts";
import { closes, type PrintedRow, printedRows } from "./printed-rows.ts";
import { readBack } from "./read-back.ts";
import { linesOf, openPdf, type Piece, piecesOf } from "./read-pdf.ts";

const [usual] = readyHeads as readonly [Head];
const usualPages = await readBack(usual);

type Pages = readonly (readonly Piece[])[];

/** What is wrong with the rows of a book, read from its pages alone. */
function faults(pages: Pages, head: Head, { from, to }: { from: number; to: number }) {
  const rows = printedRows(pages, ratioPrinted(pages[0] ?? []), head);
  const marked = (mark: string) => rows.filter((row) => row.mark === mark).map(({ divisions }) => divisions);
  const impossible = indexTable(head, { from, to }).filter(({ setting }) => setting === null);
  return {
    open: rows.filter((row) => row.setting !== null && !closes(row, head)),
    arms: rows.filter(({ setting }) => setting?.armsEnclose && setting.armsEnclose !== setting.spaces + 1),
    missing: missing(rows, from, to),
    impossible: difference(
      marked("×"),
      impossible.map(({ divisions }) => divisions),
    ),
    twice: marked("G").filter((count) => marked("S").includes(count)),
  };
}

const none = { open: [], arms: [], missing: [], impossible: [], twice: [] };
const all = { from: 2, to: 400 };

describe("the book, read back from the page", () => {
  // The very files that are handed on; that they are what the code makes is tested beside them. Books of
  // readings have no such rows: theirs are set by hand in a test of their own.
  it.each(
    everyOf(
      3,
      readyHeads.filter(({ plates }) => plates.length > 0).map((head) => [head.id, head] as const),
    ),
  )("%s: every row of the printed book closes", async (_, head) => {
    expect(faults(await piecesOf(printedFile(head)), head, all)).toEqual(none);
  });

  it.each(everyOf(2, [secondHand, halfTurn]).map((head) => [head.id, head] as const))("%s: every row closes", async (_, head) => {
    const range = { from: 2, to: farthest };
    expect(faults(await readBack(head, range), head, range)).toEqual(none);
  });

  const papers = [
    ["on A5", { paper: "a5" }],
    ["on half Letter", { paper: "half-letter" }],
    ["on the wall", { as: "wall" }],
  ] as const;
  it.each(everyOf(2, papers))("%s every row closes too", async (_, options: BookletOptions) => {
    const range = { from: 40, to: 160 };
    expect(faults(await readBack(usual, { ...options, ...range }), usual, range)).toEqual(none);
  });

  it("closes for any head", async () => {
    const range = { from: 2, to: 16 };
    await fc.assert(
      fc.asyncProperty(headSpec, async (spec) => {
        const head = defineHead({
          ...spec,
          // Long names stand for what they are by letters; of short ones some could be taken for words of the page.
          plates: spec.plates.map((plate, index) => ({
            ...plate,
            name: plate.name.trim().length > 8 ? plate.name : String(index + 1),
          })),
        } as HeadSpec);
        const parts = ["simple", "direct", "dial", "geared", "compound", "impossible"] as const;
        const pages = await readBack(head, { ...range, parts, paper: "letter" });
        const found = faults(pages, headAsPrinted(pages.flatMap(linesOf), head), range);
        expect(found).toEqual(none);
      }),
      runs(20),
    );
  });

  it("points to another page in the place of each count that simple indexing misses, and of no other", () => {
    const pointers = usualPages.flatMap(linesOf).flatMap((line) => {
      const found = /^(\d+)(?:–(\d+))?\|G\|needs gears: page \d+$/.exec(line);
      return found ? [{ first: Number(found[1]), last: Number(found[2] ?? found[1]) }] : [];
    });
    const pointed = pointers.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, step) => first + step));
    const geared = printedRows(usualPages, ratio(40), usual).filter(({ mark }) => mark === "G");
    expect(pointed).toEqual(geared.map(({ divisions }) => divisions).sort((a, b) => a - b));
  });

  it("says after how many moves the pin is back in its start hole, with whole turns", () => {
    const checked = printedRows(usualPages, ratio(40), usual).flatMap(({ mark, setting, rest }) => {
      const check = /\|(\d+)\|(\d+)\|(\d+)°$/.exec(rest);
      return mark === "S" && setting && check
        ? [{ setting, moves: Number(check[1]), turns: Number(check[2]), ring: Number(check[3]) }]
        : [];
    });
    expect(checked.length).toBeGreaterThan(100);
    for (const { setting, moves, turns, ring } of checked) {
      const holes = setting.circle ?? 1;
      expect(moves * (setting.turns * holes + setting.spaces)).toBe(turns * holes);
      expect(turns * 9).toBe(ring);
    }
  });

  it("names ratio, plates, edition and page on every page", () => {
    for (const [index, page] of usualPages.entries()) {
      const text = linesOf(page).join("\n");
      expect(text).toContain("40 : 1");
      expect(text).toContain("Plates 1: 15 16 17 18 19 20");
      expect(text).toMatch(/Turns & Holes \d+\.\d+\.\d+ · [0-9a-f]{12}/);
      expect(text).toContain(`page ${index + 1} of ${usualPages.length}`);
    }
  });

  it("says that a count is not in this print, where its part was left out", async () => {
    const pages = await readBack(usual, { to: 60, parts: ["simple"] });
    expect(pages.flatMap(linesOf)).toContain("51|G|needs gears; not in this print");
  });
});

describe("the words on the page", () => {
  // Changed on purpose? Run vitest with -u, and read the difference before it is committed.
  it("are those of the book in test/booklet/golden", async () => {
    const lines = (await readBack(usual, { to: 60 })).flatMap((page, index) => [`-- ${index + 1}`, ...linesOf(page)]);
    await expect(`${lines.join("\n").replace(editionLine, "<edition>")}\n`).toMatchFileSnapshot("golden/book-to-60.txt");
  });

  it("are those of the job sheet there", async () => {
    const lines = (await piecesOf(await jobSheetPdf(usual, { divisions: 127 }))).flatMap(linesOf);
    await expect(`${lines.join("\n").replace(editionLine, "<edition>")}\n`).toMatchFileSnapshot("golden/job-127.txt");
  });
});

/** Changes with every version and option. */
const editionLine = /\d+\.\d+\.\d+ · [0-9a-f]{12}|edition \d+\.\d+\.\d+|inputs [0-9a-f]{12}/g;

describe("the file", () => {
  it("is the same bytes from the same inputs", async () => {
    const [one, other] = [await bookletPdf(usual, { to: 60 }), await bookletPdf(usual, { to: 60 })];
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0);
  });

  it("has a title, a language, an outline and page labels, and its links lead somewhere", async () => {
    const document = await openPdf(await bookletPdf(usual, { to: 60 }));
    const { info } = await document.getMetadata();
    expect(info).toMatchObject({ Title: usual.name, Creator: "Turns & Holes", Language: "en" });
    expect((await document.getOutline()).map(({ title }) => title)).toContain("Counts by simple indexing");
    expect(await document.getPageLabels()).toEqual(Array.from({ length: document.numPages }, (_, index) => String(index + 1)));
    const links = (await (await document.getPage(1)).getAnnotations()).filter(({ subtype }) => subtype === "Link");
    expect(links.length).toBeGreaterThan(0);
    for (const { dest } of links) expect(await document.getDestination(dest)).not.toBeNull();
    await document.destroy();
  });

  it.each([
    ["a paper there is none of", { paper: "a9" }, /no paper "a9" for a book; the papers are a4, a5/],
    ["a full sheet to fold", { as: "booklet", paper: "a4" }, /folded from half sheets/],
    ["a half sheet for the wall", { as: "wall", paper: "a5" }, /no paper "a5" for wall sheets/],
    ["a part there is none of", { parts: ["recipes"] }, /no part recipes; the parts are reading/],
  ])("refuses %s", async (_, options, message) => {
    await expect(bookletPdf(usual, options as BookletOptions)).rejects.toThrow(message);
  });

  it("refuses a name with a letter that its type lacks, rather than print nothing there", async () => {
    const head = defineHead({ name: "割出台", wormRatio: 40, plates: [{ name: "1", circles: [15] }] });
    await expect(bookletPdf(head)).rejects.toThrow(/no letter "割"/);
  });
});

function ratioPrinted(page: readonly Piece[]): Ratio {
  const found = /(\d+) : (\d+)/.exec(page.map(({ text }) => text).join(" "));
  return ratio(Number(found?.[1]), Number(found?.[2]));
}

function missing(rows: readonly PrintedRow[], from: number, to: number): number[] {
  const there = new Set(rows.map(({ divisions }) => divisions));
  return Array.from({ length: to - from + 1 }, (_, index) => from + index).filter((count) => !there.has(count));
}

function difference(one: readonly number[], other: readonly number[]): number[] {
  return [...one.filter((each) => !other.includes(each)), ...other.filter((each) => !one.includes(each))];
}
