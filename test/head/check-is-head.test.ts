import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkIsHead } from "../../src/head/check-is-head.ts";
import { defineHead, dialReadings, type Head, ownedCircles, prepare, readyHeads, unequalSpacing } from "../../src/index.ts";
import { revolutions } from "../../src/number/exact.ts";
import { headSpecs } from "../support/arbitraries.ts";
import { refusal, refusalLines } from "../support/refusal.ts";

const description = { wormRatio: 40, plates: [{ name: "1", circles: [15, 16] }] };

it("every head is a head, also through JSON", () => {
  fc.assert(
    fc.property(headSpecs().map(defineHead), (head) => {
      for (const each of [head, JSON.parse(JSON.stringify(head))]) expect(refusal(() => checkIsHead(each))).toEqual([]);
    }),
  );
  for (const head of readyHeads) expect(refusal(() => checkIsHead(head))).toEqual([]);
});

describe("what is no head is refused, and it is said how to make one", () => {
  it.each([
    ["a description", description, "its id is missing or not as a head has it; defineHead makes a head of it"],
    [
      "one that is written out",
      { ...defineHead(description), plates: description.plates },
      "its plates is missing or not as a head has it; defineHead makes a head of it",
    ],
    [
      "a worm ratio as a number",
      { ...defineHead(description), wormRatio: 40 },
      "its wormRatio is missing or not as a head has it; defineHead makes a head of it",
    ],
    [
      "its id",
      "ratio-40-plates-15-49",
      '"ratio-40-plates-15-49" is not a head; defineHead makes one, and readyHeads are there to use',
    ],
    ["nothing", undefined, "undefined is not a head; defineHead makes one, and readyHeads are there to use"],
    ["a list", readyHeads, "a list is not a head; defineHead makes one, and readyHeads are there to use"],
  ])("%s", (_, given, told) => {
    expect(refusalLines(() => checkIsHead(given))).toEqual([`head: ${told}`]);
  });

  it.each([[[80, 90]], [["80"]], [[0]], [80], [null], [[]]])("a face with diameters %j for one circle", (diameters) => {
    const head = { ...defineHead(description), plates: [{ name: "1", faces: [{ name: null, circles: [15], diameters }] }] };
    expect(refusal(() => checkIsHead(head))).toMatchObject([{ code: "unreadable", place: "head" }]);
  });

  it.each([
    ["no plate", null],
    ["no face", { name: "1", faces: [null] }],
    ["a circle of one hole", { name: "1", faces: [{ name: null, circles: [1] }] }],
    ["a circle of too many holes", { name: "1", faces: [{ name: null, circles: [10_001] }] }],
    ["a circle of half a hole", { name: "1", faces: [{ name: null, circles: [15.5] }] }],
    ["three faces", { name: "1", faces: ["a", "b", "c"].map((name) => ({ name, circles: [15] })) }],
  ])("%s among its plates", (_, plate) => {
    expect(refusal(() => checkIsHead({ ...defineHead(description), plates: [plate] }))).toMatchObject([{ code: "unreadable" }]);
  });

  it("the largest circle and the least and greatest diameter are none of that", () => {
    const face = { name: null, circles: [16, 10_000], diameters: [1, 2000] };
    expect(refusal(() => checkIsHead({ ...defineHead(description), plates: [{ name: "1", faces: [face] }] }))).toEqual([]);
  });

  it("nothing at all is missing, and anything else is unreadable", () => {
    const codes = [undefined, null, 40].map((given) => refusal(() => checkIsHead(given))[0]?.code);
    expect(codes).toEqual(["missing", "unreadable", "unreadable"]);
  });

  it("whichever part is missing", () => {
    const [head] = readyHeads;
    for (const part of Object.keys(head ?? {})) {
      const { [part as keyof Head]: _, ...rest } = head as Head;
      expect(refusal(() => checkIsHead(rest))).toMatchObject([{ code: "unreadable", place: "head" }]);
    }
  });

  it.each([
    ["dialReadings", (head: Head) => dialReadings(head, 12)],
    ["unequalSpacing", (head: Head) => unequalSpacing(head, [revolutions(1, 6)])],
    ["ownedCircles", (head: Head) => ownedCircles(head)],
    ["prepare", (head: Head) => prepare(head)],
  ])("by %s", (_, ask) => {
    for (const given of [description, undefined, null, 40]) {
      expect(refusal(() => ask(given as unknown as Head))).toMatchObject([{ place: "head" }]);
    }
  });
});
