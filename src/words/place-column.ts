import type { AnyPlace, Place } from "../machine/place.ts";

/** One column of the places of a job, for a table on any page. */
export interface PlaceColumn extends ColumnHead {
  /** What stands in it for a place. */
  cell(place: Place): string;
}

/** One column of what dial or ring shows at a place, however it is reached. */
export interface ScaleColumn extends ColumnHead {
  /** What stands in it for a place. */
  cell(place: Pick<AnyPlace, "dial" | "ring">): string;
}

/** What stands over a column. */
export interface ColumnHead {
  readonly key:
    | "go-turns"
    | "go-spaces"
    | "go-both"
    | "go-small"
    | "turns"
    | "hole"
    | "rear-hole"
    | "small-turns"
    | "small-hole"
    | "row-hole"
    | "error"
    | "angle"
    | "dial-turns"
    | "dial"
    | "dial-line"
    | "ring";
  /** Under the head of its group, where it has one. */
  readonly head: string;
  readonly group?: string;
  /** What the hand sets, to be printed strongly. */
  readonly sets: boolean;
}

/** A place where a pin stands. */
export type Stands = Extract<Place, { readonly hole: number | null }>;

/** A cell of places where a pin stands; empty of others. */
export function stands(cell: (place: Stands) => string): PlaceColumn["cell"] {
  return (place) => ("hole" in place ? cell(place) : "");
}

/** Of so many holes, after what is counted on them; empty where any circle serves. */
export function ofCircle({ circle }: { readonly circle: number | null }): string {
  return circle === null ? "" : ` of ${circle}`;
}
