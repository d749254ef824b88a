import { isGraded } from "../gear/graded.ts";
import { finestGrade } from "../gear/pitch-deviation.ts";
import { errorAtRadius } from "../number/error-at-radius.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Item } from "./item.ts";
import { nearNames } from "./kinds.ts";
import { type LengthWords, lengthsIn, type Unit } from "./lengths.ts";
import { onDirect } from "./nearest-direct-words.ts";
import { arcUpTo } from "./numbers.ts";
import { plateName } from "./plates.ts";
import { shortSetting } from "./setting-words.ts";
import { onBoth } from "./wide-range-words.ts";

/** The radius of the work, and the unit that its lengths are told in. */
export interface AtRadius {
  readonly mm: number;
  readonly unit: Unit;
}

/** Where near settings are asked for and there are none. */
export const noNear = "none to name beside those that are exact";

/** A near setting so worded that it cannot be taken for an exact one: how it is made, and how far off it is. */
export function nearItems(setting: NearSetting, count: number | null, radius: AtRadius | null): readonly Item[] {
  return [
    { term: `~ ${nearNames[setting.kind]}`, text: nearHow(setting) },
    { term: "", text: nearErrorWords(setting, count, radius) },
  ];
}

/** How a near setting is made, in few words. */
export function nearHow(setting: NearSetting): string {
  if (setting.moves === "equal") return shortSetting(setting);
  const each = "every position by itself from one zero";
  if (setting.kind === "both-cranks") return `${onBoth(setting)}, ${each}`;
  if (setting.kind === "nearest-direct") return `${onDirect(setting)}, ${each}`;
  return setting.kind === "nearest-hole" ? `of ${setting.circle} (plate ${plateName(setting)}), ${each}` : each;
}

/** Of a ring that has no error but that of the eye. */
export const asNearAsRead = "a mark at every position: as near as it is read";

/** How far a near setting is off, never less than it is. `count` is null for an angle. */
export function nearErrorWords(setting: NearSetting, count: number | null, radius: AtRadius | null): string {
  if (setting.worstArcSeconds === 0) return asNearAsRead;
  const worst = offBy(setting.worstArcSeconds, radius);
  if (count === null) return `it leaves the angle up to ${worst} off`;
  const sums =
    setting.moves === "equal" ? `the last meets the first ${arcUpTo(setting.closingArcSeconds)} out` : "nothing adds up";
  const grade = radius === null ? "" : gradeWords(setting, radius, count);
  return `no position over ${worst} off (tooth ${setting.error.worstTooth}); ${sums}${grade}`;
}

/** A bound on an error, and the length that it is at a radius: `4.9″ (0.0012 mm)`. */
export function offBy(arcSeconds: number, radius: AtRadius | null): string {
  return radius === null
    ? arcUpTo(arcSeconds)
    : `${arcUpTo(arcSeconds)} (${lengthOf(arcSeconds, radius.mm, lengthsIn(radius.unit))})`;
}

const placesOfErrors = 4;

/** The length along the arc that an error is at a radius, rounded upwards. */
export function lengthOf(arcSeconds: number, radiusMm: number, length: LengthWords): string {
  return length.upTo(Math.abs(errorAtRadius(arcSeconds, radiusMm).mm), placesOfErrors);
}

/** What lengths and grades beside near settings mean. */
export function gradeNote({ mm, unit }: AtRadius, count: number | null): string {
  const lengths = `Lengths are those at a radius of ${lengthsIn(unit)(mm)}.`;
  if (count === null) return lengths;
  return `${lengths} Grades are those of ISO 1328-1:1995 (its formula from memory) for a gear of that pitch radius, for the indexing alone.`;
}

/** For a gear of that pitch radius, the accuracy grade that the step from tooth to tooth would still allow. */
function gradeWords({ pitchArcSeconds }: NearSetting, { mm }: AtRadius, count: number): string {
  const gear = { module: (2 * mm) / count, diameterMm: 2 * mm };
  if (!isGraded(gear)) return "";
  const grade = finestGrade(gear, pitchArcSeconds);
  return `; tooth to tooth ${grade === null ? "worse than grade 12" : `within grade ${grade}`}`;
}
