import type { Head } from "../head/head.ts";
import type { MoveBetween, Place, PlaceByHole } from "../machine/place.ts";
import type { Way } from "../machine/way.ts";
import type { Pin } from "../mechanism/act.ts";
import { motionOf } from "../mechanism/motion.ts";
import { directNouns } from "./direct-nouns.ts";

/**
 * What the hand goes by to a place: holes of an index plate, holes of the spindle's own plate; or each place by itself,
 * the holes of both cranks, holes with one of a row beside them, or marks of a scale.
 */
export type GoesBy = "index-holes" | "spindle-holes" | "both-cranks" | "spindle-row" | "marks";

const pins: Readonly<Record<Pin["at"], GoesBy>> = {
  "index-pin": "index-holes",
  "small-pin": "index-holes",
  "rear-pin": "index-holes",
  "spindle-pin": "spindle-holes",
  dial: "marks",
};

/**
 * What the hand goes by on a way.
 *
 * @param head - Given, whole turns on a head without plates are known to come back to a mark and to no hole.
 */
export function goesBy(way: Way, head?: Pick<Head, "plates">): GoesBy {
  if ("vernierHoles" in way.setting) return "spindle-row";
  switch (way.by) {
    case "moves": {
      const by = pins[motionOf(way.setting).pins[0]?.at ?? "index-pin"];
      return by === "index-holes" && head?.plates.length === 0 ? "marks" : by;
    }
    case "nearest-hole":
      return "index-holes";
    case "both-cranks":
      return "both-cranks";
    case "nearest-direct":
      return "spindle-holes";
    case "dial":
    case "ring":
      return "marks";
  }
}

/** Whether the hand goes on from each place to the next; else every place is gone to by itself. */
export function goesOnFromLast(by: GoesBy): by is "index-holes" | "spindle-holes" {
  return by === "index-holes" || by === "spindle-holes";
}

/** How to get to a place from the one before, in few words: `0 + 6/15`, `0 + 2/43, both on 15/41`; empty where each is gone to by itself. */
export function goOnWords(place: Place, way: Way): string {
  const by = goesBy(way);
  if (!goesOnFromLast(by) || !("from" in place)) return "";
  const { circle } = way.setting;
  return place.by === "moves" ? moveWords(place.from, circle, by) : holeWords(place.from, circle, by);
}

function holeWords({ direction, turns, spaces }: PlaceByHole["from"], circle: number | null, by: GoesBy): string {
  if (turns === 0 && spaces === 0) return "stay";
  return `${direction === "back" ? "BACK " : ""}${turnsAndSpaces({ turns, spaces }, circle, by)}`;
}

/** On the spindle's own plate whole turns are told only where there are any. */
function turnsAndSpaces({ turns, spaces }: Pick<MoveBetween, "turns" | "spaces">, circle: number | null, by: GoesBy): string {
  const on = circle === null ? "" : `/${circle}`;
  return `${by === "spindle-holes" && turns === 0 ? "" : `${turns} + `}${spaces}${on}`;
}

/** A move between two places: turns + spaces, and the part by the rear pin; one that goes back is made first. */
export function moveWords(
  { direction, moves, turns, spaces, second, small }: MoveBetween,
  circle: number | null,
  by: GoesBy,
): string {
  if (moves === 0) return "stay";
  const back = direction === "back";
  const alone = turnsAndSpaces({ turns, spaces }, circle, by);
  if (small !== undefined) return `${back ? "BACK " : ""}${alone}, small ${small.turns} + ${small.spaces}/${small.circle}`;
  if (second === undefined) return `${back ? "BACK " : ""}${alone}`;
  const whole = second.turns > 0 ? `${second.turns} + ` : "";
  const goesOn = (second.direction === "with") === !back;
  const both = `both ${goesOn ? "on" : "back"} ${whole}${second.spaces}/${second.circle}`;
  const parts = goesOn ? [alone, both] : [both, alone];
  return back ? `BACK ${alone}, ${both}` : parts.join(", ");
}

/** Where the pin stands, in words: `hole 12`, `hole 12, rear pin in hole 3`; empty where no hole tells. */
export function holeStands(place: Place, way: Way): string {
  if (!("hole" in place) || place.hole === null || goesBy(way) === "marks") return "";
  const rear = place.by === "moves" && place.rearHole !== undefined ? `, rear pin in hole ${place.rearHole}` : "";
  const small = "smallHole" in place ? `, small crank in hole ${place.smallHole}` : "";
  const row = !("vernierHole" in place) || place.vernierHole === undefined ? "" : `, hole ${place.vernierHole} of the row`;
  return `${directNouns(way.setting).place} ${place.hole}${row}${rear}${small}`;
}
