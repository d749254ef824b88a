import { describe, expect, it } from "vitest";
import { type NearSetting, nearSettings, revolutions } from "../../src/index.ts";
import { gradeNote, lengthOf, lengthsIn, nearErrorWords, nearHow, nearItems, offBy } from "../../src/words/index.ts";
import { ungeared } from "../support/known-jobs.ts";

const near = nearSettings(ungeared, { divisions: 97 });
const equal = near.find(({ moves }) => moves === "equal") as NearSetting;
const byHole = near.find(({ kind }) => kind === "nearest-hole") as NearSetting;
const ring = near.find(({ kind }) => kind === "ring") as NearSetting;
/** 4.86″ off at tooth 50, 12.1″ at the close, 30″ from tooth to tooth. */
const off = {
  worstArcSeconds: 4.86,
  closingArcSeconds: 12.1,
  pitchArcSeconds: 30,
  error: { closing: revolutions(0), worst: revolutions(0), worstTooth: 50, pitch: revolutions(0) },
};
const like = (setting: NearSetting, more: object = {}) => ({ ...setting, ...off, ...more }) as NearSetting;
const at50 = { mm: 50, unit: "mm" } as const;

describe("a near setting", () => {
  it("is named near, with how it is made and how far off it is", () => {
    const items = nearItems(like(byHole, { circle: 49, plate: "3", face: null }), 97, null);
    expect(items).toEqual([
      { term: "~ Nearest hole", text: "of 49 (plate 3), every position by itself from one zero" },
      { term: "", text: "no position over 4.9″ off (tooth 50); nothing adds up" },
    ]);
    expect(nearHow(ring)).toBe("every position by itself from one zero");
  });

  it("made over and over says where the last meets the first", () => {
    expect(nearErrorWords(like(equal), 97, null)).toBe(
      "no position over 4.9″ off (tooth 50); the last meets the first 12.1″ out",
    );
    expect(nearHow(equal)).toMatch(/^\d+ \+ \d+ of \d+/);
  });

  it("of a mark at every position has no error but the eye's; of an angle one place alone is off", () => {
    expect(nearErrorWords(like(ring, { worstArcSeconds: 0 }), 360, null)).toBe("a mark at every position: as near as it is read");
    expect(nearErrorWords(like(equal), null, null)).toBe("it leaves the angle up to 4.9″ off");
  });
});

describe("at a radius", () => {
  // 4.86″ at 50 mm are 4.86 · 2π · 50/1,296,000 = 0.001178 mm, 0.0000464 in.
  it("an error has its length, rounded upwards", () => {
    expect([offBy(4.86, null), offBy(4.86, at50), offBy(4.86, { mm: 50, unit: "in" })]).toEqual([
      "4.9″",
      "4.9″ (0.0012 mm)",
      "4.9″ (0.00005 in)",
    ]);
    expect(lengthOf(-4.86, 50, lengthsIn("mm"))).toBe("0.0012 mm");
    expect(nearErrorWords(like(equal), null, at50)).toBe("it leaves the angle up to 4.9″ (0.0012 mm) off");
  });

  // 100 teeth on 100 mm are of module 1, grade 5 0.3(1 + 0.4 · 10) + 4 = 5.5 µm; 30″ are 7.27 µm, under √2 · 5.5.
  it("a gear of that pitch radius has a grade", () => {
    expect(nearErrorWords(like(byHole), 100, at50)).toMatch(/; nothing adds up; tooth to tooth within grade 6$/);
    expect(nearErrorWords(like(byHole, { pitchArcSeconds: 3600 }), 100, at50)).toMatch(/; tooth to tooth worse than grade 12$/);
  });

  it.each([
    ["module 0.5", 200, 50, true],
    ["module 0.49", 204, 50, false],
    ["module 70", 10, 350, true],
    ["module 71", 10, 355, false],
    ["5 mm across", 10, 2.5, true],
    ["4.9 mm across", 9, 2.45, false],
    ["10,000 mm across", 200, 5000, true],
    ["10,001 mm across", 200, 5000.5, false],
  ])("the grades go by the range of their standard: %s", (_, count, mm, isIn) => {
    expect(nearErrorWords(like(byHole), count, { mm, unit: "mm" }).includes("grade")).toBe(isIn);
  });

  it("says what lengths and grades mean, and no grade of an angle", () => {
    expect(gradeNote(at50, null)).toBe("Lengths are those at a radius of 50.000 mm.");
    expect(gradeNote({ mm: 50.8, unit: "in" }, 97)).toBe(
      "Lengths are those at a radius of 2.0000 in. Grades are those of ISO 1328-1:1995 (its formula from memory) for a gear of that pitch radius, for the indexing alone.",
    );
  });
});
