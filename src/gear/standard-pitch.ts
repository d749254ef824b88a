import { quoted, refuse } from "../number/errors.ts";
import { mmPerInch } from "../number/length-unit.ts";

/** A pitch of a standard or customary series. */
export interface StandardPitch {
  /** `"2 module"`, `"12 DP"`, `"3/8 in circular pitch"`. */
  readonly name: string;
  readonly system: "module" | "diametral pitch" | "circular pitch";
  readonly module: number;
  /** 1 for the series to be preferred, 2 for the second, 3 for circular pitch, which is found on older work. */
  readonly preference: 1 | 2 | 3;
}

/** Another standard pitch near enough to be taken for it. */
export interface LookAlike {
  readonly name: string;
  /** Its module against this one's, in per cent. */
  readonly percent: number;
}

/** ISO 54, series I, from 1 mm; below 1 mm common practice (from memory). */
const modulesFirst = [0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50];
/** ISO 54, series II, from 1 mm; below 1 mm common practice (from memory). */
const modulesSecond = [
  0.25, 0.35, 0.45, 0.55, 0.7, 0.75, 0.9, 1.125, 1.375, 1.75, 2.25, 2.75, 3.5, 4.5, 5.5, 6.5, 7, 9, 11, 14, 18, 22, 28, 36, 45,
];
/**
 * Modules that other national standards had besides as their second or third choice, met on older work and imported
 * machines (from memory).
 */
const modulesBesides = [0.65, 0.85, 0.95, 3.25, 3.75, 4.25, 4.75, 5.25, 5.75];
/** Diametral pitches usual in the inch trade (common practice, no source). */
const diametralFirst = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24, 32, 48, 64, 80, 96];
/** Diametral pitches met less often (common practice, no source). */
const diametralSecond = [1.75, 2.25, 2.75, 3.5, 7, 9, 11, 22, 26, 28, 30, 36, 40, 60, 72, 120];
/** Circular pitches in sixteenths of an inch, customary on older and cast gears (common practice, no source). */
const circularSixteenths = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18, 20, 22, 24, 28, 32];

/**
 * Every pitch that a gear is compared with, the preferred series first.
 *
 * @example
 * ```ts
 * standardPitches.find(({ name }) => name === "12 DP")?.module.toFixed(4); // "2.1167"
 * ```
 */
export const standardPitches: readonly StandardPitch[] = Object.freeze(
  [
    ...modulesFirst.map((module) => ofModule(module, 1)),
    ...diametralFirst.map((pitch) => ofDiametral(pitch, 1)),
    ...modulesSecond.map((module) => ofModule(module, 2)),
    ...modulesBesides.map((module) => ofModule(module, 2)),
    ...diametralSecond.map((pitch) => ofDiametral(pitch, 2)),
    ...circularSixteenths.map(ofCircular),
  ].map((pitch) => Object.freeze(pitch)),
);

function ofModule(module: number, preference: 1 | 2): StandardPitch {
  return { name: `${module} module`, system: "module", module, preference };
}

function ofDiametral(pitch: number, preference: 1 | 2): StandardPitch {
  return { name: `${pitch} DP`, system: "diametral pitch", module: mmPerInch / pitch, preference };
}

function ofCircular(sixteenths: number): StandardPitch {
  const module = (sixteenths * mmPerInch) / (16 * Math.PI);
  return { name: `${inSixteenths(sixteenths)} in circular pitch`, system: "circular pitch", module, preference: 3 };
}

/** `"1 3/8"` for 22. */
function inSixteenths(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  const rest = sixteenths % 16;
  if (rest === 0) return String(whole);
  const divisor = rest % 8 === 0 ? 8 : rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
  const part = `${rest / divisor}/${16 / divisor}`;
  return whole === 0 ? part : `${whole} ${part}`;
}

/** How near, in per cent, a pitch must be to be called a look-alike; our own choice. */
const lookAlikePercent = 2;

/**
 * The other standard pitches within 2 per cent of one, the nearest first: 32 DP and 0.8 module differ by 0.8.
 *
 * @param pitch - One of {@link standardPitches}.
 * @throws {@link InputError} when it is none of them.
 *
 * @example
 * ```ts
 * standardPitches.filter(({ name }) => name === "32 DP").map((pitch) => lookAlikes(pitch)[0]?.name); // ["0.8 module"]
 * ```
 */
export function lookAlikes(pitch: StandardPitch): readonly LookAlike[] {
  const asked = standardPitches.find(({ name }) => name === (pitch as StandardPitch | null | undefined)?.name);
  if (asked === undefined) refuse("unknown-word", "pitch", `${quoted(pitch)} is not one of standardPitches; take it from there`);
  return standardPitches
    .filter(({ name }) => name !== asked.name)
    .map(({ name, module }) => ({ name, percent: 100 * (module / asked.module - 1) }))
    .filter(({ percent }) => Math.abs(percent) <= lookAlikePercent)
    .sort((a, b) => Math.abs(a.percent) - Math.abs(b.percent));
}
