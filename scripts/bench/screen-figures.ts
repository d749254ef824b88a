import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { screenPage } from "../../booklet/index.ts";
import { type Head, readyHeads } from "../../src/index.ts";
import { openBrowser } from "./browser.ts";
import { type Figure, figure } from "./figure.ts";
import { type Times, times } from "./stopwatch.ts";

/** How much slower than this machine a phone is taken to be. */
const slowDown = 4;
/** A frame of a screen, and what a hand still takes for at once; in ms. */
const goals = { median: 16, worst: 100 };

/** Types each count as a hand does, one after the other is said in full, and times it until the page is laid out anew. */
const typeAll = `async (counts) => {
  const input = document.getElementById("question");
  const all = [];
  for (const count of counts) {
    const start = performance.now();
    input.value = String(count);
    input.dispatchEvent(new Event("input"));
    document.body.offsetHeight;
    all.push(performance.now() - start);
    if (document.querySelector(".answer h2:last-child")) await new Promise((said) => requestAnimationFrame(() => setTimeout(() => setTimeout(said))));
  }
  return all;
}`;

/** How often the page is opened anew: the least time of each count is kept, as what else the machine does only adds to it. */
const passes = 3;
const counts = Array.from({ length: 999 }, (_, index) => index + 2);

/** From the key to the answer in the screen edition, on a processor slowed down, over all counts from 2 to 1000: each head's figure as it is measured. */
export async function* screenFigures(): AsyncGenerator<Figure> {
  const browser = await openBrowser();
  if (browser === null) return;
  const folder = mkdtempSync(join(tmpdir(), "screen-"));
  // Also where the run is stopped, when nothing else is done any more.
  process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
  for (const head of readyHeads.slice(0, 4)) {
    const file = join(folder, `${head.id}.html`);
    writeFileSync(file, screenPage(head));
    const all: number[][] = [];
    for (let pass = 0; pass < passes; pass += 1) all.push(await timesOf(browser, pathToFileURL(file).href));
    yield figureOf(head, times(counts.map((_, index) => Math.min(...all.map((pass) => pass[index] ?? 0)))));
  }
  await browser.close();
}

async function timesOf(browser: Browser, url: string): Promise<number[]> {
  const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  await page.goto(url);
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowDown });
  const found = (await page.evaluate(`(${typeAll})(${JSON.stringify(counts)})`)) as number[];
  await page.close();
  return found;
}

function figureOf({ id }: Head, ours: Times): Figure {
  const isOver = ours.median > goals.median || ours.most > goals.worst;
  const note = `median ${ours.median.toFixed(1)} ms, worst ${ours.most.toFixed(1)} ms: ${isOver ? "OVER" : "within"} ${goals.median} and ${goals.worst}`;
  const frame = times([goals.median]);
  return figure(`key to answer on ${id}, 2 to 1000, ${slowDown} × slowed`, { ours, baseline: frame }, "a frame", 1, note);
}
