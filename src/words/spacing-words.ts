import type { ProposedSpacing } from "../machine/propose-spacing.ts";
import type { UnequalSpacing } from "../machine/unequal-spacing.ts";
import { formatAngle } from "../number/angle.ts";
import type { Item } from "./item.ts";
import { arcUpTo, counted, shortAngle } from "./numbers.ts";
import { plateName } from "./plates.ts";

/** A work with unequal spaces as a title. */
export function spacingTitle({ places }: UnequalSpacing): string {
  return `${counted(places.length, "place").toUpperCase()}, UNEQUAL SPACES`;
}

/** How unequal spaces are set up, and how far any place is off. */
export function spacingItems({ circle, exact, worstArcSeconds, closes, left, places }: UnequalSpacing): readonly Item[] {
  return [
    ...(circle === null
      ? []
      : [
          { term: "Plate", text: `${plateName(circle)}, circle of ${circle.holes} holes, for every place` },
          { term: "Plate stop pin", text: "in" },
        ]),
    ...(worstArcSeconds === null ? scaleItems(places) : [errorItem(exact, worstArcSeconds)]),
    {
      term: "Round",
      text: closes ? "the spaces make up whole turns of the work" : `the spaces leave ${formatAngle(left, 1)} of the turn`,
    },
  ];
}

/** A spacing that was proposed: its angles, and in what they differ. */
export function proposedItems({ angles, opposite, allDiffer, uneven }: ProposedSpacing): readonly Item[] {
  const half = opposite ? angles.slice(0, angles.length / 2) : angles;
  const repeated = opposite ? ", and once more: every flute has another opposite, to measure over" : "";
  const alike = allDiffer ? (opposite ? "No two of the half are alike" : "No two are alike") : "No two neighbours are alike";
  return [
    { term: "Spaces", text: `${half.map(shortAngle).join(", ")}${repeated}` },
    { term: "Uneven", text: `by ${shortAngle(uneven)} at most, either way. ${alike}; they come to one turn exactly.` },
  ];
}

function errorItem(exact: boolean, worstArcSeconds: number): Item {
  return exact
    ? { term: "Exact", text: "every place is on a hole" }
    : { term: "NEAR, NOT EXACT", text: `no place over ${arcUpTo(worstArcSeconds)} off, each from one zero` };
}

/** Without a plate the finest scale is set, and says how far it leaves a place. */
function scaleItems(places: UnequalSpacing["places"]): readonly Item[] {
  const scale = spacingScale(places);
  if (scale === null) return [];
  const worst = places.reduce((most, place) => Math.max(most, Math.abs(place[scale]?.errorArcSeconds ?? 0)), 0);
  const text = worst === 0 ? "every place is on a mark" : `no place over ${arcUpTo(worst)} off, each from one zero`;
  return [{ term: `By the ${scale}`, text }];
}

/** The scale that unequal spaces are set by where there is no plate: the dial before the ring; null where there is neither. */
export function spacingScale([place]: UnequalSpacing["places"]): "dial" | "ring" | null {
  if (place?.dial) return "dial";
  return place?.ring ? "ring" : null;
}
