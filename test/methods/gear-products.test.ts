import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gearBox } from "../../src/index.ts";
import { type Products, visitWithin } from "../../src/methods/gear-products.ts";

/** All that are visited, in order. */
function quotientsWithin(products: Products, least: number, most: number): [drivers: number, driven: number][] {
  const found: [number, number][] = [];
  visitWithin(products, least, most, (...terms) => found.push(terms) > 0);
  return found;
}

describe("quotients of products", () => {
  it("are all pairs of products whose quotient lies in the window, found by dividing each by each", () => {
    const gears = fc.array(fc.integer({ min: 8, max: 40 }), { minLength: 2, maxLength: 6 });
    const window = fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 30 }));
    let found = 0;
    fc.assert(
      fc.property(gears, fc.constantFrom<1 | 2>(1, 2), window, (teeth, pairs, [from, width]) => {
        const [least, most] = [from / 20, (from + width) / 20];
        const products = gearBox(teeth).quotients(pairs);
        const all = products.values.flatMap((driven) => products.values.map((drivers): [number, number] => [drivers, driven]));
        const inside = all.filter(
          ([drivers, driven]) => 20 * drivers >= from * driven && 20 * drivers <= (from + width) * driven,
        );
        expect(quotientsWithin(products, least, most)).toEqual(inside);
        found += inside.length;
      }),
      { numRuns: 100 },
    );
    expect(found).toBeGreaterThan(200);
  });

  it("are the same of so many products that they are not laid out", () => {
    const many = gearBox(Array.from({ length: 30 }, (_, index) => 20 + index)).quotients(2);
    expect([many.values.length > 200, many.quotients]).toEqual([true, null]);
    const inside = (least: number, most: number) =>
      many.values.flatMap((driven) =>
        many.values.flatMap((drivers) => (drivers >= least * driven && drivers <= most * driven ? [[drivers, driven]] : [])),
      );
    for (const [least, most] of [
      [0.999, 1.001],
      [2.5, 2.5],
      [1 / 3, 0.3334],
      [7, 8],
    ] as const) {
      expect(quotientsWithin(many, least, most)).toEqual(inside(least, most));
    }
  });

  it("are visited no further once the visitor has had enough", () => {
    const products = gearBox([24, 28, 32, 40]).quotients(1);
    const visited: number[] = [];
    visitWithin(products, 0, 10, (drivers) => visited.push(drivers) < 3);
    expect(visited).toEqual([24, 28, 32]);
  });

  it("are those at either end of a window as well, were it only one wide", () => {
    for (const [least, most] of [
      [0.5, 0.5],
      [0.5, 0.9],
      [0.4, 0.5],
    ] as const)
      expect(quotientsWithin(gearBox([24, 48]).quotients(1), least, most)).toEqual([[24, 48]]);
  });

  it("are none of a box without gears", () => {
    expect(quotientsWithin(gearBox([]).quotients(1), 0, 10)).toEqual([]);
  });
});
