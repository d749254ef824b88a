import { checkAngle, checkAngleFromZero } from "../number/angle.ts";
import { refuse } from "../number/errors.ts";
import { fromExact, type Revolutions, rational } from "../number/ratio.ts";
import { checkDivisions, mostDivisions } from "../setting/target.ts";

/** A count that an angle read by eye could mean. */
export interface PossibleCount {
  readonly divisions: number;
  /**
   * How many teeth to measure over, with the same eye, to tell this count from the next one
   * listed; null for the last. Null too where it would take more than the whole wheel.
   */
  readonly teethToTellFromNext: number | null;
}

const mostCounts = 10_000;

/**
 * The counts that an angle read by eye, over one tooth or several, could mean.
 *
 * A reading a ± e over k teeth covers every count N with a − e ≤ k·360°/N ≤ a + e. Over m teeth the
 * wheel turns m/N, read with the same ± e, so N and N + 1 are told apart once m/N − m/(N + 1) is
 * more than 2e: m > 2e·N·(N + 1), with e in revolutions. Common practice, no source: 2.9° read to
 * ± 0.05° means 123, 124, 125 or 126.
 *
 * @param angle - The angle read, in revolutions.
 * @param uncertainty - How far off the reading may be either way, in revolutions; 0 or more.
 * @param teeth - How many teeth the angle was read over.
 * @throws {@link InputError} when `teeth` is not a whole number above 0, when the angle is not above
 * the uncertainty, or over 10,000 counts fit.
 *
 * @example
 * ```ts
 * countsFromAngle(parseAngle("4.2°"), parseAngle("0.03°")).map(({ divisions }) => divisions); // [86]
 * ```
 */
export function countsFromAngle(angle: Revolutions, uncertainty: Revolutions, teeth = 1): readonly PossibleCount[] {
  const read = fromExact(checkAngle(angle));
  const either = checkAngleFromZero(uncertainty, "uncertainty");
  if (either.compare(read) >= 0)
    refuse(
      "out-of-range",
      "uncertainty",
      "it is as large as the angle itself, so any count would fit; read the angle over more teeth",
    );
  const over = checkDivisions(teeth, "teeth");
  const least = Number(read.add(either).inverse().mul(over).ceil());
  const most = Math.min(mostDivisions, Number(read.sub(either).inverse().mul(over).floor()));
  if (most - least >= mostCounts)
    refuse("too-many", "uncertainty", "it lets over 10,000 counts fit; read the angle over more teeth");
  return Array.from({ length: Math.max(0, most - least + 1) }, (_, index) => {
    const divisions = least + index;
    const toTell =
      Number(
        either
          .mul(2)
          .mul(divisions)
          .mul(rational(divisions + 1))
          .floor(),
      ) + 1;
    return { divisions, teethToTellFromNext: divisions === most || toTell > divisions ? null : toTell };
  });
}
