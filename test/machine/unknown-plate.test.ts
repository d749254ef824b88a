import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plateFromChords } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

/** What a chord of a true circle measures, off by so many thousandths of what it may be. */
function read(holes: number, diameter: number, spaces: number, within: number, off: number) {
  return { spaces, length: diameter * Math.sin((Math.PI * spaces) / holes) + (within * off) / 1001 };
}

const off = fc.integer({ min: -1000, max: 1000 });

const circles = fc.record({
  holes: fc.integer({ min: 12, max: 200 }),
  diameter: fc.integer({ min: 60, max: 250 }),
  within: fc.integer({ min: 1, max: 60 }).map((thousandths) => thousandths / 1000),
  off: fc.tuple(off, off, off, off),
  spaces: fc.integer({ min: 2, max: 60 }),
});

describe("an unknown plate", () => {
  it("is never left out, listed or told of, however it was measured within what is stated", () => {
    let listed = 0;
    fc.assert(
      fc.property(circles, ({ holes, diameter, within, off: [a, b], spaces }) => {
        fc.pre(spaces < holes / 2);
        const measured = [read(holes, diameter, 1, within, a), read(holes, diameter, spaces, within, b)];
        const { candidates, unlisted } = plateFromChords(measured, { within });
        const isThere = candidates.find((each) => each.holes === holes);
        if (isThere) {
          listed += 1;
          expect([isThere.least <= diameter, isThere.most >= diameter]).toEqual([true, true]);
        }
        expect(isThere !== undefined || unlisted > 0).toBe(true);
      }),
      runs(60),
    );
    expect(listed).toBeGreaterThan(8);
  });

  it("is one alone once the chord that it names is measured as well, whichever of them it is", () => {
    let tried = 0;
    fc.assert(
      fc.property(circles, ({ holes, diameter, within, off: [a, b, c, d], spaces }) => {
        fc.pre(spaces < holes / 2);
        const measured = [read(holes, diameter, spaces, within, a)];
        const known = { within, diameter: diameter + (within * b) / 1001 };
        const { candidates, spacesToTellApart } = plateFromChords(measured, known);
        if (spacesToTellApart === null) return;
        tried += 1;
        for (const { holes: other, least, most } of candidates) {
          const between = least + ((most - least) * (d + 1000)) / 2000;
          const then = plateFromChords([...measured, read(other, between, spacesToTellApart, within, c)], known);
          expect(
            then.candidates.map((each) => each.holes).filter((each) => candidates.some((one) => one.holes === each)),
          ).toEqual([other]);
        }
      }),
      runs(150),
    );
    expect(tried).toBeGreaterThan(5);
  });

  it("by hand: 10 spaces of 150 mm measure 60.2 mm on 76 holes, and no other count within a tenth", () => {
    // 150·sin(10π/75) = 61.01, 150·sin(10π/76) = 60.26 and 150·sin(10π/77) = 59.52.
    const { candidates, nearest, spacesToTellApart } = plateFromChords([{ spaces: 10, length: 60.2 }], {
      diameter: 150,
      within: 0.1,
    });
    expect(candidates.map(({ holes }) => holes)).toEqual([76]);
    expect([spacesToTellApart, nearest]).toEqual([null, null]);
  });

  it("counts what are too many to list", () => {
    const found = plateFromChords(
      [
        { spaces: 1, length: 3.9 },
        { spaces: 6, length: 23.2 },
      ],
      { within: 0.1 },
    );
    expect([found.candidates.length, found.unlisted > 0, found.spacesToTellApart]).toEqual([12, true, null]);
  });

  it("is none where the measures contradict one another", () => {
    const found = plateFromChords([{ spaces: 10, length: 60.6 }], { diameter: 150, within: 0.01 });
    expect(found).toMatchObject({ candidates: [], unlisted: 0, spacesToTellApart: null, nearest: { holes: 76 } });
    // Halfway between what chord and diameter want of 76: 60.26 mm against 60.6.
    expect(found.nearest?.offMm).toBeGreaterThan(0.1);
  });

  it.each([
    [
      () => plateFromChords([{ spaces: 10, length: 60 }], { within: 0.1 }),
      "measured: chords over one number of spaces fit any count",
    ],
    [
      () => plateFromChords([{ spaces: 1, length: 3 }], { within: 3, diameter: 80 }),
      "within: it is as large as a measure itself",
    ],
    [
      () => plateFromChords([{ spaces: 1, length: 3 }], { within: -1, diameter: 80 }),
      "within: -1 is not how far a measure may be off",
    ],
    [() => plateFromChords([{ spaces: 1, length: 3 }], { within: 0.1, diameter: 8000 }), "diameter: 8000 mm is not a diameter"],
    [() => plateFromChords([], { within: 0.1 }), "measured: no chords were measured"],
  ])("refuses %#", (act, why) => {
    expect(refusalLines(act).join("\n")).toContain(why);
  });
});
