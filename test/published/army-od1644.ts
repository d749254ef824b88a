import type { Source } from "./source.ts";

const source: Source = {
  title: "Milling Machine Operations, OD1644, Lesson 1/Task 1",
  publisher: "US Army, Ordnance correspondence course",
  year: "not shown on the pages read",
  place: "pp. 22–27, indexing",
};

/** The two sides of the plate; 40:1, a single-thread worm and a wheel of 40. */
export const plate = {
  wormRatio: 40,
  first: [24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43],
  second: [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66],
  source,
} as const;

/** Moves of 40/N turns. The 18 and 21 circles of the examples are not on the plate listed beside them. */
export const moves = [
  { divisions: 8, turns: 5, spaces: 0, circle: null, source },
  { divisions: 6, turns: 6, spaces: 12, circle: 18, source },
  { divisions: 6, turns: 6, spaces: 26, circle: 39, source },
  { divisions: 42, turns: 0, spaces: 40, circle: 42, source },
  { divisions: 42, turns: 0, spaces: 20, circle: 21, source },
] as const;

/** A move printed as turns and a fraction. */
export const fourteen = { divisions: 14, turns: 2, fraction: "6/7", source } as const;
