import type { Head } from "../head/head.ts";
import { quoted } from "../number/errors.ts";

/** What a head lacks of the circles of a move, which must all be on one face of one plate; null where it has them. */
export function lacksCircles(
  { plates }: Head,
  plate: string | null,
  face: string | null,
  circles: readonly number[],
): string | null {
  const owned = plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face)?.circles ?? [];
  const missing = circles.find((circle) => !owned.includes(circle));
  if (missing === undefined) return null;
  return `needs a circle of ${missing} on plate ${quoted(plate)}${face === null ? "" : `, face ${quoted(face)}`}`;
}
