import type { Head } from "../head/head.ts";
import { gearsForgotten, type MoveGives } from "../mechanism/reverse.ts";
import { formatAngle } from "../number/angle.ts";
import { fromExact, gcd } from "../number/ratio.ts";
import type { OfMove, Setting, UnprovedSetting } from "../setting/setting.ts";
import { type Figure, teethFigures } from "./figures.ts";
import type { Item } from "./item.ts";
import type { MethodWords } from "./method-words.ts";
import { methodWords } from "./methods.ts";
import { arcUpTo, counted } from "./numbers.ts";
import { plateName } from "./plates.ts";

/** The words of a setting's own method; the registry pairs them rightly. */
function wordsOf(setting: UnprovedSetting): MethodWords<UnprovedSetting["method"]> {
  return methodWords[setting.method] as unknown as MethodWords<UnprovedSetting["method"]>;
}

/** A setting in full, item by item in the order of work, without its proof. */
export function settingItems(setting: UnprovedSetting, head: Head): readonly Item[] {
  return [...wordsOf(setting).setUp(setting, head), { term: "Each move", text: eachMove(setting) }, ...forgottenItems(setting)];
}

/** What the hand sets, in figures to be read from the machine, in the order of work. */
export function settingFigures(setting: UnprovedSetting, head: Head): readonly Figure[] {
  return [...wordsOf(setting).figures(setting, head), ...teethFigures(setting)];
}

/** What one move does to the work. */
export function eachMove({ spindlePerMove, teethPerMove }: OfMove): string {
  const teeth = teethPerMove === 1 ? "" : `; ${teethPerMove} teeth on, so go round the work ${teethPerMove} times`;
  return `${formatAngle(spindlePerMove, 1)} of the work${teeth}`;
}

/** The costliest mistake with gears, and where they cannot be used. */
function forgottenItems(setting: UnprovedSetting): readonly Item[] {
  const alone = gearsForgotten(setting);
  if (alone === null) return [];
  return [
    { term: "Gears forgotten", text: `${moveAlone(setting)} without them: that ${givesWords(alone)}. The part is scrap.` },
    { term: "Never", text: "with the spindle tilted out of line with the gears, nor while they cut a helix" },
  ];
}

/** As many decimals as a count without gears is told to, and the most where these would make it a whole one. */
const decimals = 2;
const mostDecimals = 9;

/**
 * The count that a move makes where its gears are forgotten: `60`, or `≈ 53.33` where it comes round on
 * none; null for a setting without gears.
 */
export function countWithoutGears(setting: UnprovedSetting): string | null {
  const alone = gearsForgotten(setting);
  if (alone === null) return null;
  const { teethPerMove } = setting;
  const count = fromExact(alone.spindlePerMove).inverse().mul(teethPerMove);
  // A move that passes over several of its places misses the others, unless it has no factor in common with them.
  if (count.d === 1n) return String(Number(count.n) / gcd(Number(count.n), teethPerMove));
  return `≈ ${unlikeWhole(count.valueOf(), decimals)}`;
}

function unlikeWhole(value: number, places: number): string {
  const written = value.toFixed(places);
  return Number.isInteger(Number(written)) && places < mostDecimals ? unlikeWhole(value, places + 1) : written;
}

function moveAlone({ turns, spaces, circle }: UnprovedSetting): string {
  const whole = turns === 0 ? "" : `${counted(turns, "turn")} + `;
  return `${whole}${circle === null ? "0 spaces" : `${counted(spaces, "space")} of ${circle}`}`;
}

/** What a move gives: `gives 120`, or what it comes nearest to. */
export function givesWords({ exact, divisions, closingArcSeconds }: MoveGives): string {
  if (exact) return `gives ${divisions}`;
  return closingArcSeconds === 0
    ? `goes round on ${divisions} with teeth left out`
    : `comes nearest to ${divisions}, ${arcUpTo(closingArcSeconds)} out at the close`;
}

/** The proof in one line: moves, turns of the work, and what crank and plate come to. */
export function proofWords(setting: Setting): string {
  const { proof } = setting;
  const back = `${counted(proof.moves, "move")}, ${counted(proof.rounds, "turn")} of the work`;
  return `${back}${wordsOf(setting).proof(setting, proof)}`;
}

/** The proof in few words, for where nobody asked for more. */
export function proofShort({ proof }: Setting): string {
  return `${counted(proof.moves, "move")}, ${counted(proof.rounds, "turn")} of the work, and it is back at its start`;
}

/** How a setting was shown to close: by every move made on the head, or by what one move is. */
export function proofShownWords({ proof, spindlePerMove }: Setting): string {
  if (proof.shownBy === "walk")
    return "every move was made on a model of this head: after each the pins are in drilled holes, and every division is reached once";
  const { moves, rounds } = proof;
  const noFactor = rounds === 1 ? "" : `, and ${rounds} and ${moves} have no common factor`;
  return `one move turns the work by exactly ${spindlePerMove} of a turn${noFactor}: so many moves reach every division once and end at the start`;
}

/** A setting in few words: `0 + 5 of 15 (plate 1), gears 56 to 24, 2 idlers, plate against`. */
export function shortSetting(setting: UnprovedSetting): string {
  const teeth = setting.teethPerMove === 1 ? "" : `, ${setting.teethPerMove} teeth per move`;
  const place = setting.plate === null ? "" : ` (plate ${plateName(setting)})`;
  return `${wordsOf(setting).short(setting, place)}${teeth}`;
}

/** What is worth knowing of a setting among others: the plate that is on the head, the largest circle. */
export function marksAmong(setting: UnprovedSetting, all: readonly UnprovedSetting[], mounted: string | null): string {
  // The spindle's own plate is always on, and its circle is not one to choose among the others.
  if (setting.method === "direct" || setting.circle === null) return "";
  const circles = all.flatMap(({ method, circle }) => (method === "direct" || circle === null ? [] : [circle]));
  const marks = [
    ...(setting.plate !== null && setting.plate === mounted ? ["mounted"] : []),
    // Of a pair of circles neither is the one to choose by.
    ...(!("second" in setting) && circles.length > 1 && setting.circle === Math.max(...circles) ? ["largest circle"] : []),
  ];
  return marks.length === 0 ? "" : `: ${marks.join(", ")}`;
}

/** {@link settingItems} with the plate marked, where the setting is the first of several. */
export function settingItemsAmong(
  setting: UnprovedSetting,
  all: readonly UnprovedSetting[],
  mounted: string | null,
  head: Head,
): readonly Item[] {
  const marks = marksAmong(setting, all, mounted);
  return settingItems(setting, head).map((item) => (item.term === "Plate" ? { ...item, text: `${item.text}${marks}` } : item));
}
