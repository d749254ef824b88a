import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Book } from "../../booklet/content/blocks.ts";
import { bookOf } from "../../booklet/content/book.ts";
import type { PartId } from "../../booklet/content/parts.ts";
import { repairBookOf } from "../../booklet/content/repair-sheet.ts";
import { flattened, type Mark, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { type Head, repairOnHead, spurGear } from "../../src/index.ts";
import { threePlates, twoFaces } from "../support/ready.ts";
import { everyOf, sweepsAll } from "../support/sweep.ts";
import { alike, fileOf, type Picture, pictureIn, pictureOf } from "./picture.ts";
import { pagesOn } from "./set-pages.ts";

const edition = { version: "0.0.0", digest: "000000000000" };

function textsOn({ marks }: Page): readonly TextMark[] {
  return [...flattened(marks)].filter((mark): mark is TextMark => mark.kind === "text");
}

/** The first page that has all these texts, wherever in the book it is. */
function pageWith(book: Book, texts: readonly string[]): Page {
  const page = pagesOn(paperNamed("a4"), book).find((each) =>
    texts.every((wanted) => textsOn(each).some(({ text }) => text === wanted)),
  );
  if (page === undefined) throw new Error(`no page has ${texts.join(" and ")}`);
  return page;
}

function bookWith(head: Head, part: PartId): Book {
  return bookOf(head, edition, { from: 2, to: 80, parts: [part], degreeTables: [] });
}

const geared = (head: Head) => pageWith(bookWith(head, "geared"), ["Counts that need gears", "GEARS"]);

/** A gear with three teeth lost, its sheet's first page. */
function repair(head: Head): Page {
  const job = repairOnHead(head, spurGear({ teeth: 86, module: 2 }), { damaged: [31, 32, 33], backlash: 0.2 });
  return pageWith(repairBookOf({ job, head, inches: false, sawGiven: false }, edition), ["START"]);
}

const pages: readonly (readonly [string, Page])[] = [
  ["plate", pageWith(bookWith(threePlates, "drawings"), ["Plate 3"])],
  ["geared-counts", geared(threePlates)],
  ["repair-sheet", repair(threePlates)],
];

const folder = new URL("golden/pictures/", import.meta.url);

/** The picture that is kept; with PICTURES=new, that of the page as it now is, which is then the one kept. */
async function kept(name: string, page: Page): Promise<Picture> {
  const file = new URL(`${name}.png`, folder);
  if (process.env.PICTURES === "new") {
    mkdirSync(folder, { recursive: true });
    const now = await pictureOf(page);
    // Where it shows the same, the file stays as it is: no difference to read that cannot be seen.
    if (!existsSync(file) || !alike(await pictureIn(readFileSync(file)), now)) writeFileSync(file, fileOf(now));
  }
  return pictureIn(readFileSync(file));
}

/** Where a picture can be looked at. */
function shown(name: string, picture: Picture): string {
  const file = join(mkdtempSync(join(tmpdir(), "picture-")), `${name}.png`);
  writeFileSync(file, fileOf(picture));
  return file;
}

/** A page with one mark changed, or without it. */
function changed(page: Page, old: Mark, by?: Mark): Page {
  const within = (marks: readonly Mark[]): readonly Mark[] =>
    marks.flatMap((mark) => {
      if (mark === old) return by ?? [];
      return mark.kind === "group" ? { ...mark, marks: within(mark.marks) } : mark;
    });
  return { ...page, marks: within(page.marks) };
}

/** For each figure the one most like it. */
const likest: Readonly<Record<string, string>> = {
  ...{ 0: "8", 1: "7", 2: "3", 3: "8", 4: "1" },
  ...{ 5: "6", 6: "8", 7: "1", 8: "3", 9: "8" },
};

/** The first of each kind that is among the marks of a page. */
function oneOfEach<Kept extends Mark>(page: Page, kindOf: (mark: Mark) => string | null): readonly Kept[] {
  const found = new Map<string, Mark>();
  for (const mark of flattened(page.marks)) {
    const kind = kindOf(mark);
    if (kind !== null && !found.has(kind)) found.set(kind, mark);
  }
  return [...found.values()] as Kept[];
}

/** A text with a figure, by its type. */
function typeOf(mark: Mark): string | null {
  return mark.kind === "text" && /\d/.test(mark.text) ? `${mark.size} ${mark.weight} ${mark.grey}` : null;
}

/** A band by its look, as that of a reversed mark; a shape, as an arm, by itself. */
function lookOf(mark: Mark): string | null {
  // White behind a figure is seen only where something lies under it.
  if (mark.kind === "band") return mark.grey === 1 ? null : `${mark.grey} ${mark.width}`;
  return mark.kind === "shape" ? mark.path : null;
}

describe("the look of a page", () => {
  // Changed on purpose? `npm run reprint`, and look at the pictures before they are committed.
  it.each(pages)("%s: is that of the picture in test/booklet/golden/pictures", async (name, page) => {
    const drawn = await pictureOf(page);
    if (!alike(await kept(name, page), drawn)) expect.fail(`not as the picture kept; now it is as in ${shown(name, drawn)}`);
  });
});

describe("the comparison of pictures", () => {
  const compared = sweepsAll ? pages : pages.slice(1, 2);
  const some = <Case>(cases: readonly Case[]) => (sweepsAll ? cases : cases.slice(0, 4));

  it.each(everyOf(2, pages))("%s: lets pass what only smooths edges otherwise", async (_, page) => {
    expect(alike(await pictureOf(page), await pictureOf(page, 0.1))).toBe(true);
  });

  it("refuses the same page of another head", async () => {
    expect(alike(await pictureOf(geared(threePlates)), await pictureOf(geared(twoFaces)))).toBe(false);
    expect(alike(await pictureOf(repair(threePlates)), await pictureOf(repair(twoFaces)))).toBe(false);
  });

  it.each(compared)("%s: refuses one figure changed or moved by a point, in any type", async (_, page) => {
    const good = await pictureOf(page);
    for (const mark of some(oneOfEach<TextMark>(page, typeOf))) {
      const text = mark.text.replace(/\d/, (figure) => likest[figure] ?? "");
      expect(alike(good, await pictureOf(changed(page, mark, { ...mark, text }))), `${mark.text} to ${text}`).toBe(false);
      expect(alike(good, await pictureOf(changed(page, mark, { ...mark, x: mark.x + 1 }))), `${mark.text} moved`).toBe(false);
    }
  });

  it.each(compared)("%s: refuses one shape, band or reversed mark left out", async (_, page) => {
    const good = await pictureOf(page);
    const marks = some(oneOfEach(page, lookOf).slice(0, 12));
    expect(marks.length).toBeGreaterThan(1);
    for (const mark of marks) {
      expect(alike(good, await pictureOf(changed(page, mark))), JSON.stringify(mark).slice(0, 120)).toBe(false);
    }
  });
});
