import type { Head, OwnedCircle } from "../head/head.ts";
import { take } from "../number/effort.ts";
import { floorMod, gcd, inverseModulo } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { SettingBy, SmallMove } from "../setting/setting.ts";
import { byMounted } from "./handling.ts";
import type { Law, Trial } from "./law.ts";
import { type CrankTurns, crankTurns, type HeadLayout, ofMove } from "./layout.ts";
import { neededDivisors } from "./needed-divisors.ts";
import { lacksCircles } from "./owned-circles.ts";

/**
 * Wide range indexing: the large crank over its plate, then the small crank, which turns the worm through a second
 * one, over a plate of its own.
 *
 * @see US Navy, training manual 14345, chapter 7, on the wide range divider: 40 × 100 turns, 2 to 400,000 divisions.
 */
export const wideRange: Law<"wide-range"> = {
  places: { "wide-range": 3 },
  plain: true,
  find: (_, layout, trial) => firstForward(layout, trial),
  lacks({ plate, face, circle, small }, head) {
    // From elsewhere a setting may come without it.
    if (!small) return "has no move of a small crank";
    return lacksCircles(head, plate, face, circle === null ? [] : [circle]) ?? lacksSmall(small, head);
  },
  whyNot(layout, target, teethPerMove) {
    if (layout.head.smallCrank === undefined) return { code: "without", part: "small-crank" };
    return { code: "no-multiple", of: "two-cranks", multiplesOf: neededDivisors(layout, target, teethPerMove), owned: [] };
  },
};

/**
 * The settings of the first move that has any: more teeth per move are tried as well, since of a small move the large
 * crank would often have to go back.
 */
function firstForward(layout: HeadLayout, { moves, effort }: Trial): readonly SettingBy<"wide-range">[] {
  const pairs = layout.circles.length * (layout.head.smallCrank?.circles.length ?? 0);
  for (const move of moves()) {
    if (!take(effort.wideRange, 1 + (pairs >> 1))) break;
    const found = wideRangeSettings(layout, move, crankTurns(layout, move));
    if (found.length > 0) return found;
  }
  return [];
}

/** What a head lacks of the small crank of a setting; null where it has it. */
export function lacksSmall({ ratio, circle }: Pick<SmallMove, "ratio" | "circle">, { smallCrank }: Head): string | null {
  if (smallCrank?.ratio !== ratio) return `needs a small crank of ${ratio} turns for one of the large`;
  return smallCrank.circles.includes(circle) ? null : `needs a circle of ${circle} for the small crank`;
}

/**
 * The wide range settings for a move that turn the large crank, in all, by `wanted`, be it the whole move or only near it.
 *
 * The law: t = R·k/N = turns + a/C1 + b/(r·C2), with r turns of the small crank for one of the large. The small
 * crank's circle stands for one of r·C2 holes on the large one, and the two make every multiple of 1/lcm(C1, r·C2) of a
 * turn. Of the solutions that with the fewest spaces of the small crank is taken, which never goes back.
 *
 * @returns One for each pair of circles, in order of handling: the plate on the head, the least turning of the small
 * crank, the fewest spaces. None where the large crank does it alone.
 */
function wideRangeSettings(layout: HeadLayout, move: Move, wanted: CrankTurns): SettingBy<"wide-range">[] {
  const { smallCrank } = layout.head;
  if (smallCrank === undefined) return [];
  const { ratio, circles } = smallCrank;
  const found: SettingBy<"wide-range">[] = [];
  for (const on of layout.circles) {
    for (const circle of circles) {
      const both = solve(on.holes, ratio * circle, wanted);
      if (both !== null) found.push(wideRangeSetting(layout, move, { on, circle, ...both }));
    }
  }
  return onceEach(found).sort(byCranking(layout.mounted));
}

/** Spaces of both cranks in all, each on a circle of its own. */
export interface BothSpaces {
  readonly on: OwnedCircle;
  readonly large: number;
  readonly circle: number;
  readonly small: number;
}

/** The setting of so many spaces of the large crank, then of the small one; whole turns of the large name no circle. */
export function wideRangeSetting(
  layout: HeadLayout,
  move: Move,
  { on, large, circle, small: ofSmall }: BothSpaces,
): SettingBy<"wide-range"> {
  const [spaces, smallSpaces] = [large % on.holes, ofSmall % circle];
  const turns = (ofSmall - smallSpaces) / circle;
  return {
    method: "wide-range",
    ...ofMove(layout, move),
    wormRatio: layout.wormRatio,
    turns: (large - spaces) / on.holes,
    ...(spaces === 0
      ? { spaces: 0, circle: null, plate: null, face: null, armsEnclose: null }
      : { spaces, circle: on.holes, plate: on.plate, face: on.face, armsEnclose: spaces + 1 }),
    plateStopPin: "in",
    small: { ratio: layout.head.smallCrank?.ratio ?? 1, turns, spaces: smallSpaces, circle, armsEnclose: smallSpaces + 1 },
  };
}

/** The plate on the head before any other; then the least turning of the small crank, the fewest spaces, the fewest turns. */
export function byCranking(mounted: string | null): (a: SettingBy<"wide-range">, b: SettingBy<"wide-range">) => number {
  return (a, b) => byMounted(a, b, mounted) || smallTurned(a) - smallTurned(b) || spacesOf(a) - spacesOf(b) || a.turns - b.turns;
}

/**
 * Spaces of the large crank in all, and the fewest of the small one, that add up to the turns wanted; null where none
 * do, or the large crank would have to go back.
 */
function solve(large: number, small: number, { turns, part, parts }: CrankTurns): { large: number; small: number } | null {
  const common = gcd(large, small);
  const [oneOfLarge, oneOfSmall] = [small / common, large / common];
  const whole = large * oneOfLarge;
  if (whole % parts !== 0) return null;
  const rest = (whole / parts) * part;
  const ofSmall = floorMod((rest % oneOfLarge) * inverseModulo(oneOfSmall, oneOfLarge), oneOfLarge);
  const ofLarge = turns * large + (rest - ofSmall * oneOfSmall) / oneOfLarge;
  return ofLarge < 0 || ofSmall === 0 ? null : { large: ofLarge, small: ofSmall };
}

/** Whole turns of the large crank name no circle, and are the same whichever was looked at. */
function onceEach(all: readonly SettingBy<"wide-range">[]): SettingBy<"wide-range">[] {
  const seen = new Set<string>();
  return all.filter(({ circle, turns, small }) => {
    if (circle !== null) return true;
    const key = `${turns} ${small.turns} ${small.spaces}/${small.circle}`;
    return !seen.has(key) && seen.add(key);
  });
}

function smallTurned({ small }: SettingBy<"wide-range">): number {
  return small.turns + small.spaces / small.circle;
}

function spacesOf({ spaces, small }: SettingBy<"wide-range">): number {
  return spaces + small.spaces;
}
