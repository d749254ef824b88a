import { defineHead, type Head, indexTable, type SearchOptions } from "../../src/index.ts";

/** The counts of a list that a head does, asked of the whole head as its owner would describe it. */
export function doneOn(head: Head, counts: readonly number[], options: SearchOptions = {}): readonly number[] {
  return counts.filter((each) => indexTable(head, { from: each, to: each, ...options })[0]?.setting != null);
}

/** The head with another plate. */
export function withPlate(head: Head, ...faces: readonly (readonly number[])[]): Head {
  const named = faces.map((circles, index) => ({ name: faces.length === 1 ? null : `side ${index}`, circles }));
  return defineHead({ ...head, plates: [...head.plates, { name: `plate ${head.plates.length + 1} more`, faces: named }] });
}

/** The head with more gears. */
export function withGears(head: Head, gears: readonly number[]): Head {
  return defineHead({ ...head, gears: [...head.gears, ...gears] });
}

/** The head with one plate less; null where nothing would be left to count by. */
export function withoutPlate(head: Head, name: string): Head | null {
  const plates = head.plates.filter((plate) => plate.name !== name);
  if (plates.length > 0) return defineHead({ ...head, plates, mounted: null });
  if (head.directPlates.length === 0 && head.dial === null) return null;
  return defineHead({ ...head, plates, mounted: null, rearPin: false, gears: [], idlers: null, gearing: null });
}
