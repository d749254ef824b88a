import { describe, expect, it } from "vitest";
import { kitBookOf } from "../../booklet/content/kit-sheet.ts";
import { paperNamed, paperNames } from "../../booklet/layout/papers.ts";
import { type Coverage, coverage } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { edition, linesIn, pagesOn } from "./set-pages.ts";

const head = ready("ratio-40-plates-15-49-ungeared");
const want = [61, 127, 96, 50, 211, 383, 53];

/** Of ranges of several lengths, so that the list comes to stand anywhere on its page. */
const kits = [60, 140, 220, 300, 380, 400].map((to): Coverage => {
  const kit = coverage(head, { from: 2, to, want, circleSizes: [61, 53], gearSizes: [24, 127] });
  return kit.want === null ? expect.fail("no list was asked for") : kit;
});

describe("the sheet of a kit", () => {
  it.each(paperNames)("%s: keeps your list on one page, under its heading", (name) => {
    const terms = ["Done already", "Smallest set", "Left"];
    for (const kit of kits) {
      const pages = pagesOn(paperNamed(name), kitBookOf({ kit, head }, edition)).map(linesIn);
      const page = pages.find((lines) => lines.includes("Your list")) ?? expect.fail("there is no list");
      for (const term of terms)
        expect(
          page.some((line) => line.startsWith(`${term}|`)),
          `${term}, 2 to ${kit.to}`,
        ).toBe(true);
    }
  });
});
