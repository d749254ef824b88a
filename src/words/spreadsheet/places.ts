import type { Place } from "../../machine/place.ts";
import type { BothScales } from "../../machine/scale-reader.ts";
import type { SpacedPlace } from "../../machine/unequal-spacing.ts";
import { type Cells, degreesOf, secondsOf, type TextColumn, told } from "./columns.ts";

const standing = (place: Place) => ("hole" in place ? place : null);
const byMoves = (place: Place) => (place.by === "moves" ? place : null);
const byHoles = (place: Place) => ("from" in place ? place : null);
const minusIf = (isBack: boolean, value: number | undefined) =>
  value === undefined ? null : isBack && value > 0 ? -value : value;
const goOn = (place: Place, key: "turns" | "spaces") => {
  const from = byHoles(place)?.from;
  return from && minusIf(from.direction === "back", from[key]);
};

const ofDial: Cells<BothScales> = {
  "dial turns": ({ dial }) => dial?.turns,
  "dial mark": ({ dial }) => dial?.mark,
  "dial line": ({ dial }) => dial?.line,
};

const ofRing: Cells<BothScales> = {
  "ring mark": ({ ring }) => ring?.mark,
  "ring line": ({ ring }) => ring?.line,
};

/** Of a place of any kind, whatever it is counted by. */
export const ofAnyPlace: Cells<Place> = {
  "go on turns": (place) => goOn(place, "turns"),
  "go on spaces": (place) => goOn(place, "spaces"),
  "second turns": (place) => byMoves(place)?.from.second?.turns,
  "second spaces": (place) => byMoves(place)?.from.second?.spaces,
  "second part": (place) => byMoves(place)?.from.second?.direction,
  "small turns": (place) => (place.by === "both-cranks" ? place.smallTurns : byMoves(place)?.from.small?.turns),
  "small spaces": (place) => byMoves(place)?.from.small?.spaces,
  turns: (place) => standing(place)?.turns,
  hole: (place) => standing(place)?.hole,
  "row hole": (place) => ("vernierHole" in place ? place.vernierHole : null),
  "rear hole": (place) => byMoves(place)?.rearHole,
  "small hole": (place) => ("smallHole" in place ? place.smallHole : null),
  ...ofDial,
  ...ofRing,
  "off by seconds": ({ errorArcSeconds }) => secondsOf(errorArcSeconds),
  degrees: ({ angle }) => degreesOf(angle),
};

const ofPlace: Cells<Place> = { tooth: ({ tooth }) => tooth, ...ofAnyPlace };

/**
 * The places of a job as columns with one value a cell, for a spreadsheet or a stepper: what to go on by
 * (below 0 where it goes back), where that stands, what dial and ring show, how far it is off in
 * arc-seconds, and the true angle in degrees to ten decimals, the only figures that are rounded.
 */
export function positionColumns(places: readonly Place[]): readonly TextColumn[] {
  return told(places, ofPlace);
}

const ofSpaced: Cells<SpacedPlace> = {
  place: ({ place }) => place,
  "go on turns": ({ from }) => from?.turns,
  "go on spaces": ({ from }) => from?.spaces,
  turns: ({ turns }) => turns,
  hole: ({ hole }) => hole,
  "off by seconds": ({ errorArcSeconds }) => errorArcSeconds && secondsOf(errorArcSeconds),
  ...ofDial,
  "dial off by seconds": ({ dial }) => dial && secondsOf(dial.errorArcSeconds),
  ...ofRing,
  degrees: ({ angle }) => degreesOf(angle),
};

/** The places of unequal spaces as columns, as {@link positionColumns} has those of a job. */
export function spacingColumns(places: readonly SpacedPlace[]): readonly TextColumn[] {
  return told(places, ofSpaced);
}
