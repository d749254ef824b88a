import {
  type Exact,
  formatAngle,
  type Head,
  type MoveBetween,
  type NearRecutFromStart,
  type Reading,
  type RecutPlan,
  type RecutPurpose,
  type RepairOnHead,
  type UnprovedSetting,
} from "../../src/index.ts";
import { fixed } from "../../src/words/numbers.ts";
import type { Block, Cell, Column, Row } from "./blocks.ts";

import { nothing } from "./setting-cells.ts";
import { shortAngle } from "./words.ts";

/** A place of the repair with what is set to reach it. */
interface Place {
  readonly toothSpace: number;
  readonly purpose: RecutPurpose;
  readonly cells: readonly Cell[];
}

/** The moves of a repair, each with a box to tick. */
export function repairMoves(job: RepairOnHead, head: Head): Block {
  const { plan } = job.repair;
  const { columns, places } = placesOf(job, head);
  return {
    kind: "table",
    folds: places.length > mostInOneColumn,
    summary: "Moves of the repair",
    columns: [
      { head: "", align: "center" },
      { head: "space", align: "right", strong: true },
      { head: "do", align: "center" },
      { head: "flanks", align: "left" },
      ...columns,
    ],
    rows: places.map((place): Row => ({ cells: [{ text: "", box: true }, ...placeCells(place, plan), ...place.cells] })),
  };
}

const mostInOneColumn = 16;

const words: Readonly<Record<RecutPurpose, Cell>> = {
  "set the cutter": { text: "START", reversed: true },
  recut: { text: "cut" },
  "prove the count": { text: "PROVE", reversed: true },
};

/** Space, what is done there, and of its two flanks which are sound. */
function placeCells({ toothSpace, purpose }: Place, { spaces }: RecutPlan): readonly Cell[] {
  const cut = purpose === "recut" ? spaces.find((each) => each.toothSpace === toothSpace) : undefined;
  const flanks = cut?.flanks.map(({ state }) => (state === "sound" ? "sound" : "new")) ?? ["sound", "sound"];
  return [{ text: String(toothSpace) }, words[purpose], { text: flanks.join(" | ") }];
}

function placesOf(
  { setting, moves, near: [near] }: RepairOnHead,
  head: Head,
): { columns: readonly Column[]; places: readonly Place[] } {
  if (setting !== null)
    return byMoves(
      setting,
      moves.map((move) => ({ ...move, errorArcSeconds: null })),
      head,
    );
  if (near?.by === "moves") return byMoves(near.setting, near.places, head);
  return near === undefined ? { columns: [], places: [] } : fromStart(near, head);
}

type Moved = RepairOnHead["moves"][number] & { readonly errorArcSeconds: number | null };

function byMoves(
  setting: UnprovedSetting,
  moves: readonly Moved[],
  head: Head,
): { columns: readonly Column[]; places: readonly Place[] } {
  const { circle, second, method } = setting;
  const byDial = method === "dial";
  const near = moves.some(({ errorArcSeconds }) => errorArcSeconds !== null);
  const columns: Column[] = [
    ...(byDial ? [] : goOnColumns(setting)),
    ...(circle === null || byDial
      ? []
      : [{ head: second ? "hole" : `hole\nof ${circle}`, group: second ? "THEN AT" : undefined, align: "right" } as Column]),
    ...(second ? [{ head: "rear", group: "THEN AT", align: "right" } as const] : []),
    ...scaleColumns(head, byDial),
    ...(near ? [errorColumn] : []),
  ];
  return {
    columns: columns.map(withoutEmptyGroup),
    places: moves.map(({ toothSpace, purpose, position, errorArcSeconds }, index) => ({
      toothSpace,
      purpose,
      cells: [
        ...(byDial ? [] : goOnCells(position.from, setting, index === 0)),
        ...(circle === null || byDial ? [] : [{ text: String(position.hole) }]),
        ...(second ? [{ text: String(position.rearHole) }] : []),
        ...scaleCells(position, head),
        ...(near ? [{ text: signed(errorArcSeconds ?? 0) }] : []),
      ],
    })),
  };
}

function withoutEmptyGroup({ group, ...column }: Column): Column {
  return group === undefined ? column : { ...column, group };
}

function goOnColumns({ method, circle, second }: UnprovedSetting): Column[] {
  const on = circle === null ? "" : `\nof ${circle}`;
  return [
    ...(method === "direct" ? [] : [{ head: "turns", group: "GO ON", align: "right", strong: true } as const]),
    { head: `spaces${on}`, group: "GO ON", align: "right", strong: true },
    ...(second ? [{ head: `spaces\nof ${second.circle}`, group: "THEN BOTH", align: "right", strong: true } as const] : []),
  ];
}

function goOnCells({ direction, turns, spaces, second }: MoveBetween, { method }: UnprovedSetting, first: boolean): Cell[] {
  const cells = [...(method === "direct" ? [] : [String(turns)]), String(spaces)];
  const both =
    second &&
    `${(second.direction === "with") === (direction === "forward") ? "on" : "back"} ${second.turns > 0 ? `${second.turns} turns + ` : ""}${second.spaces}`;
  return [...cells, ...(both === undefined ? [] : [both])].map((text) => ({ text: first ? nothing : text }));
}

function fromStart(
  { by, circle, places }: NearRecutFromStart,
  head: Head,
): { columns: readonly Column[]; places: readonly Place[] } {
  const holes: Column[] =
    circle === null
      ? []
      : [
          { head: "turns", group: "FROM START", align: "right", strong: true },
          { head: `hole\nof ${circle.holes}`, group: "FROM START", align: "right", strong: true },
        ];
  return {
    columns: [...holes, ...scaleColumns(head, by !== "nearest-hole"), errorColumn],
    places: places.map(({ toothSpace, purpose, hole, dial, ring, errorArcSeconds }) => ({
      toothSpace,
      purpose,
      cells: [
        ...(circle === null ? [] : [{ text: String(hole?.turns) }, { text: String(hole?.hole) }]),
        ...scaleCells({ dial, ring }, head),
        { text: signed(errorArcSeconds) },
      ],
    })),
  };
}

const errorColumn: Column = { head: "off by", align: "right" };

/** Dial and ring, bold where they are what is set. */
function scaleColumns({ dial, ring }: Head, strong: boolean): Column[] {
  const look = strong ? { strong } : {};
  const marks: Column[] =
    dial === null || dial.figures === "angle"
      ? [{ head: "reads", group: "DIAL", align: "right", ...look }]
      : [
          { head: "mark", group: "DIAL", align: "right", ...look },
          ...(dial.vernierLines > 1 ? [{ head: "vernier", group: "DIAL", align: "right", ...look } as const] : []),
        ];
  return [
    ...(dial ? [{ head: "turns", group: "DIAL", align: "right", ...look } as const, ...marks] : []),
    ...(ring ? [{ head: "ring", align: "right", ...(strong && dial === null ? { strong } : {}) } as const] : []),
  ];
}

function scaleCells({ dial, ring }: { readonly dial: Reading | null; readonly ring: Reading | null }, head: Head): Cell[] {
  return [
    ...(dial && head.dial
      ? [
          { text: String(dial.turns) },
          ...reading(dial, head.dial.figures === "angle" ? dial.figure : null, head.dial.vernierLines, true),
        ]
      : []),
    ...(ring && head.ring ? reading(ring, ring.figure, head.ring.vernierLines, false) : []),
  ];
}

/** The figure of a scale, or its mark and vernier line, apart or together. */
function reading({ mark, line }: Reading, figure: Exact | null, vernierLines: number, apart: boolean): Cell[] {
  // On a dial the seconds stand in every line, so that none is read for minutes.
  if (figure !== null) return [{ text: apart ? formatAngle(figure) : shortAngle(figure) }];
  if (vernierLines === 1) return [{ text: String(mark) }];
  return apart ? [{ text: String(mark) }, { text: String(line) }] : [{ text: `${mark} + ${line}` }];
}

function signed(arcSeconds: number): string {
  const size = Math.abs(arcSeconds);
  if (size < 0.05) return "0″";
  const text = size >= 600 ? `${fixed(size / 60, 1)}′` : `${fixed(size, 1)}″`;
  return `${arcSeconds > 0 ? "+" : "−"}${text}`;
}
