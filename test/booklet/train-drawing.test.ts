import { describe, expect, it } from "vitest";
import { jobOf } from "../../booklet/content/job.ts";
import { flattened, type TextMark } from "../../booklet/layout/marks.ts";
import type { Paper } from "../../booklet/layout/paper.ts";
import { largePaperNamed, paperNamed } from "../../booklet/layout/papers.ts";
import { ready } from "../support/ready.ts";
import { edition, pagesOn } from "./set-pages.ts";

const usual = ready("ratio-40-plates-15-49");

/** What stands in the drawing of a train and nowhere else, from the front and from the side. */
const ofTrain = /^(?:spindle|stud|worm shaft|idler|any size|plane [12]|(?:driver|driven) \d+(?:, .*)?)$/;

describe("what stands in the drawing of a train", () => {
  it.each<readonly [string, Paper]>([
    ["a4", paperNamed("a4")],
    ["a5", paperNamed("a5")],
    ["a4 in large type", largePaperNamed("a4")],
    ["letter in large type", largePaperNamed("letter")],
  ])("is never smaller than the least that the paper states: %s", (_, paper) => {
    // Of one pair, and of two, drawn from the side as well.
    for (const [divisions, seen] of [
      [127, "worm shaft"],
      [173, "plane 2"],
    ] as const) {
      const pages = pagesOn(paper, jobOf(usual, edition, { divisions, methods: ["differential"] }));
      const texts = pages.flatMap(({ marks }) => [...flattened(marks)]).filter((mark): mark is TextMark => mark.kind === "text");
      const labels = texts.filter(({ text }) => ofTrain.test(text));
      expect(labels.map(({ text }) => text)).toContain(seen);
      expect(labels.filter(({ size }) => size < paper.note)).toEqual([]);
    }
  });
});
