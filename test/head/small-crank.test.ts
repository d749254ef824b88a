import { describe, expect, it } from "vitest";
import { defineHead, type HeadSpec, indexDivisions } from "../../src/index.ts";
import { wideHead } from "../support/known-jobs.ts";
import { refusalLines } from "../support/refusal.ts";

const define = (spec: object) => () => defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [20] }], ...spec } as HeadSpec);

describe("a small crank", () => {
  it("reads itself back, its circles in order, and null is none", () => {
    expect(define({ smallCrank: { ratio: 100, circles: [100, 54] } })().smallCrank).toEqual({ ratio: 100, circles: [54, 100] });
    expect(defineHead(JSON.parse(JSON.stringify(wideHead)))).toEqual(wideHead);
    expect("smallCrank" in define({ smallCrank: null })()).toBe(false);
  });

  it.each<[string, object, readonly string[]]>([
    ["no object", { smallCrank: 100 }, ["smallCrank: 100 is not an object; its keys may be ratio, circles"]],
    ["no ratio", { smallCrank: { circles: [54] } }, ["smallCrank.ratio: undefined is not a whole number from 2 to 1,000"]],
    ["a ratio of 1", { smallCrank: { ratio: 1, circles: [54] } }, ["smallCrank.ratio: 1 is not a whole number from 2 to 1,000"]],
    [
      "no circles",
      { smallCrank: { ratio: 100, circles: [] } },
      ["smallCrank.circles: its plate has at least one circle of holes"],
    ],
    [
      "a circle twice",
      { smallCrank: { ratio: 100, circles: [54, 54] } },
      ["smallCrank.circles: the circle 54 is there twice; give each once"],
    ],
    [
      "no plate for the large crank",
      { plates: [], dial: { marksPerTurn: 40 }, smallCrank: { ratio: 100, circles: [54] } },
      ["smallCrank: the large crank beside it needs a plate to stand on; list the plates"],
    ],
  ])("with %s is refused", (_, spec, lines) => {
    expect(refusalLines(define(spec))).toEqual(lines);
  });

  it("changed behind its back is no head any more", () => {
    for (const smallCrank of [{ ratio: 0, circles: [54] }, { ratio: 100, circles: ["54"] }, 100]) {
      expect(refusalLines(() => indexDivisions({ ...wideHead, smallCrank } as never, 127))).toEqual([
        "head: its smallCrank is missing or not as a head has it; defineHead makes a head of it",
      ]);
    }
  });
});
