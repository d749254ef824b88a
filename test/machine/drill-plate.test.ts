import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type DrilledOnHead,
  type DrilledPlate,
  type DrillOptions,
  defineHead,
  drillPlate,
  errorAtRadius,
  type Head,
  plateChords,
  readyHead,
  readyHeads,
  revolutions,
  wormRatioOf,
} from "../../src/index.ts";
import { plateError } from "../published/plates.ts";
import { headSpecs } from "../support/arbitraries.ts";
import { atStart, moved, spindle, turnsOf } from "../support/bench.ts";
import { threePlates } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

const ungeared = readyHead("ratio-40-plates-15-49-ungeared");

function drilled(head: Head, holes: number, options: DrillOptions): DrilledPlate {
  const plate = drillPlate(head, holes, options);
  if (!plate.planned) expect.fail("it cannot be made");
  return plate;
}

const value = ({ n, d }: { n: bigint; d: bigint }) => Number(n) / Number(d);

/** Where each hole comes to lie, in turns of the plate: the head moved as its holes say, and nothing else. */
function holesOnBench(plate: DrilledOnHead, head: Head): ReadonlyMap<number, number> {
  const { way } = plate.plan;
  const worm = value(turnsOf(wormRatioOf(head)));
  let stand = atStart;
  return new Map(
    plate.holes.map(({ hole, place }) => {
      if (place.by === "moves" && way.by === "moves") {
        stand = moved(stand, place.from, way.setting);
        return [hole, value(spindle(stand, way.setting))] as const;
      }
      if (place.by === "nearest-hole") return [hole, (place.turns + place.hole / (way.setting.circle ?? 1)) / worm] as const;
      const scale = place.by === "dial" ? head.dial : head.ring;
      const reading = place.by === "dial" ? place.dial : place.ring;
      if (!scale || !reading) return expect.fail("the scale is not read");
      const part = (reading.mark + reading.line / scale.vernierLines) / scale.marksPerTurn;
      return [hole, place.by === "dial" ? (reading.turns + part) / worm : part] as const;
    }),
  );
}

/** The same turn of the plate, whole turns apart. */
function apart(a: number, b: number): number {
  return Math.abs(a - b - Math.round(a - b));
}

function isOnHead(plate: DrilledPlate): DrilledOnHead {
  return plate.by === "coordinates" ? expect.fail("it is made by coordinates") : plate;
}

describe("a plate drilled on a head", () => {
  it("has its holes where the head puts them, each once, off by what they say", () => {
    const ways = new Set<string>();
    const check = (head: Head, holes: number, diameter: number) => {
      const found = drillPlate(head, holes, { diameter });
      if (!found.planned) return;
      const plate = isOnHead(found);
      ways.add(`${plate.by} ${plate.plan.exact}`);
      const bench = holesOnBench(plate, head);
      expect([...bench.keys()].sort((a, b) => a - b)).toEqual(Array.from({ length: holes }, (_, hole) => hole));
      for (const { hole, errorArcSeconds, errorMm } of plate.holes) {
        const isAt = hole / holes + errorArcSeconds / 1_296_000;
        expect(apart(bench.get(hole) ?? Number.NaN, isAt)).toBeLessThan(1e-11);
        expect(errorMm).toBeCloseTo((errorArcSeconds / 1_296_000) * Math.PI * diameter, 10);
      }
    };
    fc.assert(
      fc.property(
        headSpecs().map(defineHead),
        fc.integer({ min: 2, max: 150 }),
        fc.integer({ min: 100, max: 4000 }),
        (head, holes, tenths) => check(head, holes, tenths / 10),
      ),
      runs(40),
    );
    for (const head of readyHeads) for (const holes of [24, 97]) check(head, holes, 120);
    expect([...ways]).toEqual(expect.arrayContaining(["moves true", "moves false", "dial false"]));
  });

  it("97 by a near move of 16″ is good to 0.4″ at 40:1, and a second made through it to 0.01″", () => {
    const plate = drilled(ungeared, 97, { diameter: 120 });
    expect(plate.worstHoleMm).toBeCloseTo(errorAtRadius(15.866, 60).mm, 6);
    expect([plate.atSpindleArcSeconds.toFixed(2), plate.next?.atSpindleArcSeconds.toFixed(3)]).toEqual(["0.40", "0.010"]);
  });

  it("by the dial of a table for another head: half a mark of 10″ becomes an eighth of a second at 40:1", () => {
    const plate = drilled(readyHead("ratio-90-dial"), 97, { diameter: 120, servesRatio: 40 });
    expect([plate.by, plate.servesRatio]).toEqual(["dial", "40"]);
    expect(plate.atSpindleArcSeconds).toBeLessThanOrEqual(5 / 40);
    // From hole to hole they may be off to either side.
    expect(plate.betweenHolesArcSeconds).toBeCloseTo(2 * plate.atSpindleArcSeconds, 3);
  });

  it("by hand: 0.1 mm at a radius of 60 mm turns the spindle of a 40:1 head by 8.6″", () => {
    // 0.1/60 of a radian is 343.8″; over 40 that is 8.59″, and from one such hole to another twice that.
    const plate = drilled(threePlates, 12, { diameter: 120, drillWithin: 0.1 });
    expect(plate.worstHoleMm).toBeCloseTo(0.1, 12);
    expect([plate.atSpindleArcSeconds.toFixed(2), plate.betweenHolesArcSeconds.toFixed(2)]).toEqual(["8.59", "17.19"]);
    // The second is off by the drill anew, and by what the first gives.
    expect(plate.next?.worstHoleMm).toBeCloseTo(0.1 + 0.2 / 40, 12);
  });

  it(`half a minute of the plate is less than half a second at 72:1 (${plateError.source.title})`, () => {
    const { plateMinutes, wormRatio, printedSeconds } = plateError;
    const within = errorAtRadius(plateMinutes * 60, 50).mm;
    const plate = drilled(threePlates, 12, { diameter: 100, drillWithin: within, servesRatio: wormRatio });
    expect(plate.atSpindleArcSeconds).toBeCloseTo(30 / 72, 9);
    expect(Math.ceil(plate.atSpindleArcSeconds * 2) / 2).toBe(printedSeconds);
  });

  it("what is left between two holes is the chord less the drill, and the chords are those of any plate", () => {
    const plate = drilled(threePlates, 6, { diameter: 100, drill: 8 });
    expect(plate.wallMm).toBeCloseTo(42, 9);
    const [face] = plateChords(defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [97], diameters: [120] }] }));
    const chords = drilled(ungeared, 97, { diameter: 120 }).chords;
    const { first, quarter, half, last } = face?.circles[0] ?? expect.fail();
    expect(chords.filter(({ from, to }) => from !== 0 || to !== 2)).toEqual([first, quarter, half, last]);
    expect(chords.map(({ from, to }) => [from, to])).toEqual([
      [0, 1],
      [0, 2],
      [0, 24],
      [0, 48],
      [96, 0],
    ]);
    expect(drilled(threePlates, 3, { diameter: 50 }).chords.map(({ from, to }) => [from, to])).toEqual([
      [0, 1],
      [0, 2],
      [2, 0],
    ]);
  });

  it("is none where the head comes nowhere near, and says why", () => {
    const nose = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
    expect(drillPlate(nose, 97, { diameter: 120 })).toMatchObject({ planned: false, target: { divisions: 97 } });
  });

  it("goes through JSON unchanged", () => {
    const plate = drilled(ungeared, 97, { diameter: 120, drill: 2 });
    expect(JSON.parse(JSON.stringify(plate))).toEqual(plate);
  });
});

describe("a second plate made through the first", () => {
  it("is off by what the holes of the first leave the spindle off by, followed hole by hole", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 120 }), fc.integer({ min: 1, max: 100 }), (holes, ratio) => {
        const plate = drilled(ungeared, holes, { diameter: 120, servesRatio: ratio, by: "coordinates", step: 0.5 });
        const errors = new Map(plate.holes.map(({ hole, errorArcSeconds }) => [hole, errorArcSeconds]));
        let worst = 0;
        for (let pin = 0; pin < holes * ratio; pin += ratio) worst = Math.max(worst, Math.abs(errors.get(pin % holes) ?? 0));
        expect(plate.next?.worstHoleMm).toBeCloseTo(errorAtRadius(worst / ratio, 60).mm, 12);
        expect(plate.next?.atSpindleArcSeconds).toBeCloseTo(worst / ratio / ratio, 9);
      }),
      runs(60),
    );
  });

  it("cannot be on a ratio that is not whole: its turns are no whole spaces", () => {
    expect(drilled(ungeared, 97, { diameter: 120, servesRatio: "81/2" }).next).toBeNull();
  });
});

describe("a plate by coordinates", () => {
  const byCoordinates = (holes: number, options: Omit<DrillOptions, "by">) => {
    const plate = drilled(threePlates, holes, { ...options, by: "coordinates" });
    return plate.by === "coordinates" ? plate : expect.fail();
  };

  it("has every hole on a step of the slides, off along and out of its circle by what it says", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 150 }),
        fc.integer({ min: 500, max: 4000 }),
        fc.constantFrom(0.01, 0.005, 0.0254, 0.1),
        fc.constantFrom("clockwise" as const, "counter-clockwise" as const, undefined),
        fc.constantFrom("centre" as const, "tangents" as const, undefined),
        fc.integer({ min: 0, max: 359 }),
        (holes, tenths, step, sense, origin, degrees) => {
          const diameter = tenths / 10;
          const startAngle = revolutions(degrees, 360);
          const plate = byCoordinates(holes, { diameter, step, sense, origin, startAngle });
          const centre = origin === "tangents" ? diameter / 2 : 0;
          expect(plate.holes.map(({ hole }) => hole)).toEqual(Array.from({ length: holes }, (_, hole) => hole));
          for (const { hole, x, y, errorMm, outMm } of plate.holes) {
            for (const each of [x, y]) expect(Math.abs(each / step - Math.round(each / step))).toBeLessThan(1e-5);
            const onward = sense === "clockwise" ? -1 : 1;
            const wanted = degrees / 360 + (onward * hole) / holes;
            // Turned back so that its true place lies on the x axis.
            const turn = -2 * Math.PI * wanted;
            const [dx, dy] = [x - centre, y - centre];
            const [along, out] = [dx * Math.sin(turn) + dy * Math.cos(turn), dx * Math.cos(turn) - dy * Math.sin(turn)];
            expect(Math.hypot(along, out - diameter / 2)).toBeLessThanOrEqual(step * Math.SQRT1_2 + 1e-9);
            expect(errorMm * onward).toBeCloseTo((diameter / 2) * Math.atan2(along, out), 8);
            expect(outMm).toBeCloseTo(Math.hypot(dx, dy) - diameter / 2, 9);
          }
          expect(plate.worstHoleMm).toBeLessThanOrEqual(step * Math.SQRT1_2 + 1e-4);
        },
      ),
      runs(60),
    );
  });

  it("is set to hundredths of a millimetre where nothing is said, on the ratio of the head", () => {
    expect(byCoordinates(97, { diameter: 120 })).toMatchObject({ step: 0.01, origin: "centre", servesRatio: "40" });
    expect(byCoordinates(4, { diameter: 120 }).holes.map(({ x, y, errorMm }) => [x, y, Math.abs(errorMm)])).toEqual([
      [60, 0, 0],
      [0, 60, 0],
      [-60, 0, 0],
      [0, -60, 0],
    ]);
  });
});

describe("refusals of a plate", () => {
  const ask = (holes: unknown, options: object) => () => drillPlate(threePlates, holes as number, options as DrillOptions);
  it.each([
    [ask(1, { diameter: 100 }), "holes: 1 is not a number of holes for a circle; give 2 to 10,000"],
    [ask(12.5, { diameter: 100 }), "holes: 12.5 is not a number of holes"],
    [ask(12, {}), "diameter: undefined is not a diameter; give the millimetres through the middles of the holes"],
    [ask(12, { diameter: 0.5 }), "diameter: 0.5 mm is not a diameter for a circle of holes; give 1 mm to 2000 mm"],
    [
      ask(97, { diameter: 120, drill: 4 }),
      "drill: 4 mm runs into the next hole, 3.886 mm on; give a smaller drill, or a larger circle",
    ],
    [ask(12, { diameter: 100, drill: 0 }), "drill: 0 is not the diameter of a drill; give one above 0"],
    [
      ask(97, { diameter: 120, drillWithin: 2 }),
      "drillWithin: 2 mm is as far as halfway to the next hole; give less than 1.942 mm",
    ],
    [ask(12, { diameter: 100, drillWithin: -1 }), "drillWithin: -1 is not how far a hole may be off; give millimetres from 0"],
    [
      ask(12, { diameter: 100, by: "eye" }),
      'by: "eye" is none of moves, nearest-hole, dial, ring, both-cranks, nearest-direct, coordinates',
    ],
    [ask(12, { diameter: 100, step: 0.01 }), "step: has no effect but by coordinates; leave it out"],
    [
      ask(12, { diameter: 100, by: "coordinates", mounted: "1" }),
      "mounted: goes with a way of the head and has no effect by coordinates; leave it out",
    ],
    [ask(12, { diameter: 100, by: "coordinates", step: 2 }), "step: 2 mm is not the step of a table; give at most 1 mm"],
    [ask(12, { diameter: 100, by: "coordinates", step: 0 }), "step: 0 is not a step; give millimetres above 0"],
    [ask(12, { diameter: 100, servesRatio: 0 }), "servesRatio: 0 is not above 0; give the crank turns for one spindle turn"],
  ])("%#", (act, why) => {
    expect(refusalLines(act).join("\n")).toContain(why);
  });
});
