import type { Source } from "./source.ts";

const factors: Source = {
  title: "Hexagons and squares: diagonal lengths",
  publisher: "engineering tables, published on the web",
  year: "not shown",
  place: "whole page",
};

/** Across corners for one across flats. */
export const acrossCorners = {
  source: factors,
  rows: [
    { sides: 6, factor: "1.154701" },
    { sides: 4, factor: "1.4142" },
  ],
} as const;

/** Across the flats of a hexagon, in sides. */
export const hexagonBySide = {
  source: {
    title: "Hexagonal nut",
    publisher: "school exercise, published on the web",
    year: "not shown",
    place: "question 1815107",
  },
  factor: 1.732,
} as const;

/**
 * Across the flats of an octagon over 2 + √2 is what is taken off each corner of a square. The print has 3.1414 for that
 * sum, a slip for 3.4142.
 */
export const octagonFromSquare = {
  source: { title: "Hexagons and octagons", publisher: "woodworkers' list", year: "not shown", place: "message 2852" },
  printed: 3.1414,
} as const;
