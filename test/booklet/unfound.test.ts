import { describe, expect, it } from "vitest";
import type { BookletOptions } from "../../booklet/index.ts";
import { defineHead } from "../../src/index.ts";
import { sweepsAll } from "../support/sweep.ts";
import { readBack } from "./read-back.ts";
import { linesOf } from "./read-pdf.ts";

/** Thousands of circles, none of them a multiple of 47, and gears that would have to be tried with every move on each. */
const holes = Array.from({ length: 3500 }, (_, at) => 6000 + at).filter((count) => count % 47 !== 0);
const huge = defineHead({
  id: "thousands-of-circles",
  wormRatio: 40,
  plates: Array.from({ length: 50 }, (_, at) => ({ name: String(at + 1), circles: holes.slice(60 * at, 60 * at + 60) })),
  gears: [24, 48, 96],
  gearing: { greatestPlateRatio: 100 },
});

async function pagesOf(options: BookletOptions): Promise<readonly (readonly string[])[]> {
  const parts = ["reading", "reach", "simple", "impossible", "unfound", "index"] as const;
  return (await readBack(huge, { from: 46, to: 48, parts, ...options })).map(linesOf);
}

describe("a count for which not everything could be tried", async () => {
  const pages = await pagesOf({});

  it.each([
    ["on a4", () => pages],
    ...(sweepsAll
      ? ([
          ["on a5", () => pagesOf({ paper: "a5" })],
          ["for the wall", () => pagesOf({ as: "wall" })],
        ] as const)
      : []),
  ] as const)("%s: is nowhere told as impossible", async (_, printed) => {
    const text = (await printed()).flat().join("\n");
    expect(text).not.toMatch(/NOT POSSIBLE|cannot be done exactly|cannot do|×/);
    expect(text).toContain("NOT FOUND");
  });

  it("is pointed to, and its row stands where the pointer says, on a page that says what it is", () => {
    const [, page = "0"] = /^47\|\?\|not found in the work allowed: page (\d+)$/m.exec(pages.flat().join("\n")) ?? [];
    const there = pages[Number(page) - 1] ?? [];
    expect(there[0]).toContain("47|NOT FOUND");
    expect(there.filter((line) => line.startsWith("47|?|"))).toHaveLength(1);
    expect(there.join(" ")).toContain("It is not shown that there is none");
    expect(there.join(" ")).toContain("There may be others, and better ones, of: settings, near settings");
  });

  it("is marked among all counts, and counted on the title page", () => {
    const [title = []] = pages;
    const reach = pages.flat();
    expect(title.join("\n")).toMatch(/WORM RATIO\|NO GEARS\|NOT FOUND\n40:1\|2\|1/);
    expect(reach.join("\n")).toMatch(/46\|47\?\|48/);
    expect(reach.join("\n")).toContain("1 count of 3 not found in the work allowed: there may be a setting");
  });
});
