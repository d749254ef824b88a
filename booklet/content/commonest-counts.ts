/**
 * The thirty counts that shops divide by most: common practice, no source. All small counts, those of
 * bolt circles and dials, of hexagons and squares, of clock wheels and change gears.
 */
export const commonestCounts: readonly number[] = [
  2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18, 20, 21, 22, 24, 25, 28, 30, 32, 36, 40, 45, 48, 50, 60,
];
