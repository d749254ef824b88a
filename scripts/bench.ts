#!/usr/bin/env node
import { writeFileSync } from "node:fs";
import { bookletFigures } from "./bench/booklet-figures.ts";
import { exhaustiveInC, projectFile } from "./bench/child.ts";
import { lookUpFigures, nearFigures } from "./bench/command-figures.ts";
import { drawCurve } from "./bench/curve.ts";
import { type Figure, figureLine } from "./bench/figure.ts";
import { screenFigures } from "./bench/screen-figures.ts";
import { gearSetFigures, lazyFigures, tableFigures } from "./bench/table-figures.ts";
import { typesetterFigures } from "./bench/typesetters.ts";

const help = `Benchmarks: each figure is a ratio against a baseline of the same minute.

  npm run bench                      all figures; writes docs/benchmarks.json and draws docs/time-by-range.svg
  npm run bench -- table near        some of: table, near, lazy, gears, look-up, booklet, screen
  npm run bench -- typesetters       the same rows set by others, where they are installed; only when asked for
`;

/** Runs the figures asked for, prints each as it comes and keeps them as JSON. */
async function bench(asked: readonly string[]): Promise<void> {
  const inC = exhaustiveInC();
  if (inC === null) process.stderr.write("no C compiler: what is measured against the obvious way in C is left out\n");
  const groups: Readonly<Record<string, () => Figure[] | Promise<Figure[]> | AsyncIterable<Figure>>> = {
    ...(inC && { table: () => tableFigures(inC.run), near: () => nearFigures(inC.run) }),
    lazy: lazyFigures,
    gears: gearSetFigures,
    "look-up": lookUpFigures,
    booklet: bookletFigures,
    screen: screenFigures,
    ...(asked.includes("typesetters") && { typesetters: typesetterFigures }),
  };
  const figures: Figure[] = [];
  for (const [name, measure] of Object.entries(groups)) {
    if (asked.length > 0 && !asked.includes(name)) continue;
    for await (const each of await measure()) {
      figures.push(each);
      process.stdout.write(`${figureLine(each)}\n`);
    }
  }
  inC?.remove();
  if (asked.length > 0) return;
  drawCurve();
  writeFileSync(projectFile("docs/benchmarks.json"), `${JSON.stringify(figures, null, 2)}\n`);
}

// A run that is stopped ends there and then: the browser would else be closed under what is measured, and that be taken for a fault.
for (const [signal, number] of [
  ["SIGHUP", 1],
  ["SIGINT", 2],
  ["SIGTERM", 15],
] as const)
  process.once(signal, () => process.exit(128 + number));

const words = process.argv.slice(2);
if (words.includes("--help")) process.stdout.write(help);
else await bench(words);
