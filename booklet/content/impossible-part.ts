import type { Head } from "../../src/index.ts";
import type { Part, Row } from "./blocks.ts";
import type { HeadCount } from "./head-counts.ts";
import { type Desk, inSection } from "./parts.ts";
import { countColumns, nothing, stepCell, stepColumn } from "./setting-cells.ts";
import { anchorOf, listed } from "./words.ts";

/** Counts that cannot be done with what the head has: printed, with what would help. */
export function impossiblePart(desk: Desk): Part | null {
  const { head } = desk;
  const counts = inSection(desk, "impossible");
  if (counts.length === 0) return null;
  return {
    id: "impossible",
    title: "Counts this head cannot do",
    mark: "NOT POSSIBLE",
    warning: "None of these counts can be done exactly with what this head has. A near hole is a spoilt part, not a way round.",
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
          { head: "a circle of these holes would do it, if drilled", align: "left", wraps: true },
        ],
        rows: counts.map(impossibleRow),
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
      : ["the nearest reading of ring or dial for each position from one zero, with its error"]),
  ];
  return `Routes that remain: ${ways.join("; ")}.`;
}

function impossibleRow({ divisions, impossible }: HeadCount): Row {
  const circles = impossible?.circlesThatWouldDo ?? [];
  const nearest = impossible?.nearestCounts ?? [];
  return {
    anchor: anchorOf("impossible", divisions),
    cells: [
      { text: String(divisions) },
      { text: "×", reversed: true },
      stepCell(divisions),
      { text: nearest.length === 0 ? nothing : listed(nearest) },
      { text: circles.length === 0 ? nothing : circles.join(", ") },
    ],
  };
}
