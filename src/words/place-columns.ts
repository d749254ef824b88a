import type { Head } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import type { AnyPlace, MoveBetween, Place } from "../machine/place.ts";
import type { PlannedJob } from "../machine/plan.ts";
import type { Reading } from "../machine/scale-reader.ts";
import type { Way } from "../machine/way.ts";
import { formatAngle } from "../number/angle.ts";
import { signedSeconds, whole } from "./numbers.ts";
import { type GoesBy, goesBy } from "./place-words.ts";
import { directNouns } from "./plates.ts";
import { readingShort } from "./reading-words.ts";

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
    | "turns"
    | "hole"
    | "rear-hole"
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

/**
 * The columns that the places of a job need, in the order of work: how to go on, where that stands,
 * how far it is off, what dial and ring show. A column that says nothing on this way is not there.
 */
export function placeColumns(job: Pick<PlannedJob, "way" | "places">, head: Head): readonly PlaceColumn[] {
  const by = goesBy(job.way, head);
  const isNear = !job.way.setting.exact;
  return [
    ...(by === "marks" || by === "spindle-row" ? [] : goColumns(job, by === "index-holes")),
    ...(by === "marks" ? [] : standColumns(job.way, by)),
    ...(isNear ? [errorColumn] : []),
    ...scaleColumns(head, job.way.by === "ring" ? "ring" : by === "marks" ? "dial" : null),
    angleColumn,
  ];
}

/**
 * The columns of the scales that a head has.
 *
 * @param sets - The scale that the hand sets; the other is a check.
 */
export function scaleColumns({ dial, ring }: Pick<Head, "dial" | "ring">, sets: "dial" | "ring" | null): readonly ScaleColumn[] {
  return [...(dial ? dialColumns(dial, sets === "dial") : []), ...(ring ? [ringColumn(ring, sets === "ring")] : [])];
}

const errorColumn: PlaceColumn = {
  key: "error",
  head: "off by",
  sets: false,
  cell: ({ errorArcSeconds }) => signedSeconds(errorArcSeconds),
};

const angleColumn: PlaceColumn = { key: "angle", head: "true angle", sets: false, cell: ({ angle }) => formatAngle(angle, 1) };

type Stands = Extract<Place, { readonly hole: number | null }>;

function stands(cell: (place: Stands) => string): PlaceColumn["cell"] {
  return (place) => ("hole" in place ? cell(place) : "");
}

function goes(cell: (from: GoOn) => string): PlaceColumn["cell"] {
  return stands(({ from }) => (isStill(from) ? "–" : cell(from)));
}

/** How to go on from the place before; a part that goes back is made first, so that the worm is last moved forward. */
function goColumns({ way: { setting }, places }: Pick<PlannedJob, "way" | "places">, byCrank: boolean): readonly PlaceColumn[] {
  const second = "second" in setting ? setting.second : null;
  const bothFirst = second?.direction === "against";
  const group = bothFirst ? "THEN GO ON BY" : "GO ON BY";
  const turns: PlaceColumn = { key: "go-turns", head: "turns", group, sets: true, cell: goes((on) => back(on, on.turns)) };
  const spaces: PlaceColumn = {
    key: "go-spaces",
    head: `spaces${ofCircle(setting)}`,
    group,
    sets: true,
    cell: goes((on) => (byCrank ? String(on.spaces) : back(on, on.spaces))),
  };
  const alone = byCrank ? [turns, spaces] : [spaces];
  if (second === null) return alone;
  const hasTurns = places.some((place) => place.by === "moves" && (place.from.second?.turns ?? 0) > 0);
  const both: PlaceColumn = {
    key: "go-both",
    head: `${hasTurns ? "turns + " : ""}spaces${ofCircle(second)}`,
    group: bothFirst ? "FIRST BOTH" : "THEN BOTH",
    sets: true,
    cell: goes(bothWords),
  };
  return bothFirst ? [both, ...alone] : [...alone, both];
}

/** Where the pins then stand; nothing where any hole serves. */
function standColumns({ setting }: Way, by: GoesBy): readonly PlaceColumn[] {
  if (setting.circle === null) return [];
  const sets = by === "spindle-row";
  const group = sets ? "GO ON TO" : "THEN AT";
  const turns: PlaceColumn = { key: "turns", head: "turns", group, sets: false, cell: stands((place) => whole(place.turns)) };
  const hole: PlaceColumn = {
    key: "hole",
    head: `${directNouns(setting).place}${ofCircle({ circle: setting.circle / rowOf(setting) })}`,
    group,
    sets,
    cell: stands((place) => String(place.hole)),
  };
  if (sets) {
    const row = `of the row${ofCircle({ circle: rowOf(setting) })}`;
    return [hole, { key: "row-hole", head: row, group, sets, cell: stands((place) => String(place.vernierHole ?? "")) }];
  }
  const there = by === "index-holes" ? [turns, hole] : [hole];
  if (!("second" in setting)) return there;
  return [...there, { key: "rear-hole", head: `rear${ofCircle(setting.second)}`, group, sets: false, cell: stands(rearWords) }];
}

/** Holes of the row beside a direct plate; 1 where there is none. */
function rowOf(setting: Way["setting"]): number {
  return "vernierHoles" in setting ? (setting.vernierHoles ?? 1) : 1;
}

function ofCircle({ circle }: { readonly circle: number | null }): string {
  return circle === null ? "" : ` of ${circle}`;
}

type GoOn = Pick<MoveBetween, "direction" | "turns" | "spaces"> & Partial<Pick<MoveBetween, "second">>;

function isStill({ turns, spaces, second }: GoOn): boolean {
  return turns === 0 && spaces === 0 && (second === undefined || second.spaces + second.turns === 0);
}

/** What is read first says that it goes back. */
function back({ direction }: GoOn, count: number): string {
  return direction === "back" ? `BACK ${count}` : String(count);
}

function bothWords({ direction, second }: GoOn): string {
  if (second === undefined) return "";
  const goesOn = (second.direction === "with") === (direction === "forward");
  return `${goesOn ? "on" : "back"} ${second.turns > 0 ? `${second.turns} + ` : ""}${second.spaces}`;
}

function rearWords(place: Stands): string {
  return place.by === "moves" ? String(place.rearHole ?? "") : "";
}

function dialColumns({ figures, vernierLines }: Scale, sets: boolean): readonly ScaleColumn[] {
  const column = (key: ScaleColumn["key"], head: string, words: (reading: Reading) => string): ScaleColumn => ({
    key,
    head,
    group: "DIAL",
    sets,
    cell: ({ dial }) => (dial ? words(dial) : ""),
  });
  const turns = column("dial-turns", "turns", (reading) => whole(reading.turns));
  // On a dial the seconds stand in every line, so that none is read for minutes.
  if (figures === "angle") {
    return [turns, column("dial", "reads", ({ figure }) => (figure === null ? "" : formatAngle(figure)))];
  }
  const mark = column("dial", "mark", (reading) => String(reading.mark));
  return vernierLines === 1 ? [turns, mark] : [turns, mark, column("dial-line", "vernier", ({ line }) => String(line))];
}

function ringColumn(ring: Scale, sets: boolean): ScaleColumn {
  return { key: "ring", head: "ring", sets, cell: (place) => (place.ring ? readingShort(place.ring, ring) : "") };
}
