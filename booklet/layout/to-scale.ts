import { mm } from "./paper.ts";

/** How large a thing is drawn. */
export interface DrawnScale {
  readonly pointsPerMm: number;
  /** As a drawing has it: `2 : 1`, `1 : 5`. */
  readonly says: string;
}

/**
 * The largest scale in which a thing fits its room, of those that are easily reckoned with: whole numbers to one, one to
 * a number in halves, and 1.5 : 1. What is drawn can then be measured.
 *
 * @param size - In mm.
 * @param room - In points.
 */
export function scaleToFit(size: number, room: number): DrawnScale {
  const times = room / mm(size);
  if (times >= 1) {
    const larger = times >= 2 || times < 1.5 ? Math.floor(times) : 1.5;
    return { pointsPerMm: mm(larger), says: `${larger} : 1` };
  }
  const parts = Math.ceil(2 / times) / 2;
  return { pointsPerMm: mm(1 / parts), says: `1 : ${parts}` };
}
