import fc from "fast-check";
import {
  defineHead,
  exactSettings,
  type Head,
  indexDivisions,
  readyHeads,
  revolutions,
  type Setting,
  type ZeroOptions,
} from "../../src/index.ts";
import { counts, heads, small } from "./arbitraries.ts";

export const head40 = readyHeads[0] as Head;
export const secondHand = defineHead({
  wormRatio: 40,
  plates: [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }],
  directPlates: [{ name: "nose", holes: 24 }],
  rearPin: true,
  ring: { marksPerTurn: 360 },
});

/** The preferred setting. */
export const best = (divisions: number, head: Head = head40, options = {}) =>
  indexDivisions(head, divisions, options).settings[0] as Setting;

/** Settings of heads of every kind, no more than some of each. */
export const settings: fc.Arbitrary<Setting> = fc
  .tuple(heads(small), counts, fc.integer({ min: 0, max: 12 }))
  .map(([head, divisions, which]) => {
    let found: Setting | null = null;
    let index = 0;
    for (const setting of exactSettings(head, { divisions }, { teethPerMove: 5 })) {
      found = setting;
      if (index === which) break;
      index += 1;
    }
    return found;
  })
  .filter((setting) => setting !== null);

/** How positions may lie against the zero of the scales. */
export const zeros: fc.Arbitrary<ZeroOptions> = fc.record(
  {
    side: fc.constantFrom("plus", "minus"),
    startAngle: fc.tuple(fc.integer({ min: 0, max: 719 }), fc.integer({ min: 1, max: 720 })).map(([n, d]) => revolutions(n, d)),
  },
  { requiredKeys: [] },
);
