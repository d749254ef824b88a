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
  planetary: 100,
  smallPlate: [100, 54],
  largeFaces: [
    [24, 28, 30, 34, 37, 38, 39, 41, 42, 43, 100],
    [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66],
  ],
  arcPerTurn: "0°5'24\"",
  mostDivisions: 400_000,
  source,
} as const;
