import type { Source } from "./source.ts";

const handbook: Source = {
  title: "Machinery's Handbook, 1916 edition",
  publisher: "Industrial Press",
  year: "1916",
  place: "indexing for angles (read in an excerpt, page number not shown)",
};

const college: Source = {
  title: "Machine Shop 4, Advanced Milling Operations: Angular Indexing",
  publisher: "Fox Valley Technical College",
  year: "not shown",
  place: "angular indexing, course page",
};

/** Angles in degrees with their moves, 40:1: a turn of the crank is 9 degrees. */
export const angles = [
  { degrees: "1", turns: 0, spaces: 2, circle: 18, source: handbook },
  { degrees: "1", turns: 0, spaces: 3, circle: 27, source: handbook },
  { degrees: "35", turns: 3, spaces: 16, circle: 18, source: handbook },
  { degrees: "23/2", turns: 1, spaces: 5, circle: 18, source: handbook },
  { degrees: "1/2", turns: 0, spaces: 1, circle: 18, source: handbook },
  { degrees: "1/3", turns: 0, spaces: 1, circle: 27, source: handbook },
  { degrees: "45", turns: 5, spaces: 0, circle: null, source: college },
  { degrees: "19", turns: 2, spaces: 6, circle: 54, source: college },
] as const;

/** 8° 50′ is 530 of the 540 minutes of a turn; only the lowest terms were read. */
export const eightFifty = { angle: "8°50'", denominator: 54, source: college } as const;

/** The angle of one hole of a direct plate. */
export const directHole = { holes: 24, degrees: "15", source: college } as const;
