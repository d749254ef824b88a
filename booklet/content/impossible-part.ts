import { type Head, type NearSetting, nearSettings } from "../../src/index.ts";
import type { Cell, Column, Part, Row } from "./blocks.ts";
import { tablesOf } from "./degrees-part.ts";
import type { HeadCount } from "./head-counts.ts";
import { type Desk, inSection } from "./parts.ts";
import { countColumns, nothing, stepCell, stepColumn } from "./setting-cells.ts";
import { anchorOf, listed, seconds } from "./words.ts";

/** Counts that cannot be done with what the head has: printed, with what would help. */
export function impossiblePart(desk: Desk): Part | null {
  const { head } = desk;
  const counts = inSection(desk, "impossible");
  if (counts.length === 0) return null;
  const tables = new Set(tablesOf(desk));
  return {
    id: "impossible",
    title: "Counts this head cannot do",
    mark: "NOT POSSIBLE",
    warning:
      "None of these counts can be done exactly with what this head has. One near move made over and over spoils the part.",
    blocks: [
      { kind: "paragraph", text: routes(head) },
      {
        kind: "table",
        headwords: true,
        summary: "Counts that cannot be done",
        columns: [
          ...countColumns,
          stepColumn,
          { head: "nearest counts\nthat can be done", align: "left" },
          ...scales(head).map(({ name }): Column => ({ head: name, group: "FROM ONE ZERO, WORST BY", align: "right" })),
          ...(tables.size === 0 ? [] : [{ head: "degree\ntable", align: "right" } as const]),
          { head: "a circle of these holes\nwould do it, if drilled", align: "left", wraps: true },
        ],
        rows: counts.map((count) => impossibleRow(head, count, tables)),
      },
    ],
  };
}

/** What remains, in order of effort. */
function routes(head: Head): string {
  const ways = [
    ...(head.gearing === null || head.gears.length >= 2 ? [] : ["change gears: the plate of this head can be geared"]),
    "a circle that is a multiple of the one named, drilled on a plate of your own",
    ...(head.ring === null && head.dial === null
      ? []
      : [
          "every position set from one zero, by the nearest hole or the nearest reading, if the worst error printed is one that the work can bear",
        ]),
  ];
  return `Routes that remain: ${ways.join("; ")}.`;
}

interface ZeroScale {
  readonly name: string;
  readonly kind: "nearest-hole" | "dial" | "ring";
}

/** What each position can be set by from one zero on this head. */
function scales({ plates, dial, ring }: Head): readonly ZeroScale[] {
  return [
    ...(plates.length === 0 ? [] : [{ name: "nearest hole", kind: "nearest-hole" } as const]),
    ...(dial === null ? [] : [{ name: "dial", kind: "dial" } as const]),
    ...(ring === null ? [] : [{ name: "ring", kind: "ring" } as const]),
  ];
}

function impossibleRow(head: Head, { divisions, impossible }: HeadCount, tables: ReadonlySet<number>): Row {
  const circles = impossible?.circlesThatWouldDo ?? [];
  const nearest = impossible?.nearestCounts ?? [];
  const near = nearSettings(head, { divisions }, { methods: ["simple", "dial"], teethPerMove: 1 });
  return {
    anchor: anchorOf("impossible", divisions),
    cells: [
      { text: String(divisions) },
      { text: "×", reversed: true },
      stepCell(divisions),
      { text: nearest.length === 0 ? nothing : listed(nearest) },
      ...scales(head).map(({ kind }) => ({ text: worstOf(near.find((each) => each.kind === kind)) })),
      ...(tables.size === 0 ? [] : [tableCell(divisions, tables)]),
      { text: circles.length === 0 ? nothing : circles.join(", ") },
    ],
  };
}

/** The worst error of a near setting; nothing where a position would be nearer to its neighbour's place. */
function worstOf(near: NearSetting | undefined): string {
  return near === undefined ? nothing : seconds(near.worstArcSeconds);
}

function tableCell(divisions: number, tables: ReadonlySet<number>): Cell {
  const anchor = anchorOf("degrees", divisions);
  return tables.has(divisions) ? { text: `page {page:${anchor}}`, link: anchor } : { text: nothing };
}
