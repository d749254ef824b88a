import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkIsHead } from "../../src/head/check-is-head.ts";
import {
  allMethods,
  type Head,
  InputError,
  type Method,
  prove,
  ratio,
  revolutions,
  type UnprovedSetting,
} from "../../src/index.ts";
import type { Act, Motion } from "../../src/mechanism/act.ts";
import { motionOf } from "../../src/mechanism/motion.ts";
import { walk } from "../../src/mechanism/walk.ts";
import { rational } from "../../src/number/ratio.ts";
import { heads, small, teethPerMove } from "../support/arbitraries.ts";
import { type HandWorked, handWorked, oneOfAll } from "../support/hand-worked.ts";
import { closesOnBench } from "../support/mechanism.ts";
import { otherHeads } from "../support/other-heads.ts";
import { ready, twoFaces } from "../support/ready.ts";
import { refusal } from "../support/refusal.ts";
import { takeOfEach } from "../support/take.ts";
import { wrong } from "../support/wrong.ts";
import { wrongMoves } from "../support/wrong-moves.ts";

const cases: readonly HandWorked[] = Object.values(handWorked);
const named = (list: readonly HandWorked[]) => list.map((each) => [each.name, each] as const);
const { simple, direct, dial, compoundWith, onePairAgainst } = handWorked;
const closes = (setting: UnprovedSetting, walkOn: Head) => prove(setting, { walkOn }).closes;

/** The head with other plates. */
const withPlates = (...plates: Head["plates"]): Head => ({ ...oneOfAll, plates });
const oneFace = (name: string, ...circles: number[]) => ({ name, faces: [{ name: null, circles }] });
const twoFaced = (front: number[], back: number[]) => ({
  name: "1",
  faces: [
    { name: "front", circles: front },
    { name: "back", circles: back },
  ],
});

describe("settings worked by hand, walked on a head that has what they take", () => {
  it.each(named(cases))("%s", (_, { setting, head, moves, rounds, crankTurns, pinTurns, plateTurns }) => {
    const proof = { closes: true, shownBy: "walk", moves, rounds, crankTurns, pinTurns, plateTurns };
    expect(prove(setting, { walkOn: head })).toEqual(proof);
    expect(closesOnBench(setting, head)).toBe(true);
  });
});

describe("a pin finds no hole", () => {
  it("where the circle is on another plate than the one named", () => {
    const head = withPlates(oneFace("1", 15, 17), oneFace("2", 21));
    expect(closes(simple.setting, head)).toBe(false);
    expect(closes({ ...simple.setting, plate: "2" }, head)).toBe(true);
    expect(closes({ ...simple.setting, plate: "3" }, head)).toBe(false);
  });

  it("where the circle is on the other face of the plate", () => {
    const head = withPlates(twoFaced([15, 17], [21, 23]));
    expect(closes({ ...simple.setting, face: "front" }, head)).toBe(false);
    expect(closes({ ...simple.setting, face: "back" }, head)).toBe(true);
    expect(closes(simple.setting, head)).toBe(false);
    expect(twoFaces.plates[0]?.faces[0]?.circles).toContain(28);
    const seventh = { ...simple.setting, circle: 28, spaces: 20 };
    expect(closes({ ...seventh, face: "front" }, twoFaces)).toBe(true);
    expect(closes({ ...seventh, face: "back" }, twoFaces)).toBe(false);
  });

  it("of another circle at the same angle, though the pin would stand right: 15 of 21 is 10 of 14", () => {
    const head = withPlates(oneFace("1", 14, 42));
    expect(closes(simple.setting, head)).toBe(false);
    expect(closes({ ...simple.setting, circle: 14, spaces: 10 }, head)).toBe(true);
  });

  it("of the rear circle on another plate, on the other face, or on none", () => {
    expect(closes(compoundWith.setting, withPlates(oneFace("1", 15, 17)))).toBe(true);
    expect(closes(compoundWith.setting, withPlates(oneFace("1", 15), oneFace("2", 17)))).toBe(false);
    expect(closes(compoundWith.setting, withPlates(oneFace("1", 15, 34)))).toBe(false);
    const front = { ...compoundWith.setting, face: "front" };
    expect(closes(front, withPlates(twoFaced([15, 17], [18])))).toBe(true);
    expect(closes(front, withPlates(twoFaced([15], [17])))).toBe(false);
  });

  it("of a circle that is not drilled, though one pin comes back to its hole and the other never leaves its own", () => {
    // 8 = 5 turns, with a second part of no space at all.
    const { setting } = compoundWith;
    const still = { spaces: 0, circle: 17, direction: "with" } as const;
    const eighth = { ...setting, spindlePerMove: revolutions("1/8"), turns: 5, spaces: 0, circle: 15, second: still };
    expect(closes(eighth, oneOfAll)).toBe(true);
    expect(closes({ ...eighth, circle: 37 }, oneOfAll)).toBe(false);
    expect(closes({ ...eighth, second: { ...still, circle: 37 } }, oneOfAll)).toBe(false);
    expect(closes(eighth, { ...oneOfAll, wormRatio: ratio(60) })).toBe(false);
  });

  it("at the back of a head that has no rear pin", () => {
    expect(closes(compoundWith.setting, { ...oneOfAll, rearPin: false })).toBe(false);
    expect(closes(simple.setting, { ...oneOfAll, rearPin: false })).toBe(true);
  });

  it.each([12, 36, 48])("of a direct plate of %i holes, where 24 are counted", (holes) => {
    expect(closes(direct.setting, { ...oneOfAll, directPlates: [{ name: "nose", holes }] })).toBe(false);
    expect(closes(direct.setting, { ...oneOfAll, directPlates: [{ name: "nose", holes: 24 }] })).toBe(true);
    expect(closes(direct.setting, { ...oneOfAll, directPlates: [{ name: "ring", holes: 24 }] })).toBe(false);
  });

  it.each([
    [240, 1],
    [240, 12],
    [360, 6],
    [120, 6],
  ])("of a dial of %i marks and %i vernier lines, where 1440 places are counted", (marksPerTurn, vernierLines) => {
    const { dial: marks, ...table } = ready("ratio-90-dial");
    expect(
      closes(dial.setting, { ...table, dial: { ...wrong<NonNullable<Head["dial"]>>(marks), marksPerTurn, vernierLines } }),
    ).toBe(false);
    expect(closes(dial.setting, { ...table, dial: null })).toBe(false);
    expect(closes(dial.setting, { ...table, dial: marks })).toBe(true);
  });
});

describe("the moves go elsewhere", () => {
  it.each(cases.flatMap((each) => wrongMoves(each).map((move) => ({ ...move, head: each.head }))))(
    "$name",
    ({ setting, head }) => {
      const everyCircle = { ...head, plates: [oneFace("1", ...Array.from({ length: 59 }, (_, index) => index + 2))] };
      expect(closes(setting, everyCircle)).toBe(false);
      expect(closesOnBench(setting, everyCircle)).toBe(false);
    },
  );

  it("with the gears turned the other way they close on another count: 113 for 127", () => {
    const gears = { ...onePairAgainst.setting.gears, direction: "with" as const };
    expect(closes({ ...onePairAgainst.setting, gears }, oneOfAll)).toBe(false);
    expect(closes({ ...onePairAgainst.setting, gears, spindlePerMove: revolutions("1/113") }, oneOfAll)).toBe(true);
    expect(closes({ ...onePairAgainst.setting, spindlePerMove: revolutions("1/113") }, oneOfAll)).toBe(false);
  });

  it.each(named(cases.filter(({ setting }) => setting.plateStopPin === "out")))(
    "with the stop pin left in: %s",
    (_, { setting, head }) => {
      expect(closes(wrong<UnprovedSetting>({ ...setting, plateStopPin: "in" }), head)).toBe(false);
    },
  );

  it.each(named(cases.filter(({ setting }) => setting.method !== "direct")))(
    "on a head with a worm of 60, 80 or 81/2: %s",
    (_, { setting, head }) => {
      for (const wormRatio of ["60", "80", "81/2", "40"].filter((ratio) => ratio !== setting.wormRatio)) {
        expect(closes(setting, { ...head, wormRatio: ratio(wormRatio) })).toBe(false);
      }
    },
  );

  it("is no matter to direct indexing: the worm is out of mesh", () => {
    expect(closes(direct.setting, { ...oneOfAll, wormRatio: ratio(60) })).toBe(true);
  });

  it("of a move that skips divisions: 2 of 8 comes back after 4, with the odd ones left out", () => {
    expect(closes({ ...handWorked.wholeTurns.setting, turns: 10 }, oneOfAll)).toBe(false);
  });

  it("of a move that reaches every division but goes round more often than it says", () => {
    const twice = { ...simple.setting, turns: 11, spaces: 9 };
    expect(closes(twice, oneOfAll)).toBe(false);
    expect(closes({ ...twice, spindlePerMove: revolutions("2/7") }, oneOfAll)).toBe(true);
  });
});

/*
 * The walk is given a motion and a plate and asked whether the pins drop: here a motion that does not
 * fit its setting, as the mechanism would make were its law wrong.
 */
describe("a motion that turns the work rightly, while a pin stands between two holes or the plate has slipped", () => {
  const act = (crank: [number, number], plate: [number, number], spindle: [number, number]): Act => ({
    crank: rational(...crank),
    small: rational(0),
    plate: rational(...plate),
    spindle: rational(...spindle),
  });
  const walks = ({ setting, head }: HandWorked, acts: readonly Act[]) => {
    const [, count = "1"] = setting.spindlePerMove.split("/");
    const motion: Motion = { ...motionOf(setting), acts };
    return walk(setting, motion, rational(1, Number(count)), head);
  };

  it("direct and by dial: the work is right where there is no hole, and no mark", () => {
    const spindle = { ...direct, setting: { ...direct.setting, spindlePerMove: revolutions("1/8") } };
    expect(walks(spindle, [act([0, 1], [0, 1], [1, 8])])).toBe(true);
    expect(
      walks({ ...spindle, setting: { ...direct.setting, spindlePerMove: revolutions("1/7") } }, [act([0, 1], [0, 1], [1, 7])]),
    ).toBe(false);
    expect(walks(dial, [act([90, 64], [0, 1], [1, 64])])).toBe(true);
    expect(
      walks({ ...dial, setting: { ...dial.setting, spindlePerMove: revolutions("1/97") } }, [act([90, 97], [0, 1], [1, 97])]),
    ).toBe(false);
  });

  it("geared: the plate stands still, or turns the other way", () => {
    expect(walks(onePairAgainst, [act([40, 127], [-7, 381], [1, 127])])).toBe(true);
    expect(walks(onePairAgainst, [act([40, 127], [0, 1], [1, 127])])).toBe(false);
    expect(walks(onePairAgainst, [act([40, 127], [7, 381], [1, 127])])).toBe(false);
  });

  it("compound: the plate stays behind, or goes with the first part too", () => {
    const first = act([2, 3], [0, 1], [1, 60]);
    expect(walks(compoundWith, [first, act([2, 17], [2, 17], [1, 340])])).toBe(true);
    expect(walks(compoundWith, [first, act([2, 17], [0, 1], [1, 340])])).toBe(false);
    expect(walks(compoundWith, [act([2, 3], [2, 3], [1, 60]), act([2, 17], [2, 17], [1, 340])])).toBe(false);
  });

  it("compound: after both parts all is well, but after the first neither pin could have dropped", () => {
    const half = act([1, 2], [1, 3], [1, 80]);
    const rest = act([29, 102], [-11, 51], [29, 4080]);
    // 1/2 + 29/102 = 40/51 and 1/3 − 11/51 = 2/17: together the move, apart from it no hole.
    expect(walks(compoundWith, [half, rest])).toBe(false);
  });

  it("simple: the plate goes a whole turn with the crank, past its stop pin", () => {
    expect(walks(simple, [act([40, 7], [0, 1], [1, 7])])).toBe(true);
    expect(walks(simple, [act([47, 7], [1, 1], [1, 7])])).toBe(false);
  });
});

/** Whether it has nothing beyond what a head can have; where it has, it is refused. */
function isHead(head: Head): boolean {
  return refusal(() => checkIsHead(head)).length === 0;
}

describe("laws", () => {
  const smallCrank = fc.option(fc.record({ ratio: fc.integer({ min: 2, max: 12 }), circles: fc.constantFrom([5], [4, 9]) }), {
    nil: undefined,
  });
  const withRearPin = fc.tuple(heads(small), fc.boolean(), smallCrank).map(
    ([head, has, crank]): Head => ({
      ...head,
      rearPin: has || head.rearPin,
      ...(crank !== undefined && head.plates.length > 0 && { smallCrank: crank }),
    }),
  );
  const cases = fc.tuple(withRearPin, fc.integer({ min: 1, max: 90 }), teethPerMove);

  it("every setting found closes when it is walked on its head, and on the bench, some by every method", () => {
    const walked = new Map<Method, number>();
    fc.assert(
      fc.property(cases, ([head, divisions, teeth]) => {
        for (const setting of takeOfEach(4, head, { divisions }, teeth)) {
          expect(prove(setting, { walkOn: head })).toEqual({ ...setting.proof, shownBy: "walk" });
          expect(closesOnBench(setting, head)).toBe(true);
          walked.set(setting.method, (walked.get(setting.method) ?? 0) + 1);
        }
      }),
      { numRuns: 300 },
    );
    for (const method of allMethods) expect(walked.get(method) ?? 0, method).toBeGreaterThan(3);
  });

  it("on any other head it closes just where it does on the bench", () => {
    let [fits, fails] = [0, 0];
    fc.assert(
      fc.property(cases, ([head, divisions, teeth]) => {
        for (const setting of takeOfEach(2, head, { divisions }, teeth)) {
          for (const other of otherHeads(head, setting).filter(isHead)) {
            const there = closesOnBench(setting, other);
            expect(closesOrJams(setting, other)).toBe(there);
            if (there) fits += 1;
            else fails += 1;
          }
        }
      }),
      { numRuns: 300 },
    );
    expect(Math.min(fits, fails)).toBeGreaterThan(100);
  });

  it("set wrongly it closes just where it does on the bench, and for its own count never", () => {
    fc.assert(
      fc.property(cases, ([head, divisions, teeth]) => {
        for (const setting of takeOfEach(1, head, { divisions }, teeth)) {
          for (const wrongly of wrongMoves({ name: "", setting })) {
            expect(closesOrJams(wrongly.setting, head)).toBe(closesOnBench(wrongly.setting, head));
          }
        }
      }),
    );
  });
});

/** A train that jams on another head is refused by the mechanism; on the bench it does not close. */
function closesOrJams(setting: UnprovedSetting, head: Head): boolean {
  try {
    return closes(setting, head);
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
