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
  if (times >= 1) return enlarged(times >= 2 || times < 1.5 ? Math.floor(times) : 1.5);
  return reduced(Math.ceil(2 / times) / 2);
}

/** The smallest of them in which a thing is not drawn smaller than it may be. */
export function scaleToShow(size: number, least: number): DrawnScale {
  const times = least / mm(size);
  return times > 0.5 ? enlarged(Math.ceil(times)) : reduced(Math.floor(2 / times) / 2);
}

/** True size. */
export const trueSize: DrawnScale = enlarged(1);

function enlarged(times: number): DrawnScale {
  return { pointsPerMm: mm(times), says: `${times} : 1` };
}

function reduced(parts: number): DrawnScale {
  return { pointsPerMm: mm(1 / parts), says: `1 : ${parts}` };
}
