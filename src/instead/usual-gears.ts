/**
 * Sizes found in most sets of change gears: those of dividing heads, by fours and eights with 86 and
 * 100, and those of lathes, by fives with 127. Common practice, no source.
 */
export const usualGears: readonly number[] = [
  ...[24, 28, 32, 36, 40, 44, 48, 56, 64, 72, 86, 100],
  ...[20, 25, 30, 35, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 105, 110, 115, 120, 127],
].sort((a, b) => a - b);
