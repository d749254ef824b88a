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

/** The single pitch deviation of grade 5, 0.3(m + 0.4√d) + 4 µm, worked by hand for one gear. */
export const pitchDeviation = {
  source: memory("ISO 1328-1, Cylindrical gears: ISO system of accuracy, part 1", "1995"),
  module: 2,
  diameterMm: 100,
  grade: 5,
  micrometres: 5.8,
} as const;
