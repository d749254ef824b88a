import fc from "fast-check";
import {
  defineHead,
  exactSettings,
  type Head,
  indexAngle,
  indexDivisions,
  parseAngle,
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
const oddRatio = defineHead({ wormRatio: "81/2", plates: [{ name: "1", circles: [15, 18, 20, 27] }] });

/** The preferred setting. */
export const best = (divisions: number, head: Head = head40, options = {}) =>
  indexDivisions(head, divisions, options).settings[0] as Setting;

/** One of every kind. */
export const known: readonly { readonly name: string; readonly setting: Setting }[] = [
  { name: "86, simple", setting: best(86) },
  { name: "8, whole turns, any circle", setting: best(8) },
  { name: "127, differential with one pair", setting: best(127) },
  { name: "1000, differential with two pairs", setting: best(1000) },
  { name: "69, compound, the second part back", setting: best(69, head40, { methods: ["compound"] }) },
  { name: "96, compound, both parts on", setting: best(96, head40, { methods: ["compound"] }) },
  { name: "383, four teeth per move", setting: best(383) },
  { name: "8, direct", setting: best(8, secondHand) },
  { name: "27, simple on a ratio of 81:2", setting: best(27, oddRatio) },
  { name: "1", setting: best(1) },
  { name: "2°54'", setting: indexAngle(head40, parseAngle("2°54'")).settings[0] as Setting },
];

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
