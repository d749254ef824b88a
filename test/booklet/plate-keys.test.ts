import { describe, expect, it } from "vitest";
import { type BookForm, type BookletOptions, jobSheetPdf, type PaperName } from "../../booklet/index.ts";
import { defineHead, type Head, indexTable, readyHeads, wormRatioOf } from "../../src/index.ts";
import { everyOf, farthest } from "../support/sweep.ts";
import { brassPlate, longNamed, longNames } from "./heads.ts";
import { headAsPrinted, keysPrinted } from "./plate-keys.ts";
import { closes, printedRows } from "./printed-rows.ts";
import { readBack } from "./read-back.ts";
import { linesOf, type Piece, piecesOf } from "./read-pdf.ts";

const [usual] = readyHeads as readonly [Head];

/** Two faces to each plate, and short names that are letters themselves. */
const faced = defineHead({
  id: "long-names-and-faces",
  wormRatio: 40,
  plates: [
    {
      name: "A",
      faces: [
        { name: "front", circles: [15, 16, 17] },
        { name: "back", circles: [18, 19, 20] },
      ],
    },
    {
      name: longNames[1] ?? "",
      faces: [
        { name: "front", circles: [21, 23, 27] },
        { name: "back", circles: [29, 31, 33] },
      ],
    },
    { name: "b", circles: [37, 39, 41] },
    { name: longNames[2] ?? "", circles: [43, 47, 49] },
  ],
});

type Pages = readonly (readonly Piece[])[];

/** Counts that are missing, do not close, or are called impossible and are not, by the print alone. */
function faults(pages: Pages, head: Head, { from, to }: { from: number; to: number }) {
  const named = headAsPrinted(pages.flatMap(linesOf), head);
  const rows = printedRows(pages, wormRatioOf(head), named);
  const possible = indexTable(head, { from, to }).flatMap(({ divisions, setting }) => (setting === null ? [] : [divisions]));
  const closing = new Set(rows.filter((row) => closes(row, named)).map(({ divisions }) => divisions));
  return {
    open: rows.filter((row) => row.setting !== null && !closes(row, named)),
    missing: possible.filter((count) => !closing.has(count)),
  };
}

const none = { open: [], missing: [] };

const inBooks: readonly (readonly [BookForm, PaperName])[] = [
  ["pages", "a4"],
  ["pages", "letter"],
  ["pages", "a5"],
  ["pages", "half-letter"],
  ["large", "a4"],
  ["large", "letter"],
  ["wall", "a4"],
  ["wall", "letter"],
  ["wall", "a3"],
];

describe("plates with long names, by a letter each", () => {
  it.each(everyOf(5, inBooks))("%s on %s: every row closes by the letters that the print itself gives", async (as, paper) => {
    const range = { from: 2, to: 130 };
    const pages = await readBack(longNamed, { as, paper, ...range });
    expect(
      keysPrinted(pages.flatMap(linesOf), longNamed)
        .map(({ name }) => name)
        .sort(),
    ).toEqual([...longNames, brassPlate].sort());
    expect(faults(pages, longNamed, range)).toEqual(none);
  });

  it.each(
    everyOf(3, [
      ["pages", "a4"],
      ["pages", "a5"],
      ["wall", "a4"],
    ] as const),
  )("%s on %s: so it does where short names are letters, and plates have faces", async (as, paper) => {
    const range = { from: 2, to: 130 };
    const pages = await readBack(faced, { as, paper, ...range });
    const keys = keysPrinted(pages.flatMap(linesOf), faced);
    expect(keys).toHaveLength(2);
    for (const { key } of keys) expect(faced.plates.map(({ name }) => name.toUpperCase())).not.toContain(key);
    expect(faults(pages, faced, range)).toEqual(none);
  });

  it("takes no letter that marks how a count is done", async () => {
    const keys = keysPrinted((await readBack(longNamed, { to: 20 })).flatMap(linesOf), longNamed);
    for (const { key } of keys) expect(["S", "G", "C", "D", "H", "R"]).not.toContain(key);
  });

  it("names each of them in full on the title page, and that page at the foot of every other", async () => {
    const pages = await readBack(longNamed, { to: 60 });
    expect(keysPrinted(pages.slice(0, 1).flatMap(linesOf), longNamed)).toHaveLength(4);
    for (const page of pages) expect(linesOf(page).join("\n")).toMatch(/Plates \(letters: page 1\) [A-Z]: 15 16 17/);
  });

  it.each([
    ["wall", "a4"],
    ["poster", "a3"],
    ["card", "a4"],
  ] as const)("%s on %s: each sheet that names a plate by its letter says which that is", async (as, paper) => {
    const options: BookletOptions = as === "wall" ? { as, paper, to: 130 } : { as, paper };
    const pages = await readBack(longNamed, options);
    if (as !== "wall") expect(pages).toHaveLength(1);
    expect(pages.flatMap(linesOf).join("\n")).not.toContain("letters: page");
    const letters = new Set(keysPrinted(pages.flatMap(linesOf), longNamed).map(({ key }) => key));
    expect(letters.size).toBeGreaterThan(1);
    for (const page of pages) {
      const given = new Set(keysPrinted(linesOf(page), longNamed).map(({ key }) => key));
      const used = page.filter(({ text }) => letters.has(text)).map(({ text }) => text);
      expect(used.filter((letter) => !given.has(letter))).toEqual([]);
    }
  });

  it("tells them on a first sheet for the wall where they are too many for each, and every sheet says so", async () => {
    const plates = Array.from({ length: 14 }, (_, at) => ({
      name: `plate no. ${at + 1} of the set that came with the third head`,
      circles: [15, 16, 17].map((holes) => holes + 3 * at),
    }));
    const head = defineHead({ wormRatio: 40, plates });
    const pages = await readBack(head, { as: "wall", to: 100, parts: ["simple"] });
    expect(keysPrinted(linesOf(pages[0] ?? []), head)).toHaveLength(14);
    for (const page of pages.slice(1)) expect(linesOf(page).join(" ")).toContain("The letters of the plates: page 1.");
    expect(faults(pages, head, { from: 2, to: 40 })).toEqual(none);
  });

  it.each(["a4", "a5", "letter", "half-letter"] as const)("a job sheet on %s names its plate in full", async (paper) => {
    for (const divisions of [97, 51, 18]) {
      const pages = await piecesOf(await jobSheetPdf(longNamed, { divisions, paper }));
      const figures = linesOf(pages[0] ?? []).find((line) => line.startsWith("plate ")) ?? "";
      const [, letter = ""] = /^plate ([A-Z])(?:\||$)/.exec(figures) ?? [];
      expect(keysPrinted(pages.slice(0, 1).flatMap(linesOf), longNamed).map(({ key }) => key)).toEqual([letter]);
    }
  });

  it("takes no more pages than where the same plates have short names", async () => {
    const short = defineHead({
      ...longNamed,
      plates: usual.plates,
      directPlates: [{ name: "nose", holes: 24 }],
    });
    const pagesOf = async (head: Head) => (await readBack(head, { to: farthest })).length;
    expect(await pagesOf(longNamed)).toBeLessThanOrEqual((await pagesOf(short)) + 1);
  });

  it("prints names of up to eight letters as they are", async () => {
    const head = defineHead({ wormRatio: 40, plates: [{ name: "old iron", circles: [15, 16, 17, 18] }] });
    const pages = await readBack(head, { to: 30 });
    expect(keysPrinted(pages.flatMap(linesOf), head)).toEqual([]);
    expect(faults(pages, head, { from: 2, to: 30 })).toEqual(none);
  });
});
