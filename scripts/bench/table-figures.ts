import { exactSettings, gearBox, indexTable, readyHeads } from "../../src/index.ts";
import { nodeSays, projectFile } from "./child.ts";
import { type Figure, figure } from "./figure.ts";
import { inTurn, timeOf } from "./stopwatch.ts";

const [head] = readyHeads;
const range = { from: 2, to: 1000 } as const;

/** The best setting of every count from 2 to 1000, proved and ranked, against the obvious way in C. */
export function tableFigures(inC: () => number): Figure[] {
  if (!head) return [];
  const warm = () => timeOf(() => indexTable(head, range));
  for (let run = 0; run < 10; run += 1) warm();
  const library = JSON.stringify(projectFile("dist/src/index.js"));
  const fresh = `import { indexTable, readyHeads } from ${library};
    const start = performance.now(); indexTable(readyHeads[0], { from: 2, to: 1000 }); console.log(performance.now() - start);`;
  return [
    figure("every count 2–1000, best setting, warm", inTurn(21, warm, inC), "stop-at-the-first search in C, -O2", 1),
    figure(
      "the same, first call of a process",
      inTurn(7, () => Number(nodeSays(fresh)), inC),
      "the same in C",
      3,
    ),
  ];
}

/** All settings of one count: the first must not wait for the last. */
export function lazyFigures(): Figure[] {
  if (!head) return [];
  return [97, 787].flatMap((divisions) => {
    const all = () => timeOf(() => [...exactSettings(head, { divisions })].length);
    const first = () => timeOf(() => exactSettings(head, { divisions }).next());
    all();
    const found = [...exactSettings(head, { divisions })].length;
    return found === 0 ? [] : [figure(`first setting of ${divisions}`, inTurn(21, first, all), `all ${found} of them`, null)];
  });
}

/** How a gear set grows: laid out, and every ratio of two pairs that some head could ask for. */
export function gearSetFigures(): Figure[] {
  const sets = [12, 19, 30, 60];
  const teeth = (count: number) => Array.from({ length: count }, (_, index) => 17 + index * 2);
  const layOut = (count: number) => timeOf(() => gearBox(teeth(count)).trains(2, 1, 1));
  layOut(12);
  return sets.map((count) => {
    globalThis.gc?.();
    const before = process.memoryUsage().heapUsed;
    const box = gearBox(teeth(count));
    box.trains(2, 1, 1);
    const megabytes = (process.memoryUsage().heapUsed - before) / 1e6;
    const note = `about ${Math.max(0, megabytes).toFixed(1)} MB kept, ${box.products(2).length} products of two gears`;
    return figure(
      `${count} change gears laid out`,
      inTurn(
        7,
        () => layOut(count),
        () => layOut(12),
      ),
      "12 gears",
      null,
      note,
    );
  });
}
