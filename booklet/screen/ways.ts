import { type Head, indexAngle, indexDivisions, type PreparedHead, type Target, type Way, wayOf } from "../../src/index.ts";
import { wayShort } from "../../src/words/index.ts";
import { refuseTyped } from "./numbers-typed.ts";

/**
 * Finds a way again by its own words, as a link names it.
 *
 * @param first - Ways to look among before all others.
 * @throws {@link InputError} where the head has no such way for the target.
 */
export function wayNamed(head: Head | PreparedHead, target: Target, name: string, first: readonly Way[]): Way {
  const isIt = (way: Way) => wayShort(way) === name;
  return (
    first.find(isIt) ?? everyWay(head, target).find(isIt) ?? refuseTyped("way", `this head has no way "${name.slice(0, 80)}"`)
  );
}

function everyWay(head: Head | PreparedHead, target: Target): readonly Way[] {
  const options = { all: true, near: true } as const;
  const { settings, near } =
    "divisions" in target ? indexDivisions(head, target.divisions, options) : indexAngle(head, target.angle, options);
  return [...settings, ...near].map(wayOf);
}
