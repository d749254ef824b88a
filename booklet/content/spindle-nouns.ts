import type { Head } from "../../src/index.ts";
import { type DirectNouns, directNouns } from "../../src/words/index.ts";

/** What all that stands on the spindle of a head is called together: by its own name where it is all of a kind. */
export function spindleNouns({ directPlates }: Pick<Head, "directPlates">): DirectNouns {
  const [first, ...others] = directPlates;
  const isOfAKind = first !== undefined && others.every(({ form }) => form === first.form);
  return isOfAKind ? directNouns(first) : { what: "set by", place: "place", places: "places" };
}
