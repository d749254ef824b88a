import {
  checkPositions,
  type DialPosition,
  type Exact,
  type Head,
  type HolePosition,
  leastCountArcSeconds,
  type MoveBetween,
  type Position,
  type PositionOptions,
  type Reading,
  type Scale,
  type Setting,
} from "../src/index.ts";
import { type Column, table } from "./table.ts";
import { arc, count, degrees, paragraph } from "./words.ts";

/** The positions of a setting as a table, one line a tooth. */
export function positionLines(setting: Setting, list: readonly Position[], head: Head): string[] {
  const columns: Column[] = [
    { head: "tooth", cells: list.map(({ tooth }) => String(tooth)) },
    ...(setting.method === "dial" ? [] : [{ head: "go on by", cells: list.map(({ from }) => moveWords(from, setting)) }]),
    ...(setting.circle === null || setting.method === "dial"
      ? []
      : [
          { head: "turns", cells: list.map(({ turns }) => String(turns)) },
          { head: "hole", cells: list.map(({ hole }) => String(hole)) },
        ]),
    ...(setting.second ? [{ head: "rear hole", cells: list.map(({ rearHole }) => String(rearHole)) }] : []),
    ...scaleColumns(list, head),
    { head: "angle", cells: list.map(({ angle }) => degrees(angle)) },
  ];
  return [
    paragraph(
      `Positions from tooth 1${setting.circle === null || setting.method === "dial" ? "" : "; holes are numbered from 0, where the pin starts, the way the crank goes"}.`,
    ),
    "",
    ...table(columns),
  ];
}

/** A position set by itself from one zero. */
export interface FromZero {
  readonly tooth: number;
  readonly hole: HolePosition | null;
  readonly scales: DialPosition | null;
}

/** Positions from one zero as a table; each states its own error. */
export function fromZeroLines(rows: readonly FromZero[], circle: number | null, head: Head): string[] {
  const columns: Column[] = [
    { head: "tooth", cells: rows.map(({ tooth }) => String(tooth)) },
    ...(circle === null
      ? []
      : [
          { head: `hole of ${circle}`, cells: rows.map(({ hole }) => `${hole?.turns} t + ${hole?.hole}`) },
          { head: "off by", cells: rows.map(({ hole }) => errorWords(hole)) },
        ]),
    ...scaleColumns(
      rows.map(({ scales }) => ({ dial: scales?.dial ?? null, ring: scales?.ring ?? null })),
      head,
    ),
    { head: "true angle", cells: rows.map(({ scales, hole }) => degrees(scales?.angle ?? hole?.angle ?? "0")) },
  ];
  return [
    paragraph("NEAR ONLY: each position by itself from one zero, as crank turns from the zero; no error adds to the next."),
    "",
    ...table(columns),
  ];
}

/** The columns of a head's own scales. */
function scaleColumns(
  list: readonly Pick<Position, "dial" | "ring">[],
  { dial, ring, wormRatio }: Pick<Head, "dial" | "ring" | "wormRatio">,
): Column[] {
  return [
    ...(dial
      ? [
          { head: "dial", cells: list.map((at) => readingWords(at.dial, dial, wormRatio)) },
          { head: "off by", cells: list.map((at) => errorWords(at.dial)) },
        ]
      : []),
    ...(ring ? [{ head: "ring", cells: list.map((at) => readingWords(at.ring, ring, null)) }] : []),
  ];
}

/** A reading in the scale's own marks: whole turns of a dial, main mark, vernier line. */
function readingWords(reading: Reading | null, scale: Scale, wormRatio: Exact | null): string {
  if (reading === null) return "";
  const turns = wormRatio === null ? "" : `${reading.turns} t + `;
  const line = scale.vernierLines > 1 ? ` line ${reading.line}` : "";
  const shown =
    reading.figure === null
      ? `mark ${reading.mark}${line}`
      : figureWords(reading.figure, leastCountArcSeconds(scale, wormRatio ?? "1"));
  return `${turns}${shown}${reading.side === "minus" ? " minus" : ""}`;
}

/** The figure of a scale in degrees, with only the parts that it can show. */
function figureWords(figure: Exact, finest: number): string {
  const words = degrees(figure).replace(/^≈ /, "");
  if (finest % 3600 === 0) return words.replace(/ 00′ 00\.0″$/, "");
  if (finest % 60 === 0) return words.replace(/ 00\.0″$/, "");
  return finest % 1 === 0 ? words.replace(/\.0″$/, "″") : words;
}

function errorWords(reading: Pick<Reading, "errorArcSeconds"> | null): string {
  if (reading === null) return "";
  const { errorArcSeconds } = reading;
  return errorArcSeconds === 0 ? "0" : `${errorArcSeconds > 0 ? "+" : "−"}${arc(errorArcSeconds)}`;
}

function moveWords({ direction, moves, turns, spaces, second }: MoveBetween, { method, circle }: Setting): string {
  if (moves === 0) return "stay";
  const on = circle === null ? "" : `/${circle}`;
  const first = method === "direct" ? `${turns > 0 ? `${turns} + ` : ""}${spaces}${on}` : `${turns} + ${spaces}${on}`;
  const then = second
    ? ` ${second.direction === "with" ? "+" : "−"} ${second.turns > 0 ? `${second.turns} + ` : ""}${second.spaces}/${second.circle}`
    : "";
  return `${first}${then}${direction === "back" ? " BACK" : ""}`;
}

/** Where to check the work on the way. */
export function checkLines(setting: Setting, options: PositionOptions): string[] {
  const { teeth: _, ...rest } = options;
  const at = checkPositions(setting, rest).map(
    ({ move, tooth, hole, angle }) =>
      `after ${count(move, "move")} at tooth ${tooth}${hole === null || setting.method === "dial" ? "" : `, hole ${hole}`}, ${degrees(angle)}`,
  );
  return at.length === 0 ? [] : ["", paragraph(`On the way: ${at.join("; ")}.`)];
}
