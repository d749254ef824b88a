#!/usr/bin/env node
import { climb, tookWords } from "./worst/climb.ts";
import { growths } from "./worst/growth.ts";
import { asker } from "./worst/measure.ts";
import { type Curve, drawPanels } from "./worst/panels.ts";

const help = `The worst that a head and a question can cost, in processor time and memory.

  npm run worst                          how cost grows with what is known to make it grow; draws
                                         docs/work-as-it-grows.svg
  npm run worst -- climb MINUTES [SEED] [KINDS]
                                         looks for worse, by changing heads and questions
`;

async function grow(): Promise<void> {
  const ask = asker(60, true);
  const curves: Curve[] = [];
  for (const { name, sizes, question } of growths) {
    const points: Curve["points"][number][] = [];
    for (const size of sizes) {
      const taken = await ask.take(question(size));
      process.stdout.write(`${name}: ${size}: ${tookWords(taken)}\n`);
      if (taken === null) break;
      points.push({ size, taken });
    }
    curves.push({ name, points });
  }
  ask.end();
  drawPanels(curves);
}

const [word, minutes = "5", seed = "1", kinds] = process.argv.slice(2);
if (word === "climb") await climb(Number(minutes), Number(seed), kinds, (line) => process.stdout.write(`${line}\n`));
else if (word === undefined) await grow();
else process.stdout.write(help);
