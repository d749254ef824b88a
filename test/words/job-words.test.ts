import { describe, expect, it } from "vitest";
import { type Head, type Place, type PlannedJob, parseAngle, type Way } from "../../src/index.ts";
import {
  eachPlaceItem,
  offByItems,
  otherWayItems,
  startItem,
  wayFigures,
  wayItems,
  wayName,
  wayShort,
} from "../../src/words/index.ts";
import { bareTable, ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { secondHand } from "../support/settings.ts";
import {
  backJob,
  compoundJob,
  dialJob,
  directJob,
  holesJob,
  planOf,
  ringJob,
  simpleJob,
  wholeJob,
} from "../support/told-jobs.ts";

describe("the start", () => {
  const said = (given: PlannedJob, head: Head) => startItem(given, head).text;

  it("says where pin and scales stand, and which way the figures go", () => {
    expect(said(simpleJob, threePlates)).toBe("at tooth 1: pin in hole 0, ring 0°; the figures rise from there");
    const minus = planOf(threePlates, 86, { side: "minus", startAngle: parseAngle("30°") });
    expect(said(minus, threePlates)).toBe("at tooth 1: pin in hole 0, ring 30°; the figures FALL from there");
    expect(said(dialJob, ready("ratio-60-dial"))).toBe("at tooth 1: ring 0°, dial 0 t + 0° 00′ 00″; the figures rise from there");
  });

  it("of a head without scales the pin alone, and with neither the tooth alone", () => {
    const without = (given: PlannedJob) => ({ ...given, start: { ...given.start, ring: null, dial: null } as Place });
    expect(said(without(simpleJob), { ...threePlates, ring: null })).toBe("at tooth 1: pin in hole 0");
    expect(said(without(wholeJob), { ...threePlates, ring: null })).toBe("at tooth 1");
  });

  it("says what is done at each place", () => {
    const done = ({ way }: PlannedJob, head: Head) => eachPlaceItem(way, head).text;
    expect(done(ringJob, ungeared)).toBe("Unlock, go on to the reading, lock, cut.");
    expect(done(directJob, secondHand)).toBe("Unlock, go on to the hole, pin home, lock, cut.");
    expect(done(holesJob, ungeared)).toBe("Unlock, go on to the hole, pin home, lock, cut.");
    expect(done(wholeJob, threePlates)).toBe("Unlock, go on the whole turns, pin home, lock, cut.");
    expect(done(planOf(bareTable, 12), bareTable)).toBe("Unlock, go on the whole turns, lock, cut.");
    expect(done(simpleJob, threePlates)).toBe("Unlock, go on to the hole, pin home, arms round to the pin, lock, cut.");
    expect(done(compoundJob, threePlates)).toBe(
      "Unlock, both parts in their order, both pins home, arms round to the pin, lock, cut.",
    );
  });

  it("says what the column of errors means, where there is one", () => {
    expect(offByItems(simpleJob)).toEqual([]);
    expect(offByItems(ringJob).map(({ term }) => term)).toEqual(["Off by"]);
  });
});

describe("other ways", () => {
  it("the best of each by name, with how far it is off at its worst", () => {
    const ways = [
      { ...compoundJob.way, worstArcSeconds: 0 },
      { ...backJob.way, worstArcSeconds: 0 },
      { ...ringJob.way, worstArcSeconds: 1799.95 },
    ] as Parameters<typeof otherWayItems>[0];
    expect(otherWayItems(ways).map(({ term, text }) => [term, text.replace(/^compound .*\)/, "compound …")])).toEqual([
      ["Or", "compound …: no error"],
      ["", "the ring: no place over 30.0′ off"],
    ]);
  });

  it("are named in a word or two, and set up from one zero where each place is", () => {
    expect([compoundJob, simpleJob, holesJob, ringJob].map(({ way }) => wayName(way))).toEqual([
      "compound",
      "simple",
      "nearest hole",
      "by the ring",
    ]);
    const geared = planOf(threePlates, 787, { by: "moves", teethPerMove: 1, methods: ["differential"] });
    expect([wayName(geared.way), geared.exact]).toEqual(["two pairs", false]);
    const near = planOf(ungeared, 97, { by: "moves", methods: ["simple"], teethPerMove: 1 });
    expect([wayName(near.way), near.exact]).toEqual(["simple", false]);
    const { setting } = holesJob.way as Extract<Way, { by: "nearest-hole" }>;
    const at49 = { by: "nearest-hole", setting: { ...setting, circle: 49, plate: "3", face: "front" } } as const;
    expect(wayShort(at49)).toBe("the nearest holes of 49 (plate 3, front face)");
    expect(wayFigures(at49, ungeared)).toEqual([{ head: "CIRCLE", figure: "49", under: "plate 3 front: nearest holes" }]);
    expect(wayFigures(ringJob.way, ungeared)).toEqual([{ head: "SET BY", figure: "ring", under: "from one zero" }]);
    expect(wayItems(at49, ungeared).map(({ term, text }) => `${term}: ${text}`)).toEqual([
      "Plate: 3, front face, circle of 49 holes",
      "Plate stop pin: IN",
      "Set: every place to its own nearest hole; no error adds to the next",
    ]);
    expect(wayItems(at49, ungeared).map(({ inFigures }) => inFigures)).toEqual([true, undefined, undefined]);
    expect(wayItems(ringJob.way, ungeared)).toEqual([
      { term: "Set", text: "every place by the ring from one zero; no error adds to the next" },
    ]);
  });
});
