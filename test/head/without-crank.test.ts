import { describe, expect, it } from "vitest";
import { checkHead, defineHead, type HeadSpec, wormRatioOf } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";
import { byDegrees, byRing } from "../support/without-crank.ts";

const define = (spec: object) => () => defineHead({ wormRatio: null, ...spec } as HeadSpec);
const nose = [{ name: "nose", holes: 24 }];

describe("a head without a crank", () => {
  it("has no worm ratio, a name and an id that say so, and reads itself back", () => {
    const head = defineHead({ wormRatio: null, directPlates: nose });
    expect(head).toMatchObject({ wormRatio: null, id: "no-crank", name: "Head without a crank", directPlates: nose });
    for (const each of [head, byDegrees, byRing]) expect(defineHead(JSON.parse(JSON.stringify(each)))).toEqual(each);
  });

  it("is asked for its worm ratio in vain", () => {
    expect(refusalLines(() => wormRatioOf(byDegrees))).toEqual([
      "head: has no crank, and so no worm ratio; give a head that has one",
    ]);
  });

  it.each<[string, object, readonly string[]]>([
    [
      "nothing to be set by",
      {},
      [
        "directPlates: there are none, nor a ring, so no place can be set; list the plates, collars or gears on the spindle, or its ring",
      ],
    ],
    [
      "a dial, which is on a handwheel",
      { directPlates: nose, dial: { marksPerTurn: 40 } },
      ["dial: goes with a crank; give a worm ratio, or leave it out"],
    ],
    [
      "index plates and gears",
      {
        directPlates: nose,
        plates: [{ name: "1", circles: [20] }],
        gears: [24, 48],
        rearPin: true,
        mounted: "1",
        idlers: [],
        wormErrorArcSeconds: 20,
      },
      ["plates", "rearPin", "gears", "idlers", "gearing", "mounted", "wormErrorArcSeconds"].map(
        (place) => `${place}: goes with a crank; give a worm ratio, or leave it out`,
      ),
    ],
    [
      "a form that is none",
      { directPlates: [{ ...nose[0], form: "ring" }] },
      ['directPlates[0].form: there is no form "ring"; give collar, detents or gear, or leave it out for a plate with holes'],
    ],
    [
      "a row of one hole",
      { directPlates: [{ ...nose[0], vernierHoles: 1 }] },
      ["directPlates[0].vernierHoles: 1 is not a whole number from 2 to 60"],
    ],
  ])("is refused with %s", (_, spec, lines) => {
    expect(refusalLines(define(spec))).toEqual(lines);
    expect(checkHead({ wormRatio: null, ...spec }).ok).toBe(false);
  });
});
