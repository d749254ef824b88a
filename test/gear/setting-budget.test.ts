import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions, nearSettings, planJob, type SettingBudgetOptions, settingBudget } from "../../src/index.ts";
import { refusalKinds } from "../support/refusal.ts";

const head = defineHead({
  wormRatio: 40,
  plates: [{ name: "1", circles: [15, 16, 17], diameters: [60, 80, 100] }],
  directPlates: [{ name: "1", holes: 24 }],
  rearPin: true,
  dial: { marksPerTurn: 30, vernierLines: 2 },
  ring: { marksPerTurn: 360, vernierLines: 12 },
  wormErrorArcSeconds: 25,
});
const { wormErrorArcSeconds: _, ...spec } = head;
const unstated = defineHead({ ...spec, plates: [{ name: "1", circles: [15, 16, 17] }] });

/** The codes of what a setting leaves, with what is not told. */
function told(count: number, method: string, more: Omit<SettingBudgetOptions, "radius"> = {}, on = head) {
  const target = { divisions: count };
  const byRing = planJob(on, target, { by: "ring" });
  const all = [
    ...indexDivisions(on, count, { all: true }).settings,
    ...nearSettings(on, target),
    ...(byRing.planned ? [byRing.way.setting] : []),
  ];
  const setting = all.find((each) => each.method === method && (each.circle !== null || method === "dial" || method === "ring"));
  if (setting === undefined) throw new Error(`no ${method}`);
  const { items, untold } = settingBudget(on, target, setting, { radius: 50, ...more });
  return { items, codes: items.map(({ code }) => code).sort(), untold };
}

describe("what a setting is put out by", () => {
  it("by the crank: holes over the worm ratio, and the worm as the head states it", () => {
    const { items, codes, untold } = told(30, "simple", { holeError: 0.1 });
    expect([codes, untold]).toEqual([["holes", "setting", "worm"], ["run-out"]]);
    expect(items.find(({ code }) => code === "worm")?.arcSeconds).toBe(25);
    // On the circle of 15, whose diameter is 60: 0.1/30 of a radian, over 40.
    expect(items.find(({ code }) => code === "holes")?.arcSeconds).toBeCloseTo((0.1 / 30 / 40) * (648_000 / Math.PI), 9);
  });

  it("of a compound move both circles", () => {
    const near = nearSettings(head, { divisions: 97 }).find(({ method }) => method === "compound");
    if (near?.method !== "compound") throw new Error("no compound move");
    const diameterOf = (circle: number) => ({ 15: 60, 16: 80, 17: 100 })[circle] ?? Number.NaN;
    const { items } = settingBudget(head, { divisions: 97 }, near, { radius: 50, holeError: 0.1 });
    const turned = 0.2 / diameterOf(near.circle) + 0.2 / diameterOf(near.second.circle);
    expect(items.find(({ code }) => code === "holes")?.arcSeconds).toBeCloseTo((turned / 40) * (648_000 / Math.PI), 9);
  });

  it("by a plate on the spindle: its holes whole, and no worm; a plate of the same name is another", () => {
    const { items, codes, untold } = told(24, "direct", { holeError: 0.1, circleDiameter: 120 });
    expect([codes, untold]).toEqual([["holes", "setting"], ["run-out"]]);
    expect(items[0]?.arcSeconds).toBeCloseTo((0.1 / 60) * (648_000 / Math.PI), 9);
    const [direct] = indexDivisions(head, 24).settings;
    const ask = () => settingBudget(head, { divisions: 24 }, direct as never, { radius: 50, holeError: 0.1 });
    expect(refusalKinds(ask)).toEqual(["missing holeError"]);
  });

  it("by whole turns: no hole but the one", () => {
    const [setting] = indexDivisions(head, 20, { methods: ["simple"] }).settings;
    const { items, untold } = settingBudget(head, { divisions: 20 }, setting as never, { radius: 50, runOut: 0.1 });
    expect([items.map(({ code }) => code), untold]).toEqual([["run-out", "worm", "setting"], []]);
  });

  it("by dial or ring: the reading, as near as a line is laid unless it is said; through the worm, or not", () => {
    const dial = told(97, "dial");
    // 40 turns of 60 places: 540″ each.
    expect([dial.codes, dial.untold]).toEqual([["reading", "setting", "worm"], ["run-out"]]);
    expect(dial.items.find(({ code }) => code === "reading")?.arcSeconds).toBe(270);
    const ring = told(97, "ring");
    expect([ring.codes, ring.untold]).toEqual([["reading", "setting"], ["run-out"]]);
    expect(ring.items.find(({ code }) => code === "reading")?.arcSeconds).toBe(150);
    // A tenth of a degree, where there is no vernier.
    const coarse = defineHead({ ...spec, ring: { marksPerTurn: 360 } });
    expect(told(97, "ring", {}, coarse).items.find(({ code }) => code === "reading")?.arcSeconds).toBe(360);
    expect(told(97, "ring", { readingArcSeconds: 60 }).items.find(({ code }) => code === "reading")?.arcSeconds).toBe(60);
  });

  it("over the places that are cut alone, where it is said", () => {
    const of = (more: object) => told(97, "compound", more).items.find(({ code }) => code === "setting")?.arcSeconds;
    expect(of({ worstArcSeconds: 3 })).toBe(3);
    expect(of({})).toBeGreaterThan(3);
  });

  it("and from tooth to tooth by no more than any two of those, in several rounds by as much as that", () => {
    const whole = told(97, "compound").items.find(({ code }) => code === "setting");
    const pitchOf = (worstArcSeconds: number) =>
      told(97, "compound", { worstArcSeconds }).items.find(({ code }) => code === "setting")?.pitchArcSeconds;
    const pitchArcSeconds = whole?.pitchArcSeconds ?? 0;
    const arcSeconds = whole?.arcSeconds ?? 0;
    expect(pitchArcSeconds).toBeGreaterThan(0);
    expect(pitchOf(pitchArcSeconds / 2)).toBeCloseTo(pitchArcSeconds / 2, 9);
    expect(pitchOf(arcSeconds)).toBe(pitchArcSeconds);
    expect(pitchOf(7 * arcSeconds)).toBeCloseTo(7 * arcSeconds, 9);
  });

  it("what the head does not state may be said", () => {
    expect(told(30, "simple", {}, unstated).untold).toEqual(["run-out", "holes", "worm"]);
    const said = told(30, "simple", { holeError: 0.1, circleDiameter: 60, wormErrorArcSeconds: 40 }, unstated);
    expect(said.items.find(({ code }) => code === "worm")?.arcSeconds).toBe(40);
    expect(said.items.find(({ code }) => code === "holes")?.arcSeconds).toBeCloseTo(17.19, 2);
  });

  it("of an angle, too, which has no neighbours", () => {
    const target = { angle: "1/97" } as never;
    const [near] = nearSettings(head, target);
    const { items, together } = settingBudget(head, target, near as never, { radius: 50, runOut: 0.1 });
    expect(items.every(({ pitchArcSeconds }) => pitchArcSeconds === null)).toBe(true);
    expect(together.grades).toBeNull();
  });
});

it.each<[string, number, string, Omit<SettingBudgetOptions, "radius">]>([
  ["missing holeError", 30, "simple", { holeError: 0.1 }],
  ["no-effect circleDiameter", 30, "simple", { circleDiameter: 60 }],
  ["no-effect holeError", 97, "dial", { holeError: 0.1 }],
  ["no-effect readingArcSeconds", 30, "simple", { readingArcSeconds: 5 }],
  ["no-effect wormErrorArcSeconds", 97, "ring", { wormErrorArcSeconds: 5 }],
  ["out-of-range runOut", 30, "simple", { runOut: -1 }],
  ["unknown-key options", 30, "simple", { runout: 1 } as never],
])("refuses with %s: %i by %s, %j", (kind, count, method, more) => {
  expect(refusalKinds(() => told(count, method, more, unstated))).toEqual([kind]);
});

it("refuses a setting of another count", () => {
  const [setting] = indexDivisions(head, 30).settings;
  const ask = () => settingBudget(head, { divisions: 31 }, setting as never, { radius: 50 });
  expect(refusalKinds(ask)).toEqual(["conflict setting"]);
});
