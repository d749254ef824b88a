import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shaftRoom } from "../../src/index.ts";
import { arrange } from "../../src/methods/gear-train.ts";
import { trainKey } from "../support/setting-key.ts";

/** Common practice for change gears, no source: a shaft with its nut takes the room of `shaftRoom` teeth. */
describe("two pairs that may foul", () => {
  const fits = ([spindle = 0, studDriver = 0]: readonly number[], [studDriven = 0, worm = 0]: readonly number[]): boolean =>
    spindle + studDriven >= studDriver + shaftRoom && studDriver + worm >= studDriven + shaftRoom;

  it("keeps the printed order of 72/24 × 64/48, which goes together", () => {
    expect(fits([72, 64], [24, 48])).toBe(true);
    expect(arrange([72, 64], [48, 24]).mayFoul).toBeNull();
  });

  it("of two orders with as much room keeps the driver that is named first on the spindle", () => {
    // 24 + 48 − 40 at the worm shaft, and the other way about 24 + 40 − 32 at the spindle: 32 teeth either way.
    expect(arrange([32, 24], [48, 40])).toMatchObject({ drivers: [32, 24], driven: [40, 48] });
    expect(arrange([24, 32], [48, 40])).toMatchObject({ drivers: [24, 32], driven: [40, 48] });
  });

  it("says which gear reaches which shaft", () => {
    expect(arrange([100, 24], [24, 24])).toEqual({
      drivers: [100, 24],
      driven: [24, 24],
      mayFoul: null,
    });
    expect(arrange([100, 86], [24, 24])).toEqual({ drivers: [100, 86], driven: [24, 24], mayFoul: null });
    expect(arrange([100, 98], [8, 8])).toEqual({
      drivers: [100, 98],
      driven: [8, 8],
      mayFoul: { code: "stud-driver-at-spindle", gear: 98, meshing: [100, 8], room: 15 },
    });
    expect(arrange([8, 8], [100, 98])).toEqual({
      drivers: [8, 8],
      driven: [98, 100],
      mayFoul: { code: "stud-driven-at-worm-shaft", gear: 98, meshing: [8, 100], room: 15 },
    });
  });

  it("calls a train fouling only where no order of its gears goes together", () => {
    const gear = fc.integer({ min: 8, max: 120 });
    fc.assert(
      fc.property(gear, gear, gear, gear, (a, b, c, d) => {
        const train = arrange([a, b], [c, d]);
        expect(trainKey(train)).toBe(trainKey({ drivers: [a, b], driven: [c, d] }));
        const orders = [
          [
            [a, b],
            [c, d],
          ],
          [
            [b, a],
            [c, d],
          ],
          [
            [a, b],
            [d, c],
          ],
          [
            [b, a],
            [d, c],
          ],
        ] as const;
        expect(train.mayFoul === null).toBe(orders.some(([drivers, driven]) => fits(drivers, driven)));
        if (train.mayFoul === null) expect(fits(train.drivers, train.driven)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it("names the gear on the stud that reaches a shaft, and the two whose meshing leaves it too little room", () => {
    const gear = fc.integer({ min: 8, max: 120 });
    let named = 0;
    fc.assert(
      fc.property(gear, gear, gear, gear, (a, b, c, d) => {
        const { drivers, driven, mayFoul } = arrange([a, b], [c, d]);
        if (mayFoul === null) return;
        named += 1;
        const [spindle, studDriver] = drivers;
        const [studDriven, wormShaft] = driven;
        const places = {
          "stud-driver-at-spindle": { gear: studDriver, meshing: [spindle, studDriven] },
          "stud-driven-at-worm-shaft": { gear: studDriven, meshing: [studDriver, wormShaft] },
        };
        expect(mayFoul).toEqual({ code: mayFoul.code, ...places[mayFoul.code], room: shaftRoom });
        expect(mayFoul.meshing[0] + mayFoul.meshing[1]).toBeLessThan(mayFoul.gear + mayFoul.room);
      }),
      { numRuns: 500 },
    );
    expect(named).toBeGreaterThan(3);
  });
});
