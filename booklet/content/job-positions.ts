import { formatAngle, type Head, type Position, positions, type Scale, type Setting } from "../../src/index.ts";
import type { Block, Cell, Column, Row } from "./blocks.ts";
import { readingOf } from "./words.ts";

/** Every position of a job, or those of the teeth named, each with a box to tick. */
export function positionsTable(head: Head, { teeth }: { readonly teeth?: readonly number[] }, setting: Setting): Block {
  const all = positions(setting, { head, ...(teeth === undefined ? {} : { teeth }) });
  const chosen = teeth !== undefined;
  return {
    kind: "table",
    title: { text: "Positions", anchor: "positions" },
    folds: true,
    summary: "Positions of the job",
    columns: [
      { head: "", align: "center" },
      { head: "tooth", align: "right", strong: true },
      ...(chosen
        ? ([
            { head: "moves\nfrom last", align: "right" },
            ...(byHoles(setting)
              ? ([
                  { head: "turns", align: "right", strong: true },
                  { head: "spaces", align: "right", strong: true },
                ] as const)
              : []),
          ] as const)
        : ([{ head: "turns\nin all", align: "right" }] as const)),
      ...(byHoles(setting) ? [{ head: "hole", align: "right", strong: true } as const] : []),
      ...(setting.second ? [{ head: "rear\nhole", align: "right", strong: true } as const] : []),
      { head: "angle", align: "right" },
      ...scaleColumns(head, !byHoles(setting)),
    ],
    rows: all.map((position) => positionRow(head, position, chosen, setting)),
  };
}

/** Whether the hand finds its place by holes, and not by the marks of a dial. */
export function byHoles({ circle, method }: Setting): boolean {
  return circle !== null && method !== "dial";
}

/** What the dial stands at: whole turns from zero, and its reading. */
export function dialInWords(position: NonNullable<Position["dial"]>, dial: Scale): string {
  return `${position.turns} + ${readingOf(position, dial)}`;
}

function scaleColumns({ ring, dial }: Head, dialSet: boolean): Column[] {
  return [
    ...(ring ? [{ head: "ring", align: "right" } as const] : []),
    ...(dial ? [{ head: "turns +\ndial", align: "right", strong: dialSet } as const] : []),
  ];
}

function positionRow(
  head: Head,
  { tooth, from, turns, hole, rearHole, angle, ring, dial }: Position,
  chosen: boolean,
  setting: Setting,
): Row {
  const cells: Cell[] = [
    { text: "", box: true },
    { text: String(tooth) },
    ...(chosen
      ? [{ text: String(from.moves) }, ...(byHoles(setting) ? [{ text: String(from.turns) }, { text: String(from.spaces) }] : [])]
      : [{ text: String(turns) }]),
    ...(byHoles(setting) ? [{ text: String(hole) }] : []),
    ...(rearHole === undefined ? [] : [{ text: String(rearHole) }]),
    { text: formatAngle(angle) },
    ...(ring && head.ring ? [{ text: readingOf(ring, head.ring) }] : []),
    ...(dial && head.dial ? [{ text: dialInWords(dial, head.dial) }] : []),
  ];
  return { cells };
}
