import type { CheckedMeasures, Fragment, Measures } from "./gear-measures.ts";

/** One whose height tells the count. */
interface TellingFragment extends Fragment {
  readonly height: number;
}

/** How far off a height over a chord may be measured either way, in mm; our own choice. */
const heightWithin = 0.15;
const fewestTeeth = 4;
/** Of a flat piece nearly any count fits; our own choice. */
const mostCounts = 15;

/**
 * The diameter of the circle that the tips of a fragment lie on, where the count is known.
 *
 * The law: chord = d·sin(π·k/N), k teeth on. It needs no height, and so is as good as the chord.
 */
export function diameterOver({ chord, pitches }: Fragment, teeth: number): number {
  return chord / Math.sin((Math.PI * pitches) / teeth);
}

/** How high the tip circle rises over the chord of a fragment, where the count is known: c/2 · tan(π·k/2N). */
export function heightOver({ chord, pitches }: Fragment, teeth: number): number {
  return (chord / 2) * Math.tan((Math.PI * pitches) / (2 * teeth));
}

/**
 * The counts that a fragment could be of, the likeliest first.
 *
 * The law: d = c²/4h + h, and N = π·k/asin(c/d), which is π·k/(2·atan(2h/c)).
 */
function countsFromFragment({ chord, pitches, height }: TellingFragment): readonly number[] {
  const countAt = (h: number) => (Math.PI * pitches) / (2 * Math.atan((2 * h) / chord));
  const likeliest = countAt(height);
  // No more is half of a gear, or less than two teeth a turn.
  const least = Math.max(fewestTeeth, 2 * pitches, countAt(height + heightWithin));
  const most = height > heightWithin ? countAt(height - heightWithin) : Number.POSITIVE_INFINITY;
  const first = Math.max(Math.ceil(least), Math.round(likeliest) - mostCounts);
  return Array.from({ length: 2 * mostCounts + 1 }, (_, index) => first + index)
    .filter((count) => count <= most || count === first)
    .sort((one, other) => Math.abs(one - likeliest) - Math.abs(other - likeliest))
    .slice(0, mostCounts);
}

/** The measures for each count that the gear could have: where it is not given, a fragment with its height tells it. */
export function measuresByCount({ teeth, ...given }: CheckedMeasures): readonly Measures[] {
  const counts = teeth === undefined ? countsFromFragment(given.fragment as TellingFragment) : [teeth];
  return counts.map((count) => ({ ...given, teeth: count }));
}
