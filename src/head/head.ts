import { quoted, refuse } from "../number/errors.ts";
import type { Ratio } from "../number/ratio.ts";
import { checkIsHead } from "./check-is-head.ts";
import type { DirectPlate, DirectPlateSpec } from "./direct-plate.ts";
import type { Gearing, GearingSpec } from "./gearing.ts";
import type { Plate, PlateSpec } from "./plate.ts";
import type { Scale, ScaleSpec } from "./scale.ts";
import type { SmallCrank } from "./small-crank.ts";

/**
 * A dividing head or rotary table, checked and frozen: what it is and what its owner has for it.
 *
 * A head is plain data. It goes through JSON unchanged and is itself a valid spec.
 */
export interface Head {
  /** Short name for files and commands: lower-case letters, digits and hyphens. */
  readonly id: string;
  /** The owner's name for it, as printed. */
  readonly name: string;
  /** Crank turns for one spindle turn; null where no crank turns it, and it goes by its own plates or its ring. */
  readonly wormRatio: Ratio | null;
  /** Index plates on the crank side. */
  readonly plates: readonly Plate[];
  /** Plates on the spindle for direct indexing. */
  readonly directPlates: readonly DirectPlate[];
  /** Whether a pin at the back can hold the plate by any circle, as compound indexing needs. */
  readonly rearPin: boolean;
  /** Teeth of each change gear owned, ascending, duplicates counted. */
  readonly gears: readonly number[];
  /**
   * Teeth of each gear kept as an idler, ascending; a change gear that a train leaves over serves as
   * one too. Null where the owner has not said: any gear of a size that fits will do.
   */
  readonly idlers: readonly number[] | null;
  /** How the plate is geared to the spindle; null where it cannot be. */
  readonly gearing: Gearing | null;
  /** The spindle's own scale, or null. */
  readonly ring: Scale | null;
  /** The handwheel's scale, or null. */
  readonly dial: Scale | null;
  /** The plate that is on the head now, or null. */
  readonly mounted: string | null;
  /**
   * How far worm and wheel may be off between any two places of the spindle, in arc-seconds, as the
   * head's papers or a test say; only where it is stated.
   */
  readonly wormErrorArcSeconds?: number;
  /** The second crank of a wide range head; only where it has one. */
  readonly smallCrank?: SmallCrank;
}

/** A head whose spindle a crank or a handwheel turns through a worm. */
export interface CrankedHead extends Head {
  readonly wormRatio: Ratio;
}

/** A head as a person writes it: only the worm ratio, or that there is none, and something to count by are needed. */
export interface HeadSpec {
  readonly id?: string | undefined;
  readonly name?: string | undefined;
  /** A whole number, or an exact fraction in quotes: `40`, `"81/2"`; null where no crank turns the spindle. */
  readonly wormRatio: number | string | null;
  readonly plates?: readonly (PlateSpec | Plate)[] | undefined;
  readonly directPlates?: readonly DirectPlateSpec[] | undefined;
  /** Left out: false. */
  readonly rearPin?: boolean | undefined;
  /** Left out: none. */
  readonly gears?: readonly number[] | undefined;
  /** Gears kept as idlers besides; left out: not said, and taken to be at hand. */
  readonly idlers?: readonly number[] | null | undefined;
  /** Left out: as on most heads where gears are listed, and none where they are not. */
  readonly gearing?: GearingSpec | null | undefined;
  readonly ring?: ScaleSpec | null | undefined;
  readonly dial?: ScaleSpec | null | undefined;
  readonly mounted?: string | null | undefined;
  /** Of worm and wheel, in arc-seconds; left out: not known. */
  readonly wormErrorArcSeconds?: number | undefined;
  /** Left out: there is none, as on most heads. */
  readonly smallCrank?: SmallCrank | null | undefined;
}

/** Which head an answer is for. */
export type HeadInShort = Pick<Head, "id" | "name" | "wormRatio">;

/** A head as an answer names it. */
export function inShort({ id, name, wormRatio }: Head): HeadInShort {
  return { id, name, wormRatio };
}

/**
 * The worm ratio of a head that is asked for a crank.
 *
 * @throws {@link InputError} when no crank turns its spindle.
 *
 * @example
 * ```ts
 * wormRatioOf(readyHeads[0]); // "40"
 * ```
 */
export function wormRatioOf({ wormRatio }: Pick<Head, "wormRatio">): Ratio {
  if (wormRatio !== null) return wormRatio;
  return refuse("not-owned", "head", "has no crank, and so no worm ratio; give a head that has one");
}

/** A hole circle with the plate and face it is on. */
export interface OwnedCircle {
  readonly plate: string;
  readonly face: string | null;
  readonly holes: number;
}

/**
 * Every hole circle of a head, plate by plate. The same count on two faces is there twice.
 *
 * @example
 * ```ts
 * ownedCircles(readyHeads[2]).slice(0, 2).map(({ face, holes }) => `${face} ${holes}`); // ["front 24","front 25"]
 * ```
 */
export function ownedCircles(head: Head): readonly OwnedCircle[] {
  checkIsHead(head);
  return head.plates.flatMap(({ name, faces }) =>
    faces.flatMap((face) => face.circles.map((holes) => ({ plate: name, face: face.name, holes }))),
  );
}

/** The plate taken to be on the head: the one asked for, else the head's own `mounted`. */
export function mountedPlate(head: Head, asked: string | undefined): string | null {
  if (asked === undefined) return head.mounted;
  if (!head.plates.some(({ name }) => name === asked)) {
    const names = head.plates.map(({ name }) => name).join(", ");
    refuse("not-owned", "mounted", `this head has no plate ${quoted(asked)}; its plates are ${names === "" ? "none" : names}`);
  }
  return asked;
}
