import { describe, expect, it } from "vitest";
import { indexDivisions, indexTable, type SearchOptions } from "../../src/index.ts";
import { threePlates, twoFaces } from "../support/ready.ts";
import { reach } from "./practical-treatise.ts";

const missing = (head: typeof threePlates, from: number, to: number, options: SearchOptions) =>
  indexTable(head, { from, to, ...options })
    .filter(({ setting }) => setting === null)
    .map(({ divisions }) => divisions);
const simple = { methods: ["simple"] } as const;
const geared = { methods: ["simple", "differential"] } as const;
const compound = { methods: ["simple", "compound"] } as const;

describe("Practical Treatise, p. 52, what the plates and gears furnished reach", () => {
  it(`plain: ${reach.plain.statement}`, () => {
    const { allTo, evenTo, except } = reach.plain;
    expect(missing(threePlates, 1, allTo, simple)).toEqual([]);
    expect(missing(threePlates, 1, evenTo, simple).filter((count) => count % 2 === 0)).toEqual(except);
    expect(missing(threePlates, allTo + 1, allTo + 1, simple)).toEqual([allTo + 1]);
  });

  it(`geared: ${reach.geared.statement}`, () => {
    const { allTo } = reach.geared;
    expect(missing(threePlates, 1, allTo, { ...geared, teethPerMove: 1 })).toEqual([]);
    expect(missing(threePlates, allTo + 1, allTo + 1, { ...geared, teethPerMove: 1 })).toEqual([383]);
  });
});

describe("the plate with two faces, 24–66 (from memory)", () => {
  it("plain: every number to 60, even numbers and multiples of 5 to 120", () => {
    expect(missing(twoFaces, 1, 60, simple)).toEqual([]);
    expect(missing(twoFaces, 61, 120, simple).filter((count) => count % 2 === 0 || count % 5 === 0)).toEqual([]);
    expect(missing(twoFaces, 61, 61, simple)).toEqual([61]);
  });
});

/** Found by a program written apart from this one, on the same plates and gears. */
describe("figures of an independent computation, counts 2 to 1,000", () => {
  const exact = (head: typeof threePlates, options: SearchOptions) => 999 - missing(head, 2, 1000, options).length;

  it("simple: 171", () => expect(exact(threePlates, simple)).toBe(171));
  it("simple or compound: 337", () => expect(exact(threePlates, compound)).toBe(337));
  it("simple or differential, to 12 teeth per move: 997, all but 787 and 877", () => {
    expect(missing(threePlates, 2, 1000, { ...geared, teethPerMove: 12 })).toEqual([787, 877]);
  });
  it("two faces and nineteen gears, to 2 teeth per move: 999", () => {
    expect(exact(twoFaces, { ...geared, teethPerMove: 2 })).toBe(999);
  });
});

describe("further than any printed table, counts 2 to 10,000, to 60 teeth per move", () => {
  it("8,457 of 9,999 close exactly, and the rest are said to be impossible, with what was tried", () => {
    const beyond = missing(threePlates, 2, 10_000, { teethPerMove: 60 });
    expect(9999 - beyond.length).toBe(8457);
    for (const divisions of [beyond[0] ?? 0, beyond[700] ?? 0, beyond.at(-1) ?? 0]) {
      const answer = indexDivisions(threePlates, divisions, { teethPerMove: 60 });
      expect(answer.exact).toBe(false);
      expect(answer.settings).toEqual([]);
      expect(answer.impossible?.teethPerMoveTried).toBe(60);
      expect(answer.impossible?.reasons.find(({ method }) => method === "differential")).toEqual({
        method: "differential",
        code: "no-train",
        teethPerMove: 60,
        greatestPlateRatio: "6",
      });
      const [below = 0, above = 0] = answer.nearestCounts;
      expect(below).toBeLessThan(divisions);
      expect(above).toBeGreaterThan(divisions);
    }
  });
});
