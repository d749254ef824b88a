import type { Source } from "./source.ts";

const source: Source = {
  title: "Gears: pitch, module, diametral pitch, base pitch",
  publisher: "technical handbook text, published on the web",
  year: "not shown",
  place: "the table of pitches",
};

/** The base pitch of a module in mm, at 14° 30′ and at 20°. */
export const basePitches = {
  source,
  rows: [
    { module: 0.2, circularPitch: 0.62831, at14: 0.6083, at20: 0.5904 },
    { module: 0.3, circularPitch: 0.94248, at14: 0.9125, at20: 0.8856 },
    { module: 0.32, circularPitch: 1.00531, at14: 0.9733, at20: 0.9447 },
    { module: 0.3528, circularPitch: 1.10828, diametralPitch: 72, at14: 1.073, at20: 1.0414 },
    { module: 0.4, circularPitch: 1.25664, at14: 1.2166, at20: 1.1809 },
  ],
} as const;

/** A rule in print whose result is the module in inches, and which calls it diametral pitch: right at 1 DP alone. */
export const reciprocalRule = {
  source: {
    title: "Spur gear formulas",
    publisher: "a maker of gears, published on the web",
    year: "not shown",
    place: "whole page",
  },
  printed: (basePitchInches: number, cosine: number) => basePitchInches / cosine / (31_416 / 10_000),
} as const;

/** Formulas of a training manual, by the letters it uses: teeth, outside and pitch diameters, centre distance. In inches. */
export const navyFormulas = {
  source: {
    title: "Training manual, wide range divider and appendices",
    publisher: "US Navy",
    year: "not shown",
    place: "appendices III and IV",
  },
  pitchFromOutside: (teeth: number, outside: number) => (teeth + 2) / outside,
  pitchDiameter: (teeth: number, pitch: number) => teeth / pitch,
  centres: (gear: number, pinion: number) => (gear + pinion) / 2,
} as const;
