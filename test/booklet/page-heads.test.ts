import { describe, expect, it } from "vitest";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { readyHeads } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { eachWithEach, farthest } from "../support/sweep.ts";
import { fiveToOne } from "./heads.ts";
import { setOn, wholeBook } from "./set-pages.ts";

const counted = /^(?:simple|direct|dial|readings|geared|compound|impossible|degrees)0*(\d+)$/;

/** The counts whose rows begin on each page. */
function countsByPage(anchors: ReadonlyMap<string, number>): ReadonlyMap<number, readonly number[]> {
  const pages = new Map<number, number[]>();
  for (const [name, page] of anchors) {
    const count = counted.exec(name)?.[1];
    if (count !== undefined) pages.set(page, [...(pages.get(page) ?? []), Number(count)]);
  }
  return pages;
}

/** The runs of counts that a head names: `51–319, 69–147`. */
function runsIn(words: string): readonly (readonly [from: number, to: number])[] {
  return words.split(", ").map((run) => {
    const [from = Number.NaN, to = from] = run.split("–").map(Number);
    return [from, to];
  });
}

const ungeared = ready("ratio-40-plates-15-49-ungeared");

describe("the head of a page", () => {
  it.each(eachWithEach([...readyHeads, fiveToOne], ["a4", "a5"] as const))(
    "%s: names no fewer counts than stand below it",
    (_, head, paper) => {
      const { headwords, anchors } = setOn(paperNamed(paper), wholeBook(head, { from: 2, to: farthest }));
      for (const [page, counts] of countsByPage(anchors)) {
        const runs = runsIn(headwords[page - 1] ?? "");
        // Rows that only point elsewhere have no anchor, and may reach further.
        const unnamed = counts.filter((count) => !runs.some(([from, to]) => from <= count && count <= to));
        expect({ page, unnamed }).toEqual({ page, unnamed: [] });
      }
    },
  );

  it("names two tables apart where the second goes back to lower counts, and nothing between them", () => {
    const { headwords, anchors } = setOn(paperNamed("a4"), wholeBook(ungeared, { from: 2, to: 400 }));
    const counts = countsByPage(anchors);
    const apart = headwords.flatMap((words, index) => (words.includes(", ") ? [{ words, page: index + 1 }] : []));
    expect(apart).not.toEqual([]);
    for (const { words, page } of apart) {
      const runs = runsIn(words);
      expect(runs).toHaveLength(2);
      expect(runs[1]?.[0]).toBeLessThan(runs[0]?.[1] ?? 0);
      for (const end of runs.flat()) expect(counts.get(page), words).toContain(end);
    }
  });
});
