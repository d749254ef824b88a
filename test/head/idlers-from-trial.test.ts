import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { idlersFromTrial } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

/** Which way a train turns the plate: every mesh turns it round, on a head that does so once more or not. */
function turned(pairs: number, idlers: number, once: boolean): "with" | "against" {
  // From the spindle each pair is a mesh, and each idler one more; the gears of a stud between two pairs turn together.
  const meshes = pairs + idlers + (once ? 1 : 0);
  return meshes % 2 === 0 ? "with" : "against";
}

describe("idlers from a trial", () => {
  it("turn the plate with the crank in any train of any head, and one more against it", () => {
    fc.assert(
      fc.property(fc.constantFrom(1, 2), fc.nat(3), fc.boolean(), (pairs, idlers, once) => {
        const found = idlersFromTrial({ pairs: pairs as 1 | 2, idlers, plateTurned: turned(pairs, idlers, once) });
        expect([turned(1, found.onePair, once), turned(2, found.twoPairs, once)]).toEqual(["with", "with"]);
        expect([turned(1, found.onePair + 1, once), turned(2, found.twoPairs + 1, once)]).toEqual(["against", "against"]);
        expect(Math.max(found.onePair, found.twoPairs)).toBeLessThan(2);
      }),
    );
  });

  it("of a common head are one and none", () => {
    // Common practice, no source: one pair with one idler turns the plate with the crank.
    expect(idlersFromTrial({ pairs: 1, idlers: 1, plateTurned: "with" })).toEqual({ onePair: 1, twoPairs: 0 });
  });

  it.each([
    [{ pairs: 3, idlers: 0, plateTurned: "with" }, "pairs: 3 is not a number of pairs of gears; give 1 or 2"],
    [{ pairs: 1, idlers: 4, plateTurned: "with" }, "idlers: 4 is not a number of idlers; give 0 to 3"],
    [{ pairs: 1, idlers: 0.5, plateTurned: "with" }, "idlers: 0.5 is not a number of idlers"],
    [{ pairs: 1, idlers: 0, plateTurned: "forward" }, 'plateTurned: "forward" is neither "with" nor "against"'],
    [null, "trial: null is not an object"],
  ])("refuses %j", (trial, why) => {
    expect(refusalLines(() => idlersFromTrial(trial as never)).join("\n")).toContain(why);
  });
});
