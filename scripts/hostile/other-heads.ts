import { defineHead, type Head } from "../../src/index.ts";

/** 40 × 100 turns, with a circle for each crank. */
export const twoCranks: Head = defineHead({
  wormRatio: 40,
  plates: [{ name: "large", circles: [42, 49, 100] }],
  smallCrank: { ratio: 100, circles: [54, 100] },
});

/** Set by what is on its spindle: a plate with a row of holes, a gear, a ring. */
export const noCrank: Head = defineHead({
  wormRatio: null,
  directPlates: [
    { name: "plate", holes: 36, vernierHoles: 10 },
    { name: "gear", holes: 56, form: "gear" },
  ],
  ring: { marksPerTurn: 360 },
});
