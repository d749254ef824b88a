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
  positions,
  type Reading,
  type Scale,
  type Setting,
  type UnprovedSetting,
} from "../src/index.ts";
import { type Column, table } from "./table.ts";
import { arc, count, degrees, paragraph } from "./words.ts";

/** The positions of a setting as a table, one line a tooth. */
export function positionLines(setting: Setting, list: readonly Position[], head: Head, startHole = 0): string[] {
  const columns: Column[] = [
    { head: "tooth", cells: list.map(({ tooth }) => String(tooth)) },
    ...(setting.method === "dial" ? [] : [{ head: "go on by", cells: list.map(({ from }) => moveWords(from, setting)) }]),
    ...(setting.circle === null || setting.method === "dial"
      ? []
      : [
          ...(setting.method === "direct"
            ? []
            : [{ head: "turns", cells: list.map(({ turns }) => String(turns).replace("-", "−")) }]),
          { head: "hole", cells: list.map(({ hole }) => String(hole)) },
        ]),
    ...(setting.second ? [{ head: "rear hole", cells: list.map(({ rearHole }) => String(rearHole)) }] : []),
    ...scaleColumns(list, head),
    { head: "angle", cells: list.map(({ angle }) => degrees(angle)) },
  ];
  return [
    paragraph(`Positions from tooth 1. ${legend(setting, startHole)}`.trim()),
    "",
    ...table(columns),
    ...backLines(setting, list),
    ...secondRoundLines(setting, startHole),
  ];
}

/** What the columns mean. */
function legend({ method, circle }: Setting, startHole: number): string {
  if (circle === null || method === "dial") return "";
  const numbered = `Holes are numbered ${startHole === 0 ? "from 0, where the pin starts, " : ""}the way the ${method === "direct" ? "work" : "crank"} goes`;
  const start = startHole === 0 ? "" : `; the pin starts in hole ${startHole}`;
  if (method === "direct") return `${numbered}${start}.`;
  return `"Go on by" is turns + spaces from the line before; "turns" and "hole" are where the pin then stands, counted from the start. ${numbered}${start}.`;
}

/** Play is taken up one way, also where the list goes back. */
function backLines({ method }: Setting, list: readonly Position[]): string[] {
  if (method === "direct" || list.every(({ from }) => from.direction === "forward")) return [];
  return ["", paragraph("BACK: go half a turn or more past the hole, and come up to it onward.")];
}

/** Where the pin is not in its first hole when the work is back at its start. */
function secondRoundLines({ method, circle, proof, ...setting }: Setting, startHole: number): string[] {
  if (circle === null || method === "dial" || proof.pinTurns === null || !proof.pinTurns.includes("/")) return [];
  const [, again] = positions({ ...setting, method, circle, proof }, { startHole, teeth: [proof.moves, 1] });
  const rear = again?.rearHole === undefined ? "" : `, the rear pin from hole ${again.rearHole}`;
  return [
    "",
    paragraph(
      `A second time round the holes are others, as the pin then starts from hole ${again?.hole}${rear}; the angles stay.`,
    ),
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
export function scaleColumns(
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

/** How far a reading or a hole is off, with its sign. */
export function errorWords(reading: Pick<Reading, "errorArcSeconds"> | null): string {
  if (reading === null) return "";
  const { errorArcSeconds } = reading;
  return errorArcSeconds === 0 ? "0" : `${errorArcSeconds > 0 ? "+" : "−"}${arc(errorArcSeconds)}`;
}

/** A move between two positions: turns + spaces, and the second part of a compound one. */
export function moveWords(
  { direction, moves, turns, spaces, second }: MoveBetween,
  { method, circle }: Pick<UnprovedSetting, "method" | "circle">,
): string {
  if (moves === 0) return "stay";
  const on = circle === null ? "" : `/${circle}`;
  const first = `${turns > 0 || method !== "direct" ? `${turns} + ` : ""}${spaces}${on}`;
  if (!second) return `${direction === "back" ? "BACK " : ""}${first}`;
  const goesOn = (second.direction === "with") === (direction === "forward");
  const then = `${second.turns > 0 ? `${second.turns} + ` : ""}${second.spaces}/${second.circle}`;
  return `${direction === "back" ? "BACK " : ""}${first}, ${goesOn ? "on" : "back"} ${then}`;
}

/** Where to check the work on the way through a list. */
export function checkLines(setting: Setting, list: readonly Position[], options: Omit<PositionOptions, "teeth">): string[] {
  const first = list[0]?.move ?? 0;
  const at = checkPositions(setting, options)
    .filter(({ move }) => move >= first)
    .map(
      ({ move, tooth, hole, angle }) =>
        `after ${count(move, "move")} in all at tooth ${tooth}${hole === null || setting.method === "dial" ? "" : `, hole ${hole}`}, ${degrees(angle)}`,
    );
  return at.length === 0 ? [] : ["", paragraph(`On the way: ${at.join("; ")}.`)];
}
