import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, gearBox } from "../../src/index.ts";
import { gcd } from "../../src/number/ratio.ts";
import { everyTrain } from "../support/brute-force.ts";
import { trainKey as keyOf } from "../support/setting-key.ts";

const boxes = fc.array(fc.integer({ min: 8, max: 40 }), { maxLength: 7 });

/** All trains of the gears by their ratio in lowest terms, each once, by trying every gear in every place. */
function byTrial(gears: readonly number[]): ReadonlyMap<string, ReadonlySet<string>> {
  const plates = [{ name: "1", circles: [20] }];
  const head = defineHead({ wormRatio: 40, plates, gears, gearing: { greatestPlateRatio: 100 } });
  const trains = new Map<string, Set<string>>();
  for (const train of everyTrain(head)) {
    if (train.direction === "against") continue;
    const common = gcd(train.plate.n, train.plate.d);
    const ratio = `${train.plate.n / common}/${train.plate.d / common}`;
    trains.set(ratio, (trains.get(ratio) ?? new Set()).add(keyOf(train)));
  }
  return trains;
}

describe("gearBox", () => {
  it("finds exactly the trains of one and two pairs that trying every gear in every place finds, each once", () => {
    fc.assert(
      fc.property(boxes, (gears) => {
        const box = gearBox(gears);
        for (const [ratio, keys] of byTrial(gears)) {
          const [numerator = 0, denominator = 0] = ratio.split("/").map(Number);
          const all = ([1, 2] as const).flatMap((pairs) => box.trains(pairs, numerator, denominator)).map(keyOf);
          expect(all.sort()).toEqual([...keys].sort());
        }
      }),
    );
  });

  it("finds none for a ratio that no train makes", () => {
    fc.assert(
      fc.property(boxes, fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), (gears, n, d) => {
        fc.pre(gcd(n, d) === 1 && !byTrial(gears).has(`${n}/${d}`));
        expect([gearBox(gears).trains(1, n, d), gearBox(gears).trains(2, n, d)]).toEqual([[], []]);
      }),
    );
  });

  it("uses each gear once, and twice only where there are two", () => {
    expect(gearBox([24]).trains(1, 1, 1)).toEqual([]);
    expect(gearBox([24, 24]).trains(1, 1, 1)).toEqual([{ drivers: [24], driven: [24], mayFoul: null }]);
    expect(gearBox([24, 48, 40]).trains(2, 4, 1)).toEqual([]);
    expect(gearBox([24, 48, 24, 48]).trains(2, 4, 1).map(keyOf)).toEqual(["48·48 : 24·24"]);
    // 24 · 48 and 32 · 36 are both 1152.
    expect(gearBox([24, 32, 36, 48]).trains(2, 1, 1).map(keyOf)).toEqual(["32·36 : 24·48", "24·48 : 32·36"]);
    expect(gearBox([]).trains(1, 1, 1)).toEqual([]);
    expect(gearBox([]).trains(2, 1, 1)).toEqual([]);
  });

  it("puts larger gears of one pair first, and trains that fit before those that may foul", () => {
    expect(
      gearBox([24, 48, 28, 56])
        .trains(1, 2, 1)
        .map(({ drivers }) => drivers[0]),
    ).toEqual([56, 48]);
    fc.assert(
      fc.property(boxes, (gears) => {
        const box = gearBox(gears);
        for (const ratio of byTrial(gears).keys()) {
          const [numerator = 0, denominator = 0] = ratio.split("/").map(Number);
          const fouling = box.trains(2, numerator, denominator).map(({ mayFoul }) => mayFoul !== null);
          expect(fouling).toEqual([...fouling].sort((a, b) => Number(a) - Number(b)));
        }
      }),
    );
  });
});

it("asked so often that it forgets, a box finds the same again", () => {
  const gears = Array.from({ length: 24 }, (_, index) => 17 + index);
  const box = gearBox(gears);
  const first = box.trains(2, 9, 7);
  expect(box.trains(2, 9, 7)).toBe(first);
  for (let numerator = 1; numerator <= 400; numerator += 1)
    for (let denominator = 1; denominator <= 400; denominator += 1) box.trains(2, numerator, denominator);
  const again = box.trains(2, 9, 7);
  expect(again).not.toBe(first);
  expect(again).toEqual(first);
  expect(again).toEqual(gearBox(gears).trains(2, 9, 7));
});
