import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  fromExact,
  type Head,
  InputError,
  parseAngle,
  proposeSpacing,
  ratio,
  revolutions,
  wormRatioOf,
} from "../../src/index.ts";
import { heads } from "../support/arbitraries.ts";
import { ready, threePlates } from "../support/ready.ts";
import { refusalKinds, refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

const part = (angle: Parameters<typeof fromExact>[0]) => fromExact(angle);
const total = (angles: readonly Parameters<typeof fromExact>[0][]) => angles.map(part).reduce((sum, each) => sum.add(each));

/** A proposal, or null where it is refused. */
function proposed(head: Head, flutes: number, options: Parameters<typeof proposeSpacing>[2]) {
  try {
    return proposeSpacing(head, flutes, options);
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

describe("unequal spaces proposed", () => {
  it("close to one turn exactly, each on a hole of a circle that is owned, no two neighbours alike", () => {
    fc.assert(
      fc.property(
        heads(),
        fc.integer({ min: 2, max: 40 }),
        fc.boolean(),
        fc.integer({ min: 3, max: 60 }),
        (head, flutes, asked, of) => {
          const uneven = revolutions(1, of * flutes);
          const opposite = asked && flutes % 2 === 0 && flutes > 2;
          const answer = proposed(head, flutes, { opposite, uneven });
          if (answer === null) return;
          const { angles, spacing } = answer;
          expect(angles).toHaveLength(flutes);
          expect(total(angles).toFraction()).toBe("1");
          for (const [index, angle] of angles.entries()) {
            expect(angle).not.toBe(angles[(index + 1) % flutes]);
            const off = part(angle)
              .sub(part(revolutions(1, flutes)))
              .abs();
            expect(off.compare(part(uneven))).toBeLessThanOrEqual(0);
            expect(off.compare(part(answer.uneven))).toBeLessThanOrEqual(0);
            if (opposite) expect(angle).toBe(angles[(index + flutes / 2) % flutes]);
          }
          const half = opposite ? angles.slice(0, flutes / 2) : angles;
          expect(new Set(half).size === half.length).toBe(answer.allDiffer);
          expect([spacing.exact, spacing.closes, spacing.places.length]).toEqual([true, true, flutes]);
          const { circle } = spacing;
          const owned = head.plates.flatMap((plate) =>
            plate.faces.flatMap((face) => face.circles.map((each) => `${plate.name} ${each}`)),
          );
          expect(owned).toContain(`${circle?.plate} ${circle?.holes}`);
          // Every place is a whole number of holes from the zero.
          let at = fromExact(ratio(1)).sub(1);
          for (const angle of angles) {
            at = at.add(part(angle));
            expect(at.mul(part(wormRatioOf(head))).mul(circle?.holes ?? 0).d).toBe(1n);
          }
        },
      ),
      runs(150),
    );
  });

  it("by hand: six flutes on a circle of 18, whose holes are half a degree, within two degrees", () => {
    const head = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [18] }] });
    const { angles, uneven, allDiffer } = proposeSpacing(head, 6);
    expect(angles).toEqual(["58", "62", "60", "58", "62", "60"].map((each) => parseAngle(`${each}°`)));
    expect([uneven, allDiffer]).toEqual([parseAngle("2°"), true]);
  });

  it("takes the mounted plate, where its circles do", () => {
    expect(proposeSpacing(threePlates, 6, { mounted: "3" }).spacing.circle?.plate).toBe("3");
    expect(proposeSpacing(threePlates, 6).spacing.circle?.plate).toBe("1");
  });

  it("has no two alike on any circle before only neighbours that differ on one", () => {
    expect(proposeSpacing(threePlates, 12).allDiffer).toBe(true);
    expect(proposeSpacing(threePlates, 20, { uneven: parseAngle("0.4°") }).allDiffer).toBe(false);
  });

  it("takes what it says that it takes, and no less", () => {
    for (const flutes of [6, 7, 20, 60]) {
      const [said = ""] = refusalLines(() => proposeSpacing(threePlates, flutes, { uneven: parseAngle("0.01°") }));
      const [, n, d] = /it takes (\d+)\/(\d+) of a turn/.exec(said) ?? [];
      const least = revolutions(Number(n), Number(d));
      expect(proposeSpacing(threePlates, flutes, { uneven: least }).uneven).toBe(least);
      const less = revolutions(Number(n) * 999, Number(d) * 1000);
      expect(refusalKinds(() => proposeSpacing(threePlates, flutes, { uneven: less }))).toEqual(["cannot-be-made uneven"]);
    }
  });
});

describe("refusals", () => {
  const third = defineHead({ wormRatio: "40/7", plates: [{ name: "1", circles: [15] }] });

  it.each([
    [() => proposeSpacing(threePlates, 1), "flutes: 1 is not a number of flutes; give a whole number from 2 to 200"],
    [() => proposeSpacing(threePlates, 7, { opposite: true }), "opposite: 7 flutes cannot stand opposite each other"],
    [() => proposeSpacing(threePlates, 2, { opposite: true }), "opposite: 2 flutes cannot stand opposite each other"],
    [() => proposeSpacing(threePlates, 6, { opposite: "yes" as never }), 'opposite: "yes" is neither true nor false'],
    [() => proposeSpacing(threePlates, 6, { uneven: parseAngle("60°") }), "uneven: 60° 00′ 00″ is as much as an even space of 6"],
    [() => proposeSpacing(ready("ratio-90-dial"), 6), "head: it has no index plate, so no place is on a hole"],
    [() => proposeSpacing(threePlates, 200), "flutes: no circle of this head has 200 spaces within 0° 03′ 36.0″ of even ones"],
    [() => proposeSpacing(third, 6), "flutes: 6 unequal spaces close to one turn on none of this head's circles"],
  ])("case %#", (ask, said) => {
    expect(refusalLines(ask).join("\n")).toContain(said);
  });
});
