import type { Source } from "./source.ts";

/** No page was at hand; each row agrees with g = R(A − N)/A for the assumed count A named. */
export const source: Source = {
  title: "the usual shop table of simple and differential indexing, 40:1",
  publisher: "from memory",
  year: "not known",
  place: "from memory",
};

/** One pair on the spindle and the worm; one idler with the crank, two against it. */
export const onePair = [
  { divisions: 57, assumed: 56, spaces: 15, circle: 21, spindle: 40, worm: 56, idlers: 2 },
  { divisions: 61, assumed: 60, spaces: 26, circle: 39, spindle: 32, worm: 48, idlers: 2 },
  { divisions: 71, assumed: 72, spaces: 10, circle: 18, spindle: 40, worm: 72, idlers: 1 },
  { divisions: 73, assumed: 70, spaces: 12, circle: 21, spindle: 48, worm: 28, idlers: 2 },
  { divisions: 97, assumed: 100, spaces: 8, circle: 20, spindle: 48, worm: 40, idlers: 1 },
  { divisions: 127, assumed: 120, spaces: 13, circle: 39, spindle: 56, worm: 24, idlers: 2 },
] as const;

/** Two pairs on a stud. */
export const twoPairs = [
  { divisions: 53, assumed: 56, spaces: 35, circle: 49, spindle: 72, secondOnStud: 24, firstOnStud: 40, worm: 56, idlers: 0 },
] as const;
