import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CircleChords, coordinates, defineHead, type HoleChord, plateChords } from "../../src/index.ts";
import { chordFactors } from "../published/chord-factors.ts";
import { headSpecs } from "../support/arbitraries.ts";

/** The chords of one circle, on a plate of its own. */
function chordsOf(holes: number, diameter?: number): CircleChords {
  const plate = { name: "1", circles: [holes], ...(diameter !== undefined && { diameters: [diameter] }) };
  const [face] = plateChords(defineHead({ wormRatio: 40, plates: [plate] }));
  return face?.circles[0] as CircleChords;
}

describe("published chord factors", () => {
  it.each(chordFactors.rows)("$holes holes: $factor diameters from one to the next", ({ holes, factor }) => {
    const { first, last } = chordsOf(holes);
    expect([first, last].map(({ ratio }) => ratio.toFixed(4))).toEqual([factor, factor]);
  });

  it("and a quarter and half way round those of a square and of a line across", () => {
    const [square] = chordFactors.rows;
    const { quarter, half } = chordsOf(24);
    expect([quarter?.to, quarter?.ratio.toFixed(4)]).toEqual([6, square.factor]);
    expect([half?.to, half?.ratio]).toEqual([12, 1]);
  });
});

describe("laws of the chords of plates", () => {
  const all = ({ first, last, quarter, half }: CircleChords): readonly HoleChord[] =>
    [first, last, quarter, half].filter((each) => each !== null);

  it("each is the distance between two holes by their coordinates", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 400 }), fc.integer({ min: 10, max: 20_000 }), (holes, tenths) => {
        const diameter = tenths / 10;
        const at = coordinates(holes, { radius: diameter / 2 });
        for (const { from, to, ratio, length } of all(chordsOf(holes, diameter))) {
          const [a, b] = [at[from], at[to]];
          if (!a || !b) expect.fail(`there is no hole ${from} or ${to}`);
          const apart = Math.hypot(a.x - b.x, a.y - b.y);
          expect(length).toBeCloseTo(apart, 8);
          expect(ratio).toBeCloseTo(apart / diameter, 10);
        }
      }),
    );
  });

  it("the holes are within the circle, and a chord further round is longer", () => {
    for (let holes = 2; holes <= 120; holes += 1) {
      const { first, last, quarter, half } = chordsOf(holes);
      expect([first.from, first.to, last.from, last.to]).toEqual([0, 1, holes - 1, 0]);
      expect(quarter === null).toBe(holes < 8);
      expect(half === null).toBe(holes < 4);
      const further = [first, quarter, half].flatMap((each) => each ?? []);
      for (const [index, { to, ratio }] of further.entries()) {
        expect(to).toBeLessThanOrEqual(holes / 2);
        expect(ratio).toBeGreaterThan(further[index - 1]?.ratio ?? 0);
      }
    }
  });

  it("every circle of a head is there once, in its order, with lengths exactly where its diameter is stated", () => {
    fc.assert(
      fc.property(headSpecs().map(defineHead), (head) => {
        const faces = head.plates.flatMap(({ name, faces }) => faces.map((face) => ({ plate: name, face })));
        expect(
          plateChords(head).map(({ plate, face, circles }) => [
            plate,
            face,
            circles.map(({ holes }) => holes),
            circles.map(({ diameter }) => diameter),
          ]),
        ).toEqual(
          faces.map(({ plate, face }) => [plate, face.name, face.circles, face.diameters ?? face.circles.map(() => null)]),
        );
        for (const { circles } of plateChords(head))
          for (const circle of circles)
            expect(all(circle).every(({ length }) => (length === null) === (circle.diameter === null))).toBe(true);
      }),
    );
  });

  it("goes through JSON unchanged", () => {
    const head = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15, 20], diameters: [60, 80] }] });
    expect(JSON.parse(JSON.stringify(plateChords(head)))).toEqual(plateChords(head));
  });
});
