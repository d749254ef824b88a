import type { Head } from "../head/head.ts";
import type { Place, PlaceByMoves } from "../machine/place.ts";
import type { PlannedJob } from "../machine/plan.ts";
import type { Way } from "../machine/way.ts";
import type { Side } from "../machine/zero.ts";
import { capital } from "./capital.ts";
import { directNouns } from "./direct-nouns.ts";
import { shortAngle } from "./numbers.ts";
import { goesBy, goesOnFromLast } from "./place-words.ts";

/** What a list of places says only in its columns: where it begins, and which way the scales go. */
export interface ListOf {
  /** The last tooth that is done, where the list is of what is left after it; else null. */
  readonly after: number | null;
  readonly side: Side;
  /** The head that the list is for. */
  readonly head: Pick<Head, "plates">;
}

/** What the columns of a list of places mean, sentence by sentence. */
export function legendWords({ way, start }: Pick<PlannedJob, "way" | "start">, { after, side, head }: ListOf): string {
  const by = goesBy(way, head);
  const { circle } = way.setting;
  const startHole = "hole" in start ? (start.hole ?? 0) : 0;
  const first = after === null ? "" : `; the first goes on from tooth ${after}`;
  return [
    ...(goesOnFromLast(by) ? [goOnLegend(by, circle !== null, first)] : []),
    ...(by === "marks" || circle === null ? [] : [holeLegend(way, startHole)]),
    ...("second" in way.setting ? [`"Rear" is the hole of ${way.setting.second.circle} at the rear pin, likewise.`] : []),
    ...(way.setting.exact ? [] : ['"Off by" is how far the work stands from its true angle: + too far, − short of it.']),
    ...scalesLegend(start, side),
  ].join(" ");
}

function goOnLegend(by: "index-holes" | "spindle-holes", onHoles: boolean, first: string): string {
  if (by === "spindle-holes") return `"Go on by" is spaces from the line before${first}.`;
  const stands = onHoles ? '; "turns" and "hole" are where the pin then stands, counted from the start' : "";
  return `"Go on by" is turns + spaces from the line before${first}${stands}.`;
}

function holeLegend(way: Way, startHole: number): string {
  const { place, places } = directNouns(way.setting);
  const numbered = `${capital(places)} are numbered`;
  const turned = goesBy(way).startsWith("spindle") ? "work" : "crank";
  return startHole === 0
    ? `${numbered} from 0, where the pin starts, the way the ${turned} goes.`
    : `${numbered} the way the ${turned} goes; the pin starts in ${place} ${startHole}.`;
}

/** Nothing where the scales rise from their zero, as they do unless it was said. */
function scalesLegend({ angle }: Place, side: Side): readonly string[] {
  if (angle === "0" && side === "plus") return [];
  return [`The scales stand at ${shortAngle(angle)} at tooth 1 and ${side === "plus" ? "rise" : "fall"} from there.`];
}

/** Whether any place of a list is gone back to. */
export function goesBack(places: readonly Place[]): boolean {
  return places.some((place) => "from" in place && place.from.direction === "back");
}

/** Play is taken up one way, also where a list goes back; nothing where it does not. */
export function backWords(places: readonly Place[]): string {
  return goesBack(places) ? "BACK: go half a turn or more past the hole, and come up to it onward." : "";
}

/** Where the pins are not in their first holes when the work is back at its start: the place they are in then. */
export function secondRoundWords({ hole, rearHole }: Pick<PlaceByMoves, "hole" | "rearHole">): string {
  const rear = rearHole === undefined ? "" : `, the rear pin from hole ${rearHole}`;
  return `A second time round the holes are others, as the pin then starts from hole ${hole}${rear}; the angles stay.`;
}

/** The holes of a direct plate by number, with that of the row: the wrong hole is the usual mistake. */
export function holesUsedWords(places: readonly Place[], way: Way): string {
  const holes = places.flatMap((place) => {
    if (!("hole" in place) || place.hole === null) return [];
    return !("vernierHole" in place) || place.vernierHole === undefined
      ? String(place.hole)
      : `${place.hole}+${place.vernierHole}`;
  });
  return `${holes.join(", ")}; 0 is the ${directNouns(way.setting).place} that the pin starts in`;
}

/** Where no position can be listed: nothing is left of the job, or the head can do none of it. */
export const noPlaces = {
  left: "That was the last: nothing is left to do.",
  possible: "This head cannot set the positions in any way, not even nearly.",
} as const;
