import type { Head } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import type { PlannedJob } from "../machine/plan.ts";
import type { Reading } from "../machine/scale-reader.ts";
import { formatAngle } from "../number/angle.ts";
import { goColumns } from "./go-columns.ts";
import { signedSeconds, whole } from "./numbers.ts";
import type { PlaceColumn, ScaleColumn } from "./place-column.ts";
import { goesBy, goesOnFromLast } from "./place-words.ts";
import { readingShort } from "./reading-words.ts";
import { standColumns } from "./stand-columns.ts";

/**
 * The columns that the places of a job need, in the order of work: how to go on, where that stands,
 * how far it is off, what dial and ring show. A column that says nothing on this way is not there.
 */
export function placeColumns(job: Pick<PlannedJob, "way" | "places">, head: Head): readonly PlaceColumn[] {
  const by = goesBy(job.way, head);
  const isNear = !job.way.setting.exact;
  return [
    ...(goesOnFromLast(by) ? goColumns(job, by === "index-holes") : []),
    ...(by === "marks" ? [] : standColumns(job, by)),
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
