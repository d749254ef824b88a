import type { Head } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import type { AnyPlace, MoveBetween, Place } from "../machine/place.ts";
import type { PlannedJob } from "../machine/plan.ts";
import type { Reading } from "../machine/readings.ts";
import { formatAngle } from "../number/angle.ts";
import { signedArc } from "./numbers.ts";
import { goesBy } from "./place-words.ts";
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
  const by = goesBy(job.way);
  const isNear = !job.way.setting.exact;
  return [
    ...(by === "marks" ? [] : holeColumns(job, by === "index-holes")),
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
  cell: ({ errorArcSeconds }) => signedArc(errorArcSeconds),
};

const angleColumn: PlaceColumn = { key: "angle", head: "true angle", sets: false, cell: ({ angle }) => formatAngle(angle, 1) };

type Stands = Extract<Place, { readonly hole: number | null }>;

function holeColumns({ way }: Pick<PlannedJob, "way">, byCrank: boolean): readonly PlaceColumn[] {
  const { circle } = way.setting;
  const rear = "second" in way.setting ? way.setting.second.circle : null;
  const stands = (cell: (place: Stands) => string) => (place: Place) => ("hole" in place ? cell(place) : "");
  const of = circle === null ? "" : ` of ${circle}`;
  const goes = (cell: (from: GoOn) => string) => stands(({ from }) => (isStill(from) ? "–" : cell(from)));
  return [
    ...(byCrank
      ? [{ key: "go-turns", head: "turns", group: "GO ON BY", sets: true, cell: goes(({ turns }) => String(turns)) } as const]
      : []),
    { key: "go-spaces", head: `spaces${of}`, group: "GO ON BY", sets: true, cell: goes(spacesWords) },
    ...(rear === null ? [] : [{ key: "go-both", head: `of ${rear}`, group: "BOTH", sets: true, cell: goes(bothWords) } as const]),
    ...(byCrank && circle !== null
      ? [{ key: "turns", head: "turns", group: "THEN AT", sets: false, cell: stands(turnsWords) } as const]
      : []),
    ...(circle === null
      ? []
      : [{ key: "hole", head: `hole${of}`, group: "THEN AT", sets: false, cell: stands(({ hole }) => String(hole)) } as const]),
    ...(rear === null
      ? []
      : [{ key: "rear-hole", head: `rear of ${rear}`, group: "THEN AT", sets: false, cell: stands(rearWords) } as const]),
  ];
}

type GoOn = Pick<MoveBetween, "direction" | "turns" | "spaces"> & Partial<Pick<MoveBetween, "second">>;

function isStill({ turns, spaces, second }: GoOn): boolean {
  return turns === 0 && spaces === 0 && (second === undefined || second.spaces + second.turns === 0);
}

function spacesWords({ direction, spaces }: GoOn): string {
  return direction === "back" ? `BACK ${spaces}` : String(spaces);
}

function bothWords({ direction, second }: GoOn): string {
  if (second === undefined) return "";
  const goesOn = (second.direction === "with") === (direction === "forward");
  return `${goesOn ? "on" : "back"} ${second.turns > 0 ? `${second.turns} + ` : ""}${second.spaces}`;
}

function turnsWords({ turns }: Stands): string {
  return String(turns).replace("-", "−");
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
  const turns = column("dial-turns", "turns", (reading) => String(reading.turns));
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
