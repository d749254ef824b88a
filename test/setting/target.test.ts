import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexDivisions, parseAngle, revolutions } from "../../src/index.ts";
import { checkDivisions, checkTarget, checkTeethPerMove, firstMove, movesFor } from "../../src/setting/target.ts";
import { counts } from "../support/arbitraries.ts";
import { ready } from "../support/ready.ts";
import { refusalKinds, refusalLines } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

describe("the moves that serve a target", () => {
  it("are of a count those that reach every division: teeth coprime with it, below it, the fewest first", () => {
    fc.assert(
      fc.property(counts, fc.integer({ min: 1, max: 30 }), (divisions, most) => {
        const reached = (teeth: number) => new Set(Array.from({ length: divisions }, (_, move) => (move * teeth) % divisions));
        const serving = Array.from({ length: most }, (_, index) => index + 1).filter(
          (teeth) => teeth === 1 || (teeth < divisions && reached(teeth).size === divisions),
        );
        expect(movesFor({ divisions }, most)).toEqual(serving.map((teeth) => ({ divisions, teeth })));
      }),
    );
  });

  it("are of an angle p/q one: p of q divisions, however many teeth may be tried", () => {
    expect(movesFor({ angle: parseAngle("2°54'") }, 12)).toEqual([{ divisions: 3600, teeth: 29 }]);
    expect(movesFor({ angle: revolutions("7/2") }, 12)).toEqual([{ divisions: 2, teeth: 7 }]);
    expect(movesFor({ angle: revolutions("2") }, 1)).toEqual([{ divisions: 1, teeth: 2 }]);
  });

  it("begin with the first move", () => {
    for (const target of [{ divisions: 1 }, { divisions: 97 }, { angle: revolutions("29/3600") }]) {
      expect(movesFor(target, 12)[0]).toEqual(firstMove(target));
    }
  });
});

describe("how far a question may go", () => {
  it("a count from 1 to 10,000,000, both ends included, and whole", () => {
    expect([1, 10_000_000].map((count) => checkDivisions(count))).toEqual([1, 10_000_000]);
    for (const [count, code] of [
      [0, "out-of-range"],
      [-7, "out-of-range"],
      [10_000_001, "out-of-range"],
      [1.5, "unreadable"],
      ["7", "unreadable"],
      [Number.NaN, "unreadable"],
    ])
      expect(
        refusalKinds(() => checkDivisions(count)),
        String(count),
      ).toEqual([`${code} divisions`]);
  });

  it("1 to 1,000 teeth per move, both ends included, and whole; 12 when nothing else is asked", () => {
    expect([1, 1000].map((teeth) => checkTeethPerMove(teeth))).toEqual([1, 1000]);
    for (const teeth of [0, -1, 1001])
      expect(refusalKinds(() => checkTeethPerMove(teeth))).toEqual(["out-of-range teethPerMove"]);
    for (const teeth of [2.5, "3", null])
      expect(refusalKinds(() => checkTeethPerMove(teeth))).toEqual(["unreadable teethPerMove"]);
    const ungeared = ready("ratio-40-plates-15-49-ungeared");
    expect(indexDivisions(ungeared, 997).impossible?.teethPerMoveTried).toBe(12);
  });
});

describe("a target that is refused", () => {
  const refused = (target: unknown) => refusalLines(() => checkTarget(wrong(target)));

  it("is a count and an angle at once", () => {
    expect(refused({ divisions: 7, angle: "1/7" })).toEqual([
      "target: a count and an angle are both given; give one of divisions and angle",
    ]);
  });

  it("is neither", () => {
    expect(refused({})).toEqual(["target: neither a count nor an angle is given; give one of divisions and angle"]);
    expect(refused({ divisions: 7, teeth: 2 })).toEqual(['target: there is no key "teeth"; the keys are divisions, angle']);
    for (const target of [null, 7, "7"]) expect(refused(target)).toHaveLength(1);
  });

  it("is no count, or no angle", () => {
    expect(refused({ divisions: 0 })).toEqual([
      "divisions: 0 is not a count of divisions; give a whole number from 1 to 10,000,000",
    ]);
    expect(refused({ angle: "0" })).toEqual(['angle: "0" is no angle to move by; give one above 0']);
  });
});
