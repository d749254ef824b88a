import type { Source } from "./source.ts";

const memory = (title: string, year: string): Source => ({
  title,
  publisher: "International Organization for Standardization",
  year,
  place: "from memory",
});

/** Modules in mm from 1 mm upwards. */
export const isoModules = {
  source: memory("ISO 54, Cylindrical gears: modules", "not known"),
  seriesOne: [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50],
  seriesTwo: [1.125, 1.375, 1.75, 2.25, 2.75, 3.5, 4.5, 5.5, 6.5, 7, 9, 11, 14, 18, 22, 28, 36, 45],
} as const;

/** Modules beside those of ISO 54, as other national standards had them for a second or third choice. */
export const modulesBesides = {
  source: {
    title: "Second and third choice of modules",
    publisher: "national standards bodies",
    year: "not known",
    place: "from memory",
  },
  modules: [0.65, 0.85, 0.95, 3.25, 3.75, 4.25, 4.75, 5.25, 5.75],
} as const;

/** Pitches met in the trade that no standard at hand lists: those preferred, then those met less often. */
export const customaryPitches = {
  source: { title: "Pitches of gears in the shop", publisher: "none", year: "not known", place: "common practice, no source" },
  finestModules: [
    [0.2, 0.3, 0.4, 0.5, 0.6, 0.8],
    [0.25, 0.35, 0.45, 0.55, 0.7, 0.75, 0.9],
  ],
  diametral: [
    [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24, 32, 48, 64, 80, 96],
    [1.75, 2.25, 2.75, 3.5, 7, 9, 11, 22, 26, 28, 30, 36, 40, 60, 72, 120],
  ],
  /** In inches. */
  circular: [
    ...["1/8", "3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "11/16", "3/4", "13/16", "7/8", "15/16", "1"],
    ...["1 1/8", "1 1/4", "1 3/8", "1 1/2", "1 3/4", "2"],
  ],
} as const;

/** The single pitch deviation of grade 5, 0.3(m + 0.4√d) + 4 µm, worked by hand for one gear. */
export const pitchDeviation = {
  source: memory("ISO 1328-1, Cylindrical gears: ISO system of accuracy, part 1", "1995"),
  module: 2,
  diameterMm: 100,
  grade: 5,
  micrometres: 5.8,
} as const;

/** The total cumulative pitch deviation of grade 5, 0.3m + 1.25√d + 7 µm, worked by hand for one gear. */
export const totalDeviation = {
  source: memory("ISO 1328-1, Cylindrical gears: ISO system of accuracy, part 1", "1995"),
  module: 2,
  diameterMm: 100,
  grade: 5,
  micrometres: 20.1,
} as const;
