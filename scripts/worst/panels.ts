import { writeFileSync } from "node:fs";
import { projectFile } from "../bench/child.ts";
import { type At, line, picture, rule, text } from "../bench/svg.ts";
import type { Taken } from "./child.ts";

/** What a question took at each of its sizes. */
export interface Curve {
  readonly name: string;
  readonly points: readonly { readonly size: number; readonly taken: Taken }[];
}

const columns = 3;
const panel = { width: 300, height: 190, left: 54, right: 14, top: 34, bottom: 28 } as const;
/** Processor seconds that a panel shows: from the least to the most, of which the bound is one. */
const seconds = { least: 0.001, most: 10, bound: 1 } as const;

/** Draws each curve in a panel of its own, on two logarithmic scales, with the bound that all are to keep under. */
export function drawPanels(curves: readonly Curve[]): void {
  const rows = Math.ceil(curves.length / columns);
  const parts = curves.flatMap((curve, index) =>
    drawn(curve, (index % columns) * panel.width, Math.floor(index / columns) * panel.height),
  );
  const title = "Processor seconds of one question, by what makes its work grow; the heavy line is the bound of one second";
  writeFileSync(projectFile("docs/work-as-it-grows.svg"), picture(columns * panel.width, rows * panel.height, title, parts));
}

function drawn({ name, points }: Curve, left: number, top: number): readonly string[] {
  const [first, last] = [points[0]?.size ?? 1, points.at(-1)?.size ?? 1];
  const [from, to] = [left + panel.left, left + panel.width - panel.right];
  const [high, low] = [top + panel.top, top + panel.height - panel.bottom];
  const across = (size: number) => from + ((to - from) * Math.log(size / first)) / Math.log(last / first);
  const up = (value: number) =>
    low - ((low - high) * Math.log(Math.max(value, seconds.least) / seconds.least)) / Math.log(seconds.most / seconds.least);
  const places = points.map(({ size, taken }): At => [across(size), up(taken.cpuSeconds)]);
  return [
    text([left + 8, top + 18], name),
    ...[0.001, 0.01, 0.1, 1, 10].flatMap((value) => [
      rule([from, up(value)], [to, up(value)], value === seconds.bound ? "#000" : "#bbb"),
      text([from - 6, up(value) + 4], `${value} s`, "end"),
    ]),
    line(places),
    ...places.map(([x, y]) => `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="2.5" fill="#000"/>`),
    text([from, low + 18], grouped(first)),
    text([to, low + 18], grouped(last), "end"),
  ];
}

function grouped(size: number): string {
  return size.toLocaleString("en");
}
