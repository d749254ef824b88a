import type { Source } from "./source.ts";

const source: Source = {
  title: "Encoder eccentricity",
  publisher: "engineering article, published on the web",
  year: "not shown",
  place: "numerical examples",
};

/** By how many arc-seconds a plate or scale reads wrong that is mounted off centre: e/R. */
export const offCentre = {
  source,
  rows: [
    { diameterMm: 100, micrometres: 10, arcSeconds: 41 },
    { diameterMm: 100, micrometres: 100, arcSeconds: 412 },
    { diameterMm: 25, micrometres: 10, arcSeconds: 165 },
    { diameterMm: 25, micrometres: 5, arcSeconds: 83 },
  ],
} as const;
