import type { Source } from "./source.ts";

/** The table that these rows are of. */
export const source: Source = {
  title: "Machinery's Handbook, 27th edition",
  publisher: "Industrial Press, New York",
  year: "2004",
  place: "p. 1995, parts of a turn by one or two circles",
};

/**
 * A part of one crank turn as printed, with the moves that make it.
 *
 * Rows of one term are exact fractions printed to four places; rows of two terms come near the
 * printed decimal. Column A lies on plates 15–20, 21–33, 37–49; column B on the faces 24–43, 46–66.
 * The row for 0.2080 was cut in the middle and is left out.
 */
export interface PartOfTurn {
  readonly part: string;
  readonly column: "A" | "B";
  readonly first: readonly [spaces: number, circle: number];
  readonly second?: readonly [sign: "+" | "-", spaces: number, circle: number];
}

export const partsOfTurn: readonly PartOfTurn[] = [
  { part: "0.1910", column: "A", first: [17, 39], second: ["-", 12, 49] },
  { part: "0.1915", column: "A", first: [9, 47] },
  { part: "0.1920", column: "A", first: [7, 41], second: ["+", 1, 47] },
  { part: "0.1930", column: "B", first: [11, 57] },
  { part: "0.1930", column: "B", first: [19, 59], second: ["-", 8, 62] },
  { part: "0.1935", column: "B", first: [12, 62] },
  { part: "0.1940", column: "B", first: [14, 43], second: ["-", 5, 38] },
  { part: "0.1950", column: "B", first: [8, 25], second: ["-", 3, 24] },
  { part: "0.1951", column: "B", first: [8, 41] },
  { part: "0.1960", column: "A", first: [21, 49], second: ["-", 10, 43] },
  { part: "0.1961", column: "B", first: [10, 51] },
  { part: "0.1970", column: "A", first: [21, 39], second: ["-", 14, 41] },
  { part: "0.1980", column: "A", first: [2, 29], second: ["+", 4, 31] },
  { part: "0.1990", column: "A", first: [5, 37], second: ["+", 3, 47] },
  { part: "0.2000", column: "A", first: [3, 15] },
  { part: "0.2000", column: "A", first: [4, 20] },
  { part: "0.2010", column: "A", first: [11, 39], second: ["-", 3, 37] },
  { part: "0.2020", column: "A", first: [23, 41], second: ["-", 14, 39] },
  { part: "0.2030", column: "A", first: [2, 37], second: ["+", 7, 47] },
  { part: "0.2034", column: "B", first: [12, 59] },
  { part: "0.2040", column: "A", first: [12, 47], second: ["-", 2, 39] },
  { part: "0.2041", column: "A", first: [10, 49] },
  { part: "0.2050", column: "A", first: [13, 37], second: ["-", 6, 41] },
  { part: "0.2051", column: "A", first: [8, 39] },
  { part: "0.2059", column: "B", first: [7, 34] },
  { part: "0.2060", column: "B", first: [12, 53], second: ["-", 1, 49] },
  { part: "0.2069", column: "B", first: [12, 58] },
  { part: "0.2070", column: "B", first: [19, 41], second: ["-", 10, 39] },
  { part: "0.2222", column: "A", first: [4, 18] },
  { part: "0.2222", column: "B", first: [12, 54] },
  { part: "0.2230", column: "B", first: [11, 46], second: ["-", 1, 62] },
  { part: "0.2240", column: "B", first: [15, 38], second: ["-", 7, 41] },
  { part: "0.2245", column: "A", first: [11, 49] },
  { part: "0.2250", column: "A", first: [2, 16], second: ["+", 2, 20] },
  { part: "0.2258", column: "A", first: [7, 31] },
  { part: "0.2260", column: "A", first: [7, 39], second: ["+", 2, 43] },
  { part: "0.2264", column: "B", first: [12, 53] },
  { part: "0.2270", column: "B", first: [14, 54], second: ["-", 2, 62] },
  { part: "0.2280", column: "A", first: [11, 39], second: ["-", 2, 37] },
  { part: "0.2281", column: "B", first: [13, 57] },
  { part: "0.2290", column: "B", first: [29, 51], second: ["-", 18, 53] },
  { part: "0.2300", column: "B", first: [12, 25], second: ["-", 6, 24] },
  { part: "0.2308", column: "B", first: [9, 39] },
  { part: "0.2310", column: "B", first: [26, 59], second: ["-", 13, 62] },
  { part: "0.2320", column: "B", first: [26, 57], second: ["-", 13, 58] },
  { part: "0.2326", column: "B", first: [10, 43] },
  { part: "0.2330", column: "B", first: [25, 62], second: ["-", 8, 47] },
  { part: "0.2340", column: "A", first: [24, 41], second: ["-", 13, 37] },
  { part: "0.2340", column: "A", first: [11, 47] },
  { part: "0.2350", column: "A", first: [11, 27], second: ["-", 5, 29] },
  { part: "0.2353", column: "A", first: [4, 17] },
  { part: "0.2353", column: "B", first: [12, 51] },
  { part: "0.2360", column: "B", first: [29, 66], second: ["-", 12, 59] },
  { part: "0.2370", column: "A", first: [23, 37], second: ["-", 15, 39] },
  { part: "0.2373", column: "B", first: [14, 59] },
  { part: "0.2380", column: "B", first: [34, 57], second: ["-", 19, 53] },
];
