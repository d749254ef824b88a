import type { Head } from "../../src/index.ts";

/** What a head may have, and a book may speak of. */
export type Having =
  | "plates"
  | "gears"
  | "second-circle"
  | "direct-plate"
  | "dial"
  | "ring"
  | "vernier"
  | "handwheel"
  | "worm"
  | "no-worm"
  | "small-crank";

const holds: Readonly<Record<Having, (head: Head) => boolean>> = {
  plates: ({ plates }) => plates.length > 0,
  gears: ({ plates, gears, gearing }) => plates.length > 0 && gearing !== null && gears.length > 1,
  "second-circle": ({ plates, rearPin }) => plates.length > 0 && rearPin,
  "direct-plate": ({ directPlates }) => directPlates.length > 0,
  dial: ({ dial }) => dial !== null,
  ring: ({ ring }) => ring !== null,
  vernier: ({ dial, ring }) => [dial, ring].some((scale) => scale !== null && scale.vernierLines > 1),
  handwheel: ({ wormRatio, plates, dial }) => wormRatio !== null && (plates.length === 0 || dial !== null),
  worm: ({ wormRatio }) => wormRatio !== null,
  "small-crank": ({ smallCrank }) => smallCrank !== undefined,
  "no-worm": ({ wormRatio }) => wormRatio === null,
};

/** Whether a head has a thing: what it cannot use, its book does not print. */
export function has(head: Head, thing: Having): boolean {
  return holds[thing](head);
}

/** Something said of heads that have one of the things named, or of all where none is. */
export interface SaidOf {
  readonly of?: readonly Having[];
}

/** What is to be said of a head. */
export function saidOf<Said extends SaidOf>(head: Head, all: readonly Said[]): readonly Omit<Said, "of">[] {
  return all.filter(({ of }) => of === undefined || of.some((thing) => has(head, thing))).map(({ of: _, ...said }) => said);
}
