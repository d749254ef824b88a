import { checkKeys, keysOf } from "../../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../../number/errors.ts";
import { faultList } from "../../number/fault-list.ts";
import { floorMod, groupDigits, type Revolutions, rational, toRevolutions } from "../../number/ratio.ts";
import { readTeeth } from "../spur-gear-spec.ts";

/** One flank of a space: the tooth it belongs to, and whether it is cut or must not be touched. */
export interface Flank {
  readonly tooth: number;
  readonly state: "sound" | "built up";
}

/**
 * A space to be recut. Tooth spaces are numbered like the teeth: space n follows tooth n, in the
 * direction in which the teeth come to the cutter.
 */
export interface SpaceToRecut {
  readonly toothSpace: number;
  /** From the sound space that the cutter was set by; never carried from one cut to the next. */
  readonly teethFromStart: number;
  /** The same, as an exact part of a revolution. */
  readonly angleFromStart: Revolutions;
  /** The tooth before the space and the tooth after it. */
  readonly flanks: readonly [Flank, Flank];
}

/** The spaces beside the damaged teeth, in the order in which they come to the cutter. */
export interface RecutPlan {
  readonly teeth: number;
  /** Damaged teeth, ascending. */
  readonly damaged: readonly number[];
  /** The sound space that the cutter is set by. */
  readonly startSpace: number;
  readonly spaces: readonly SpaceToRecut[];
  /**
   * The first sound space past the last cut: move to it before cutting and see that the cutter drops
   * in, which proves the count. It is the start space again, a whole turn on, where there is no other.
   */
  readonly proofSpace: { readonly toothSpace: number; readonly teethFromStart: number };
}

/** What is damaged, and where to start. */
export interface DamageOptions {
  /** Damaged teeth by number, 1 to the count. Which tooth is 1 is the user's choice: mark it. */
  readonly damaged: readonly number[];
  /** A sound space to start from; left out, the one just before the damage, past the longest sound stretch. */
  readonly startSpace?: number | undefined;
}

const damageKeys = keysOf<DamageOptions>({ damaged: true, startSpace: true });

/**
 * Plans the spaces to recut for damaged teeth: every one that has a built-up flank, so both flanks
 * of each built-up tooth, counted from one sound space.
 *
 * @param teeth - The count of the gear, 4 to 10,000.
 * @throws {@link InputError} when a number is no tooth of the gear or is given twice, when no sound
 * space (a sound tooth on either side) is left to start from, or the one named is not sound.
 *
 * @example
 * ```ts
 * recutPlan(86, { damaged: [31, 32] }).spaces.map(({ toothSpace }) => toothSpace); // [30, 31, 32]
 * ```
 */
export function recutPlan(teeth: number, options: DamageOptions): RecutPlan {
  checkKeys(options, damageKeys, "options");
  const { damaged, startSpace } = options;
  const built = readDamaged(teeth, damaged);
  const spaceAfter = (tooth: number) => floorMod(tooth - 1, teeth) + 1;
  const toRecut = new Set([...built].flatMap((tooth) => [spaceAfter(tooth - 1), tooth]));
  if (toRecut.size === teeth) {
    refuse(
      "cannot-be-made",
      "damaged",
      "no sound space is left, with a sound tooth on either side, to set the cutter by; cut a new gear",
    );
  }
  const start = startSpace === undefined ? soundSpaceBefore(teeth, toRecut) : checkStart(startSpace, teeth, toRecut);
  const flank = (tooth: number): Flank => ({ tooth, state: built.has(tooth) ? "built up" : "sound" });
  const spaces = [...toRecut]
    .map((toothSpace) => ({ toothSpace, teethFromStart: floorMod(toothSpace - start, teeth) }))
    .sort((a, b) => a.teethFromStart - b.teethFromStart)
    .map(({ toothSpace, teethFromStart }) => ({
      toothSpace,
      teethFromStart,
      angleFromStart: toRevolutions(rational(teethFromStart, teeth)),
      flanks: [flank(toothSpace), flank(spaceAfter(toothSpace + 1))] as const,
    }));
  const proof = (spaces.at(-1)?.teethFromStart ?? 0) + 1;
  return {
    teeth,
    damaged: [...built].sort((a, b) => a - b),
    startSpace: start,
    spaces,
    proofSpace: { toothSpace: spaceAfter(start + proof), teethFromStart: proof },
  };
}

function readDamaged(teeth: unknown, damaged: unknown): ReadonlySet<number> {
  const faults = faultList();
  const count = readTeeth(teeth, "teeth", faults);
  // Without a count there is nothing to hold the numbers of teeth against.
  faults.throwIfAny();
  const numbers = faults.list(damaged, "damaged", count, "no tooth is named; give the damaged teeth by number, such as 7, 8");
  for (const [index, tooth] of numbers.entries()) {
    faults.wholeNumber(tooth, `damaged[${index}]`, 1, count);
    if (numbers.indexOf(tooth) < index)
      faults.add("twice", `damaged[${index}]`, `tooth ${tooth} is named twice; name each damaged tooth once`);
  }
  faults.throwIfAny();
  return new Set(numbers as readonly number[]);
}

/**
 * The sound space just before the damage, at the end of the longest sound stretch: from there all
 * the cuts are reached in the fewest teeth.
 */
function soundSpaceBefore(teeth: number, toRecut: ReadonlySet<number>): number {
  const ascending = [...toRecut].sort((a, b) => a - b);
  const stretches = ascending.map((space, index) => {
    const before = ascending.at(index - 1) ?? space;
    return { before: floorMod(space - 2, teeth) + 1, sound: floorMod(space - before - 1, teeth) };
  });
  return stretches.reduce((longest, stretch) => (stretch.sound > longest.sound ? stretch : longest)).before;
}

function checkStart(startSpace: unknown, teeth: number, toRecut: ReadonlySet<number>): number {
  if (!(typeof startSpace === "number" && Number.isInteger(startSpace) && startSpace >= 1 && startSpace <= teeth)) {
    return refuse(
      wholeNumberFault(startSpace),
      "startSpace",
      `${quoted(startSpace)} is not a tooth space of ${groupDigits(teeth)}; give 1 to ${groupDigits(teeth)}`,
    );
  }
  if (!toRecut.has(startSpace)) return startSpace;
  const nearest = soundSpaceBefore(teeth, toRecut);
  return refuse(
    "conflict",
    "startSpace",
    `space ${startSpace} is beside a damaged tooth; start from a sound one, such as ${nearest}`,
  );
}
