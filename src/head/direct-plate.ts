import type { FaultList } from "../number/fault-list.ts";
import { readForm, readVernier } from "./direct-extras.ts";
import { mostHoles, mostPlates, refuseDoubles } from "./plate.ts";

/** What a direct plate is where it is no plate with holes: a notched collar, detents, or a gear that a detent drops into. */
export type DirectForm = "collar" | "detents" | "gear";

/** A plate or ring of holes on the spindle itself, for direct indexing with the worm out of mesh. */
export interface DirectPlate {
  readonly name: string;
  /** Places round it that the pin drops into: holes, notches, detents, or the teeth of a gear. */
  readonly holes: number;
  /**
   * Holes of the row that the pin goes through instead of one, where there is such a row: each lies one
   * of as many parts of a space further along than the last, so that a plate of 36 with ten is set to 360 places.
   */
  readonly vernierHoles?: number;
  /** Left out: a plate with holes. */
  readonly form?: DirectForm;
}

/** A direct plate as it is written in a head file. */
export interface DirectPlateSpec {
  readonly name: string;
  readonly holes: number;
  readonly vernierHoles?: number | undefined;
  readonly form?: DirectForm | undefined;
}

/** The places in a turn that a direct plate can be set to. */
export function placesOf({ holes, vernierHoles = 1 }: Pick<DirectPlate, "holes" | "vernierHoles">): number {
  return holes * vernierHoles;
}

/** Checks the direct plates of a spec. */
export function readDirectPlates(value: unknown, place: string, faults: FaultList): readonly DirectPlate[] {
  const plates = faults.list(value, place, mostPlates).map((plate, index) => {
    const at = `${place}[${index}]`;
    const spec = faults.object(plate, at, ["name", "holes", "vernierHoles", "form"]);
    if (spec === null) return { name: "", holes: 0 };
    return Object.freeze({
      name: faults.name(spec.name, `${at}.name`),
      holes: faults.wholeNumber(spec.holes, `${at}.holes`, 2, mostHoles),
      ...readVernier(spec.vernierHoles, `${at}.vernierHoles`, faults),
      ...readForm(spec.form, `${at}.form`, faults),
    });
  });
  refuseDoubles(
    plates.map(({ name }) => name),
    place,
    "name",
    faults,
  );
  return Object.freeze(plates);
}
