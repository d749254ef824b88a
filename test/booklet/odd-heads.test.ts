import { describe, expect, it } from "vitest";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import { type BookletOptions, jobSheetPdf } from "../../booklet/index.ts";
import { betweenParts, brokenAtPoints } from "../../booklet/layout/measure.ts";
import { largePaperNamed } from "../../booklet/layout/papers.ts";
import { defineHead, type Head, readyHeads } from "../../src/index.ts";
import { everyOf, farthest } from "../support/sweep.ts";
import { fiveToOne } from "./heads.ts";
import { readBack } from "./read-back.ts";
import { linesOf, type Piece, piecesOf } from "./read-pdf.ts";

const { measure } = await openPrintShop();
const [usual] = readyHeads as readonly [Head];

const fine = defineHead({ id: "ratio-4000", wormRatio: 4000, plates: usual.plates, ring: { marksPerTurn: 360 } });
/** A table that is set by its ring alone. */
const ringAlone = defineHead({
  id: "ratio-180-ring",
  wormRatio: 180,
  directPlates: [{ name: "nose", holes: 24 }],
  ring: { marksPerTurn: 360 },
});
const faced = defineHead({
  id: "two-faced",
  wormRatio: 40,
  plates: usual.plates.map(({ name, faces }) => ({
    name,
    faces: faces.flatMap(({ circles }) => [
      { name: "front", circles },
      { name: "back", circles: circles.map((holes) => holes + 30) },
    ]),
  })),
  ring: { marksPerTurn: 360 },
});

async function book(head: Head, options: BookletOptions = {}): Promise<readonly (readonly Piece[])[]> {
  return readBack(head, options);
}

async function linesIn(head: Head, options: BookletOptions = {}): Promise<readonly string[]> {
  return (await book(head, options)).flatMap(linesOf);
}

describe("what a head has not, its book does not speak of", () => {
  it.each(everyOf(2, ["a4", "a5"] as const))("no ring, on %s", async (paper) => {
    // The title page says of the whole head what it has and has not.
    const lines = (await linesIn(fiveToOne, { paper, to: farthest })).filter(
      (line) => line !== "Ring|none" && !line.startsWith("Circle|"),
    );
    expect(lines.filter((line) => /\bring\b/i.test(line))).toEqual([]);
  });

  it.each(everyOf(2, ["a4", "a5"] as const))("nothing that turns the plate, on %s", async (paper) => {
    const lines = await linesIn(fiveToOne, { paper, to: farthest });
    expect(lines.filter((line) => line.includes("Stop pin IN"))).not.toEqual([]);
    expect(lines.filter((line) => /geared|compound|gear trains|(?:with|against) the crank/i.test(line))).toEqual([]);
  });

  it("one scale is not spoken of as two", async () => {
    const text = (await linesIn(ringAlone, { to: 60 })).join(" ");
    expect(text).toContain("set ring to 0; its figures rise");
    expect(text).toMatch(/Set ring to 0 there, and leave it so\s+until/);
  });

  it("no positions, where none of the counts that cannot be done has a table of them", async () => {
    const pages = (await book(ringAlone)).map(linesOf).filter((lines) => lines.some((line) => line.includes("NOT POSSIBLE")));
    const told = pages.filter((lines) => lines.some((line) => line.startsWith("Count|")));
    expect(told.length).toBeGreaterThan(0);
    expect(told.flat().filter((line) => line.includes("positions"))).toEqual([]);
  });

  it("no turns, where a move has none", async () => {
    expect((await linesIn(fiveToOne, { to: 30 })).filter((line) => line.includes("0 whole turns"))).toEqual([]);
  });
});

describe("what stands close together cannot be read as one", () => {
  it.each(everyOf(2, [ringAlone, fine, fiveToOne]).map((head) => [head.id, head] as const))(
    "%s: the large figures of the title page stand a figure apart",
    async (_, head) => {
      const [title = []] = await book(head, { to: 400, parts: ["reach"] });
      const { y = 0 } = title.find(({ text }) => text === `${head.wormRatio}:1`) ?? {};
      const figures = title.filter((piece) => Math.abs(piece.y - y) < 1).sort((a, b) => a.left - b.left);
      expect(figures.length).toBeGreaterThan(1);
      for (const [index, { left, text, right }] of figures.slice(1).entries()) {
        const figureWidth = (right - left) / text.length;
        expect(left - (figures[index]?.right ?? 0)).toBeGreaterThan(figureWidth * 0.9);
      }
    },
  );

  it("a small line under a row goes on below at a point between two of its parts, and nowhere else", () => {
    const parts = ["one division ≈ 32° 43′ 38″", "start hole after 11 moves", "turns 40", "ring ≈ 15° 20′ 10″"];
    const style = { weight: "regular", size: 8 } as const;
    const longest = Math.max(...parts.map((part) => measure(part, style)));
    const whole = measure(parts.join(betweenParts), style);
    for (let width = longest; width < whole; width += 3) {
      const lines = brokenAtPoints(measure, parts.join(betweenParts), style, width);
      expect(lines.length).toBeGreaterThan(1);
      expect(lines.flatMap((line) => line.split(betweenParts))).toEqual(parts);
      for (const line of lines) expect(measure(line, style)).toBeLessThanOrEqual(width);
    }
  });
});

describe("sheets", () => {
  it("of A5 leave no part of the check of a row on a line of its own, and no row alone on a page", async () => {
    const pages = (await book(usual, { paper: "a5", parts: ["simple"] })).map(linesOf);
    const checks = pages.flat().filter((line) => line.startsWith("one division "));
    expect(checks.length).toBe(145);
    expect(checks.filter((line) => !line.includes("ring"))).toEqual([]);
    const rows = pages.map((lines) => lines.filter((line) => /^[\d–]+\|[SG]/.test(line)).length).filter((many) => many > 0);
    expect(Math.min(...rows)).toBeGreaterThan(1);
  });

  it("break no angle at the end of a line, where its degrees alone would be read", async () => {
    const pages = await piecesOf(await jobSheetPdf(usual, { divisions: 96, methods: ["compound"], large: true }));
    const texts = pages.flat().map(({ text }) => text);
    expect(texts.some((text) => text.endsWith("270° 00′ 00.0″."))).toBe(true);
    expect(texts.filter((text) => /^\d\d(?:\.\d)?[′″]/.test(text) || /[°′]$/.test(text.replace(/^\d+°$/, "")))).toEqual([]);
  });

  it("speak of idlers only where the train has any", async () => {
    const linesOfJob = async (divisions: number) => (await piecesOf(await jobSheetPdf(usual, { divisions }))).flatMap(linesOf);
    const train = (lines: readonly string[]) => lines.find((line) => line.startsWith("The train."));
    expect(train(await linesOfJob(127))).toMatch(/^The train\. Idlers of any size that reach; arrows/);
    expect(train(await linesOfJob(383))).toMatch(/^The train\. Arrows/);
  });

  it("of a geared job on A5 show the plate and its train on one page", async () => {
    const { gearing: _, ...whole } = faced;
    const head = defineHead({ ...whole, gears: usual.gears });
    const [first = []] = await piecesOf(await jobSheetPdf(head, { divisions: 127, paper: "a5" }));
    expect(linesOf(first).join("\n")).toMatch(/driver \d+\|driven \d+/);
  });

  it("in large type set a job at 14 points and more", async () => {
    const paper = largePaperNamed("a4");
    expect(paper.leastTable).toBeGreaterThanOrEqual(14);
    for (const job of [{ divisions: 97 }, { divisions: 53 }] as const) {
      const [page = []] = await piecesOf(await jobSheetPdf(ringAlone, { ...job, large: true }));
      const heightOf = (pieces: readonly Piece[]) => {
        const rows = pieces.filter(({ text }) => /^\d+$/.test(text)).map(({ y }) => y);
        return Math.min(
          ...rows
            .slice(1)
            .map((y, at) => y - (rows[at] ?? 0))
            .filter((apart) => apart > 1),
        );
      };
      expect(heightOf(page)).toBeGreaterThan(14);
    }
    await expect(jobSheetPdf(ringAlone, { divisions: 7, large: true, paper: "a5" })).rejects.toThrow(/large type/);
  });

  it("for the wall hold no single row alone, where there is room under others", async () => {
    const pages = await book(usual, { as: "wall", parts: ["geared"] });
    const counts = pages.map((page) => linesOf(page).filter((line) => /^\d+\|G\|/.test(line)).length);
    expect(counts.at(-1)).toBeGreaterThan(1);
    const last = linesOf(pages.at(-1) ?? []);
    const row = last.findIndex((line) => line.startsWith("383|G|"));
    expect(last.slice(0, row).join(" ")).toContain("Do not stop when it has come round");
  });

  it("for the wall say nothing of a near move where none is told", async () => {
    const text = (await linesIn(fiveToOne, { as: "wall", parts: ["impossible"] })).join(" ");
    expect(text).not.toMatch(/near move/i);
  });
});

describe("angles", () => {
  it("are told to a part of a second where a space is worth less than a minute", async () => {
    const lines = await linesIn(fine, { parts: ["angles"] });
    // By hand: a turn of the crank is 1,296,000″/4000 = 324″, of which a space of 15 is 21.6″ and one of 49 6.612″.
    expect(lines.join("\n")).toMatch(/^1\|15\|0° 00′ 21\.6″/m);
    expect(lines.join("\n")).toMatch(/3\|49\|≈ 0° 00′ 06\.61″/);
  });
});

describe("the worked example", () => {
  it("has no more turns to count than it needs", async () => {
    const [line = ""] = (await linesIn(fine, { to: 30, parts: ["reading"] })).filter((each) => each.startsWith("Example: "));
    expect(Number(/(\d+) divisions/.exec(line)?.[1])).toBeGreaterThan(300);
  });
});
