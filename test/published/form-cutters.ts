import type { Source } from "./source.ts";

const source: Source = {
  title: "Practical Treatise on Milling and Milling Machines",
  publisher: "Brown & Sharpe Mfg. Co., Providence R.I.",
  year: "not shown on the pages read",
  place: "p. 149",
};

/** Form cutters for gear teeth by number and range of teeth; null is the rack. */
export const formCutterRanges = {
  source,
  whole: [
    { cutter: "1", min: 135, max: null },
    { cutter: "2", min: 55, max: 134 },
    { cutter: "3", min: 35, max: 54 },
    { cutter: "4", min: 26, max: 34 },
    { cutter: "5", min: 21, max: 25 },
    { cutter: "6", min: 17, max: 20 },
    { cutter: "7", min: 14, max: 16 },
    { cutter: "8", min: 12, max: 13 },
  ],
  half: [
    { cutter: "1 1/2", min: 80, max: 134 },
    { cutter: "2 1/2", min: 42, max: 54 },
    { cutter: "3 1/2", min: 30, max: 34 },
    { cutter: "5 1/2", min: 19, max: 20 },
    { cutter: "6 1/2", min: 15, max: 16 },
  ],
  /** The diametral pitches that half numbers are printed for, both ends included. */
  halfPitches: { least: 2, most: 8 },
  /** Printed so; it overlaps cutter 4 and breaks the pattern of all the others, so it is not to be agreed with. */
  suspect: { cutter: "4 1/2", min: 23, max: 35 },
} as const;
