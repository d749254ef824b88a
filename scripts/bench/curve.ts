import { writeFileSync } from "node:fs";
import { type Head, indexTable, readyHeads } from "../../src/index.ts";
import { projectFile } from "./child.ts";
import { timeOf } from "./stopwatch.ts";
import { line, picture, rule, text } from "./svg.ts";

/** One line of the picture: how long a table from 2 to each limit takes. */
interface Curve {
  readonly name: string;
  readonly points: readonly { readonly to: number; readonly ms: number }[];
}

const limits = [100, 200, 500, 1000, 2000, 5000, 10_000];

/** Measures tables of growing range, by gears owned and teeth per move. */
function measured(): Curve[] {
  const curve = (name: string, head: Head, teethPerMove: number): Curve => ({
    name,
    points: limits.map((to) => ({ to, ms: leastOf(3, () => timeOf(() => indexTable(head, { from: 2, to, teethPerMove }))) })),
  });
  const [twelve, none, nineteen] = readyHeads;
  if (!twelve || !none || !nineteen) return [];
  indexTable(twelve, { from: 2, to: 1000 });
  return [
    curve("no gears", none, 1),
    curve("12 gears, 1 tooth per move", twelve, 1),
    curve("12 gears, up to 12", twelve, 12),
    curve("12 gears, up to 60", twelve, 60),
    curve("19 gears, up to 12", nineteen, 12),
  ];
}

function leastOf(runs: number, work: () => number): number {
  return Math.min(...Array.from({ length: runs }, work));
}

const size = { width: 720, height: 420, left: 70, right: 190, top: 30, bottom: 50 } as const;

/** Draws the curves on two logarithmic scales, told apart by their dashes and the names at their ends. */
function drawn(curves: readonly Curve[]): string {
  const { width, height, left, right, top, bottom } = size;
  const x = (to: number) => left + ((width - left - right) * Math.log10(to / 100)) / 2;
  const y = (ms: number) => height - bottom - ((height - top - bottom) * (Math.log10(Math.max(ms, 0.1)) + 1)) / 5;
  const grid = [0.1, 1, 10, 100, 1000, 10_000].flatMap((ms) => [
    rule([left, y(ms)], [width - right, y(ms)], "#bbb"),
    text([left - 8, y(ms) + 4], `${ms} ms`, "end"),
  ]);
  const foot = [100, 1000, 10_000].map((to) => text([x(to), height - bottom + 20], `2 to ${to}`, "middle"));
  const ends = spread(curves.map(({ points }) => y(points.at(-1)?.ms ?? 1)));
  const lines = curves.flatMap(({ name, points }, index) => {
    const dash = ["", "8 3", "2 3", "12 3 2 3", "5 5"][index] ?? "";
    return [
      line(
        points.map(({ to, ms }) => [x(to), y(ms)]),
        dash,
      ),
      text([width - right + 10, (ends[index] ?? 0) + 4], name),
    ];
  });
  const title = "Time for a table of the best setting of every count, by range, gears and teeth per move";
  return picture(width, height, title, [...grid, ...lines, ...foot]);
}

/** Moves names apart that would stand on one another. */
function spread(places: readonly number[]): number[] {
  const moved = [...places];
  const order = moved.map((_, index) => index).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
  for (const [rank, index] of order.entries()) {
    const before = order[rank - 1];
    if (before !== undefined) moved[index] = Math.max(moved[index] ?? 0, (moved[before] ?? 0) + 15);
  }
  return moved;
}

/** Measures and draws the picture in the docs. */
export function drawCurve(): void {
  writeFileSync(projectFile("docs/time-by-range.svg"), drawn(measured()));
}
