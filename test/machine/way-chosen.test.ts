import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  type Head,
  indexAngle,
  indexDivisions,
  type NearSetting,
  nearSettings,
  planJob,
  revolutions,
  type Setting,
  type Target,
} from "../../src/index.ts";
import { benchHeads, chosen, planned, settingsFor, targets } from "../support/jobs.ts";
import { jobsByMoves, jobsFromZero, ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { refusal, refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

const count97 = { divisions: 97 } as const;
const ofKind = (kind: NearSetting["kind"], head: Head = ungeared): NearSetting => {
  const found = nearSettings(head, count97).find((near) => near.kind === kind);
  if (found === undefined) throw new Error(`97 has no ${kind}`);
  return found;
};
const best = (head: Head, divisions: number) => indexDivisions(head, divisions).settings[0] as Setting;
const anything = (value: unknown) => value as never;

const refused = (setting: unknown, head: Head = ungeared, target: Target = count97) =>
  refusalLines(() => planJob(head, target, { setting: anything(setting) }));
const otherTarget = "setting: is for another count or angle than the job's; take one from its own answer";

describe("a setting that is chosen is followed", () => {
  it.each([...jobsByMoves, ...jobsFromZero])("$name", ({ head, target, options }) => {
    const { setting } = planned(head, target, options).way;
    const again = planned(head, target, { setting });
    expect([again.way.setting, again.others]).toEqual([setting, []]);
  });

  it("of every method and kind, exact and near, and through JSON", () => {
    fc.assert(
      fc.property(chosen, ({ head, target, setting }) => {
        const plan = planned(head, target, { setting: JSON.parse(JSON.stringify(setting)) });
        expect(plan.way.setting).toEqual(setting);
        expect(plan.way.by).toBe(setting.exact || setting.moves === "equal" ? "moves" : setting.kind);
      }),
      runs(300),
    );
  });
});

describe("a setting for something else is refused", () => {
  it.each([
    ["another count", best(threePlates, 96), threePlates, count97],
    ["another count, near", ofKind("compound"), ungeared, { divisions: 101 }],
    ["another count, from zero", ofKind("ring"), ungeared, { divisions: 101 }],
    ["an angle, though it comes back after as many places", angle("29/3600"), threePlates, { divisions: 3600 }],
    ["a count, though one move turns the work by the angle", best(threePlates, 383), threePlates, { angle: revolutions(4, 383) }],
    ["another angle", angle("29/3600"), threePlates, { angle: revolutions(31, 3600) }],
  ] as const)("%s", (_, setting, head, target) => {
    expect(refused(setting, head, target)).toEqual([otherTarget]);
  });

  it("one tooth of a count is the same as its angle", () => {
    const setting = best(threePlates, 86);
    expect(planned(threePlates, { angle: revolutions(1, 86) }, { setting }).way.setting).toEqual(setting);
  });

  it("of any head and target, for any other target of it", () => {
    fc.assert(
      fc.property(chosen, targets, ({ head, target, setting }, other) => {
        const same = settingsFor(head, other).some((each) => each.spindlePerMove === setting.spindlePerMove);
        fc.pre(JSON.stringify(other) !== JSON.stringify(target) && !same);
        expect(refused(setting, head, other)).toEqual([otherTarget]);
      }),
    );
  });
});

describe("a setting that the head cannot make is refused", () => {
  const onePlate = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }], rearPin: true });
  const otherRatio = defineHead({ ...ungeared, id: "ratio-60", wormRatio: 60 });
  const dial90 = ready("ratio-90-dial");
  const coarseDial = defineHead({ ...dial90, dial: { marksPerTurn: 100 } });
  const coarseRing = defineHead({ ...ungeared, ring: { marksPerTurn: 180 } });
  const noRing = defineHead({ ...ungeared, ring: null });
  const restamped = defineHead({
    wormRatio: 40,
    plates: [{ name: "A", circles: [49] }],
    ring: { marksPerTurn: 360 },
  });

  it.each([
    ["its circle", ofKind("nearest-hole"), onePlate, 'setting: needs a circle of 49 on plate "3"'],
    [
      "its plate, though another has such a circle",
      ofKind("nearest-hole"),
      restamped,
      'setting: needs a circle of 49 on plate "3"',
    ],
    ["its two circles", ofKind("compound"), onePlate, /^setting: needs a circle of \d+ on plate "\d"$/],
    ["its ratio", ofKind("compound"), otherRatio, "setting: is for a worm ratio of 40; the head has 60"],
    ["its ratio, from zero", ofKind("ring"), otherRatio, 'setting: is for a worm ratio of "40"; the head has 60'],
    ["a ring", ofKind("ring"), noRing, "setting: needs a ring with 360 places in a turn"],
    ["as fine a ring", ofKind("ring"), coarseRing, "setting: needs a ring with 360 places in a turn"],
    ["as fine a dial", ofKind("dial", dial90), coarseDial, "setting: needs a dial with 1440 places in a turn"],
    [
      "a dial",
      ofKind("dial", dial90),
      defineHead({ wormRatio: 90, plates: restamped.plates }),
      "setting: needs a dial with 1440 places in a turn",
    ],
  ])("for want of %s", (_, setting, head, told) => {
    const lines = refused(setting, head);
    expect(lines).toHaveLength(1);
    if (typeof told === "string") expect(lines[0]).toBe(told);
    else expect(lines[0]).toMatch(told);
    expect(refusal(() => planJob(head, count97, { setting }))[0]?.code).toBe("not-owned");
  });

  it("for want of its gears", () => {
    expect(refused(best(threePlates, 127), ungeared, { divisions: 127 })[0]).toMatch(/^setting: needs the gears /);
  });

  it("of any head, on any other that has not all that it takes; where it has, it is followed", () => {
    const plain = chosen.filter(({ setting }) => setting.method !== "differential");
    fc.assert(
      fc.property(plain, benchHeads, fc.boolean(), ({ target, setting, head }, other, isAlike) => {
        // Most heads differ in their ratio alone, which is told first.
        const { id, name, mounted, ...parts } = other;
        const on = isAlike ? defineHead({ ...parts, wormRatio: head.wormRatio }) : other;
        expect(refused(setting, on, target)).toHaveLength(owns(on, setting) ? 0 : 1);
      }),
      runs(300),
    );
  });
});

/** Whether a head has all that a setting without gears takes. */
function owns(head: Head, setting: Setting | NearSetting): boolean {
  if (setting.wormRatio !== head.wormRatio) return false;
  const hasScale = (scale: Head["ring"], places: number) => scale !== null && scale.marksPerTurn * scale.vernierLines === places;
  if (setting.method === "direct") {
    return head.directPlates.some(({ name, holes }) => name === setting.plate && holes === setting.circle);
  }
  if (setting.method === "ring") return hasScale(head.ring, setting.placesPerTurn);
  if (setting.method === "dial") return hasScale(head.dial, setting.exact ? setting.circle : setting.placesPerTurn);
  const circles = [setting.circle, ...("second" in setting ? [setting.second.circle] : [])];
  const face = head.plates.find(({ name }) => name === setting.plate)?.faces.find(({ name }) => name === setting.face);
  const hasCircles = circles.every((circle) => circle === null || face?.circles.includes(circle));
  return hasCircles && (setting.method !== "compound" || head.rearPin);
}

describe("a setting that does not do as it says is refused", () => {
  const exact = best(threePlates, 86);
  it.each([
    [
      "a space more",
      { ...exact, spaces: 21 },
      /^setting: turns the work by 21\/1720 of a turn in one move, and not by "1\/86" as it says$/,
    ],
    ["a turn more", { ...exact, turns: 1 }, /turns the work by/],
    [
      "a circle of other places",
      { ...ofKind("nearest-hole"), placesPerTurn: 48 },
      /^setting: has 48 places in a turn on a circle of 49$/,
    ],
    ["a near one called exact", { ...ofKind("compound"), exact: true }, /turns the work by/],
  ])("%s", (_, setting, told) => {
    const isOf86 = setting.spindlePerMove === "1/86";
    const [line] = refused(setting, isOf86 ? threePlates : ungeared, isOf86 ? { divisions: 86 } : count97);
    expect(line).toMatch(told);
  });

  it.each([
    ["nothing", null, "null"],
    ["text", "compound", '"compound"'],
    ["a list", [best(threePlates, 86)], "a list"],
    ["no setting", {}, "an object"],
    ["no method", { ...exact, method: "plain" }, "an object"],
    ["no kind of place", { ...ofKind("ring"), kind: "protractor" }, "an object"],
    ["no way of moving", { ...ofKind("ring"), moves: "unequal" }, "an object"],
  ])("what is %s", (_, setting, shown) => {
    expect(refused(setting, threePlates, { divisions: 86 })).toEqual([
      `setting: ${shown} is not a setting; give one of those that an answer holds`,
    ]);
  });

  it("a way beside a setting that goes another way", () => {
    expect(refusalLines(() => planJob(ungeared, count97, { setting: ofKind("ring"), by: "moves" }))).toEqual([
      'by: is "moves", and the setting chosen is by "ring"; give one of the two',
    ]);
    expect(planned(ungeared, count97, { setting: ofKind("ring"), by: "ring" }).way.by).toBe("ring");
  });
});

function angle(text: string): Setting {
  return indexAngle(threePlates, revolutions(text)).settings[0] as Setting;
}
