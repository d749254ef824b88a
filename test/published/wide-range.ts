import type { Source } from "./source.ts";

const source: Source = {
  title: "Training manual, document 14345 (title not shown on the pages read)",
  publisher: "US Navy",
  year: "not shown",
  place: "ch. 7, wide range divider, figs. 7-19 and 7-20",
};

/** A 40:1 head whose small crank goes through another 100:1. */
export const wideRange = {
  smallCrankRatio: 4000,
  smallPlate: [100, 54],
  arcPerTurn: "0°5'24\"",
  mostDivisions: 400_000,
  source,
} as const;
