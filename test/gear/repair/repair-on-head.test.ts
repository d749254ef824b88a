import { describe, expect, it } from "vitest";
import { repairOnHead } from "../../../src/gear/repair/repair-on-head.ts";
import { type RepairOptions, toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { defineHead } from "../../../src/index.ts";
import { ready } from "../../support/ready.ts";
import { refusalKinds } from "../../support/refusal.ts";
import { wrong } from "../../support/wrong.ts";

const gear = spurGear({ teeth: 97, module: 2 });
const damaged = [31, 32];
const geared = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const dialOnly = ready("ratio-90-dial");

describe("a repair on a head", () => {
  it("is the repair by itself, with the error of the way taken in", () => {
    const options: RepairOptions = { damaged, backlash: 0.2, settingError: { arcSeconds: 30, offCentre: 0.02 } };
    const near = repairOnHead(dialOnly, gear, options);
    if (!near.job.planned) throw new Error("a dial sets any count nearly");
    const { worstArcSeconds } = near.job;
    expect(worstArcSeconds).toBeGreaterThan(0);
    expect(near.settingError).toEqual({ arcSeconds: 30 + worstArcSeconds, offCentre: 0.02 });
    expect(near.repair).toEqual(toothRepair(gear, { ...options, settingError: near.settingError }));
    expect(near.repair.saw.leftOnFlank.atBottom).toBeCloseTo(near.repair.displacement.together, 12);
  });

  it("takes the least work where it leaves less than 0.005 mm at the reference circle, and not a tenth over", () => {
    const kindOn = (module: number) => {
      const { job } = repairOnHead(ungeared, spurGear({ teeth: 97, module }), { damaged: [31] });
      return job.planned && "kind" in job.way.setting && job.way.setting.kind;
    };
    // By simple indexing the worst of the spaces is 39.3″ off: 0.005 mm at a radius of 26.24 mm.
    expect([0.9, 1.1].map((part) => kindOn((2 * 26.24 * part) / 97))).toEqual(["simple", "compound"]);
  });

  it("of a head that can do none of it is the repair by itself, with no move and no error added", () => {
    const none = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
    const settingError = { arcSeconds: 30, offCentre: 0.02 };
    const { job, exact, moves, ...rest } = repairOnHead(none, gear, { damaged, settingError });
    expect([job.planned, exact, moves]).toEqual([false, false, []]);
    expect(rest).toMatchObject({ settingError, repair: toothRepair(gear, { damaged, settingError }) });
  });

  it("starts at the sound space, cuts every space beside a damaged tooth, and proves the count at a sound one", () => {
    const { exact, moves } = repairOnHead(geared, gear, { damaged });
    expect(exact).toBe(true);
    expect(moves.map(({ toothSpace, purpose }) => [toothSpace, purpose])).toEqual([
      [29, "set the cutter"],
      [30, "recut"],
      [31, "recut"],
      [32, "recut"],
      [33, "prove the count"],
    ]);
  });

  it("warns, and does not refuse, where the errors are wider than any saw leaves", () => {
    const codes = (options: Omit<RepairOptions, "damaged">) =>
      repairOnHead(dialOnly, gear, { damaged, ...options }).repair.warnings.map(({ code }) => code);
    expect(codes({ settingError: { arcSeconds: 7200 } })).toContain("errors-over-saw");
    expect(codes({ saw: { width: 1.5 }, settingError: { arcSeconds: 2400 } })).toContain("errors-over-saw");
    expect(codes({ saw: { width: 1 }, settingError: { arcSeconds: 60 } })).toEqual([]);
  });

  it.each([
    [{ damaged, settingError: { arcseconds: 5 } }, /there is no key "arcseconds"/],
    [{ damaged, sawWidth: 2 }, /there is no key "sawWidth"/],
    [{ damaged, mateThinning: 0.05 }, /mateThinning: is of no use without the backlash/],
  ] as unknown as [RepairOptions, RegExp][])("refuses %j", (options, sentence) => {
    expect(() => repairOnHead(geared, gear, options)).toThrow(sentence);
  });
});

it("a saw that is to leave what errors come to leaves nothing rather than refuse, and says so", () => {
  const { saw, warnings } = toothRepair(gear, { damaged, settingError: { offCentre: 1.5 } });
  expect(saw.leftOnFlank.atBottom).toBeCloseTo(0, 12);
  expect(warnings.map(({ code }) => code)).toContain("errors-over-saw");
});

it("refuses what is no gear, no options and no way to list the places", () => {
  const kinds = (of: unknown, options: unknown) => refusalKinds(() => repairOnHead(geared, wrong(of), wrong(options)));
  expect(kinds(null, { damaged })).toEqual(["unreadable gear"]);
  expect(kinds(gear, null)).toEqual(["unreadable options"]);
  expect(kinds(gear, { damaged, teeth: 3 })).toEqual(["unknown-key options"]);
  expect(kinds(gear, { damaged, places: null })).toEqual(["unreadable options.places"]);
  expect(kinds(gear, { damaged, places: { teeth: [3] } })).toEqual(["unknown-key options.places"]);
});
