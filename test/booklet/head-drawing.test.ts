import { describe, expect, it } from "vitest";
import { paperNames } from "../../booklet/index.ts";
import { boxOf, flattened } from "../../booklet/layout/marks.ts";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { ready } from "../support/ready.ts";
import { pagesOn, wholeBook } from "./set-pages.ts";

const usual = ready("ratio-40-plates-15-49");

describe("the drawing of the head from the crank", () => {
  it.each(paperNames)("on %s: no name of a part lies over the point of an arrow", (paper) => {
    const book = wholeBook(usual, { from: 2, to: 60 });
    const page = pagesOn(paperNamed(paper), book).find(({ marks }) =>
      [...flattened(marks)].some((mark) => mark.kind === "text" && mark.text === "holes of the move"),
    );
    const boxes = [...flattened(page?.marks ?? [])].map((mark) => ({ mark, box: boxOf(mark) }));
    const points = boxes.filter(({ mark, box }) => mark.kind === "shape" && mark.fill === 0 && box && box[2] - box[0] < 15);
    expect(points.length).toBeGreaterThan(0);
    for (const { mark, box } of boxes) {
      if (mark.kind !== "text" || box === null) continue;
      const over = points.filter(
        ({ box: at }) =>
          at && Math.min(at[2], box[2]) > Math.max(at[0], box[0]) && Math.min(at[3], box[3]) > Math.max(at[1], box[1]),
      );
      expect(over, mark.text).toEqual([]);
    }
  });
});
