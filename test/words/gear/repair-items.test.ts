import { describe, expect, it } from "vitest";
import { recutPlan } from "../../../src/gear/repair/damaged-teeth.ts";
import type { RepairOnHead } from "../../../src/gear/repair/repair-on-head.ts";
import { type RepairOptions, type ToothRepair, toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import {
  blankItems,
  centringItems,
  errorAtPitch,
  runsOf,
  sawItems,
  teethInRuns,
  thinItems,
} from "../../../src/words/gear/repair-items.ts";
import { betweenWords, startWords } from "../../../src/words/gear/repair-place-words.ts";
import { lengthsIn } from "../../../src/words/lengths.ts";
import { planned } from "../../support/jobs.ts";
import { bareTable, ungeared } from "../../support/known-jobs.ts";
import { threePlates } from "../../support/ready.ts";
import { secondHand } from "../../support/settings.ts";

const mm = lengthsIn("mm");
const inches = lengthsIn("in");
/** 172 mm across: a minute is 86 · 2π/21,600 = 0.025017 mm at the pitch circle. */
const gear = spurGear({ teeth: 86, module: 2 });
const repair = (more: Partial<RepairOptions> = {}) => toothRepair(gear, { damaged: [31], ...more });

it("the blank is turned to the tips, 86 + 2 modules, and cut 2.25 modules deep", () => {
  expect(blankItems(repair(), mm)).toEqual([
    { term: "Blank", text: "turn the built-up teeth down to the sound tips, reckoned as 176.000 mm; cut 4.500 mm deep" },
  ]);
});

describe("the saw", () => {
  const saw = (more: Partial<ToothRepair["saw"]> = {}): ToothRepair => {
    const usual = { depth: 4.0009, greatestWidth: 1.567, width: 1.2, leftAtRoot: 0.5, warnings: [] };
    const leftOnFlank = { atBottom: 0.2, atReference: 0.6, atTip: 1 };
    return { ...repair(), saw: { ...usual, leftOnFlank, ...more } };
  };
  const bottom = (atBottom: number) => saw({ leftOnFlank: { atBottom, atReference: 0.6, atTip: 1 } });
  const said = (each: ToothRepair, given = false) => sawItems(each, mm, given).map(({ text }) => text);

  it("is so wide and deep at most, rounded downwards, and leaves so much", () => {
    expect(said(saw())).toEqual([
      "1.56 mm wide at most, 4.000 mm deep at most, set central",
      "with the widest, on each flank 0.200 mm at the bottom of the cut, 0.600 mm at the pitch circle; 0.500 mm under it; form cutter or file take the rest, the sound teeth being the guide",
    ]);
    expect(said(saw(), true)[1]).toMatch(/^with a saw of 1\.20 mm, on each flank/);
  });

  it("had better be thinner where it leaves less than 0.05 mm to file, unless it is the one at hand", () => {
    expect(said(bottom(0.049))[0]).toMatch(/ wide at most, better thinner, /);
    expect(said(bottom(0.05))[0]).not.toContain("thinner");
    expect(said(bottom(0.049), true)[0]).not.toContain("thinner");
  });
});

describe("how true the work and the cutter must be set", () => {
  const said = (arcSeconds: number, offCentre: number, length = mm, of = gear) => {
    const settingError = { arcSeconds, offCentre };
    const onHead = { gear: of, repair: repair({ settingError }), settingError } as RepairOnHead;
    return centringItems(onHead, length).map(({ term, text }) => `${term}: ${text}`);
  };

  // Half a space is a quarter of a pitch, π/172: 0.1 mm of cutter are 0.1 · cos(20° + 180°/172)/cos 20° = 0.0993 mm.
  it("what a minute and a tenth of a millimetre do, or five thousandths of an inch", () => {
    expect(said(0, 0)).toEqual([
      "Centring: each minute that the work is off moves a flank 0.025 mm at the pitch circle; each 0.1 mm that the cutter is off centre, 0.099 mm",
    ]);
    expect(said(0, 0, mm, spurGear({ teeth: 86, module: 20 }))[0]).toMatch(/moves a flank 0\.250 mm at the pitch circle/);
    expect(said(0, 0, inches)).toEqual([
      "Centring: each minute that the work is off moves a flank 0.0010 in at the pitch circle; each 0.0050 in that the cutter is off centre, 0.0050 in",
    ]);
  });

  it("and what those of this work come to, rounded upwards", () => {
    expect(said(60, 0)[1]).toBe(
      "Together: 60.0″ of the work put a flank up to 0.0251 mm off: a tooth beside a sound one as much too thin or thick",
    );
    expect(said(0, 0.1)[1]).toMatch(/^Together: a cutter 0\.100 mm off centre put a flank up to 0\.0994 mm off/);
    expect(said(0.5, 0.5)[1]).toMatch(
      /^Together: 0\.5″ of the work and a cutter 0\.500 mm off centre put a flank up to 0\.4\d+ mm/,
    );
  });

  it("an error at the pitch circle is a bound", () => {
    expect(errorAtPitch(60, gear, mm)).toBe("60.0″, 0.0251 mm at the pitch circle");
  });
});

it("how thin is too thin is known by the backlash alone", () => {
  expect(thinItems(repair(), mm)[0]?.text).toBe("not known without the backlash that the pair may have");
  expect(thinItems(repair({ backlash: 0.2001 }), mm)[0]?.text).toBe(
    "more than 0.100 mm lost along the pitch circle gives more backlash than was allowed",
  );
});

describe("teeth in runs", () => {
  it("a run is its first and last, two are both named, one stands alone", () => {
    expect(runsOf([1, 2, 3, 7, 9, 10])).toEqual([
      [1, 3],
      [7, 7],
      [9, 10],
    ]);
    expect([teethInRuns([31]), teethInRuns([31, 32]), teethInRuns([1, 2, 3, 7, 9, 10])]).toEqual([
      "tooth 31",
      "teeth 31, 32",
      "teeth 1–3, 7, 9, 10",
    ]);
    expect([runsOf([]), teethInRuns([3, 2])]).toEqual([[], "teeth 3, 2"]);
  });
});

describe("the places", () => {
  it("are named by the teeth beside them, a built-up one with its mark; after the last tooth comes the first", () => {
    const plan = recutPlan(86, { damaged: [31, 86] });
    expect([30, 31, 85, 86].map((space) => betweenWords(space, plan))).toEqual(["30 | 31*", "31* | 32", "85 | 86*", "86* | 1"]);
  });

  it("say how the list goes on: by the crank, by the spindle's holes, or by marks", () => {
    const onBy = (head: typeof threePlates, divisions: number, by?: "ring") =>
      startWords(planned(head, { divisions }, by === undefined ? {} : { by }).way)
        .replace(/^START: .* its line\./, "")
        .replace(/ \* marks .*/, "");
    expect(onBy(threePlates, 86)).toBe(" Go on by turns + spaces from the line before.");
    expect(onBy(secondHand, 8)).toBe(" Go on by spaces from the line before.");
    expect([onBy(bareTable, 48), onBy(ungeared, 97, "ring")]).toEqual(["", ""]);
  });
});
