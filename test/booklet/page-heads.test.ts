import { describe, expect, it } from "vitest";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { readyHeads } from "../../src/index.ts";
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

describe("the head of a page", () => {
  it.each(eachWithEach([...readyHeads, fiveToOne], ["a4", "a5"] as const))(
    "%s: names no fewer counts than stand below it",
    (_, head, paper) => {
      const { headwords, anchors } = setOn(paperNamed(paper), wholeBook(head, { from: 2, to: farthest }));
      for (const [page, counts] of countsByPage(anchors)) {
        const [from = Number.NaN, to = from] = (headwords[page - 1] ?? "").split("–").map(Number);
        // Rows that only point elsewhere have no anchor, and may reach further.
        expect({ page, named: [Math.min(from, ...counts), Math.max(to, ...counts)] }).toEqual({ page, named: [from, to] });
      }
    },
  );
});
