import type { Head } from "../head/head.ts";
import type { PlannedJob } from "../machine/plan.ts";
import type { RankedWay, Way } from "../machine/way.ts";
import { directNouns } from "./direct-nouns.ts";
import type { Item } from "./item.ts";
import { arcUpTo } from "./numbers.ts";
import { goesBy, holeStands } from "./place-words.ts";
import { scalesStand } from "./reading-words.ts";
import { wayName, wayShort } from "./way-words.ts";

/** Where everything stands before the first place: pin, ring and dial, and which way the scales go from there. */
export function startItem({ start, way }: Pick<PlannedJob, "start" | "way">, head: Head): Item {
  const hole = holeStands(start, way);
  const scales = scalesStand(start, head);
  const minus = (start.ring ?? start.dial)?.side === "minus";
  const stands = [...(hole === "" ? [] : [`pin in ${hole}`]), ...scales].join(", ");
  const falls = scales.length === 0 ? "" : `; ${minus ? "the figures FALL" : "the figures rise"} from there`;
  return { term: "Start", text: stands === "" ? `at tooth ${start.tooth}` : `at tooth ${start.tooth}: ${stands}${falls}` };
}

/** What is done at each place, in its order. */
export function eachPlaceItem(way: Way, head: Head): Item {
  return { term: "Each place", text: `Unlock, ${goingOn(way, head)}, lock, cut.` };
}

/** How the next place is gone to. */
export function goingOn(way: Way, { plates }: Head): string {
  switch (goesBy(way)) {
    case "marks":
      return "go on to the reading";
    case "spindle-holes":
      return `go on to the ${directNouns(way.setting).place}, pin home`;
    case "both-cranks":
      return "large crank to its hole, small crank to its hole, both pins home";
    case "spindle-row":
      return "go on to the hole and on to that of the row, pin home";
    case "index-holes": {
      if (way.by !== "moves") return "go on to the hole, pin home";
      if (way.setting.circle === null) return plates.length === 0 ? "go on the whole turns" : "go on the whole turns, pin home";
      if ("small" in way.setting) return "large crank, then small crank, both pins home, arms round to the pins";
      return "second" in way.setting
        ? "both parts in their order, both pins home, arms round to the pin"
        : "go on to the hole, pin home, arms round to the pin";
    }
  }
}

/** What the column of errors means; nothing where there is none. */
export function offByItems({ exact }: Pick<PlannedJob, "exact">): readonly Item[] {
  return exact ? [] : [{ term: "Off by", text: "how far the work stands from its true angle: + too far, − short of it" }];
}

/** Other ways to do the same job, the best of each, with how far it is off at its worst. */
export function otherWayItems(others: readonly RankedWay[]): readonly Item[] {
  const best = others.filter((way, index) => others.findIndex((each) => wayName(each) === wayName(way)) === index);
  return best.map((way, index) => ({ term: index === 0 ? "Or" : "", text: otherWords(way) }));
}

function otherWords(way: RankedWay): string {
  return `${wayShort(way)}: ${way.worstArcSeconds === 0 ? "no error" : `no place over ${arcUpTo(way.worstArcSeconds)} off`}`;
}
