import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import fc from "fast-check";
import type { Told } from "./shim.ts";

/** What the parent asks of a process: which mutant is in from the start (0: none), and then one after the other. */
export type Asked =
  | { readonly ask: "load"; readonly room: string; readonly active: number }
  | { readonly ask: "try"; readonly id: number };

/** What a process says. */
export type Said =
  | { readonly say: "loaded"; readonly reached: readonly number[]; readonly failing: readonly string[] }
  | { readonly say: "tried"; readonly id: number; readonly by: string | null };

interface Known {
  readonly test: Told;
  readonly reaches: Set<number>;
  steps: number;
  ms: number;
}

let active = 0;
let steps = 0;
let mostSteps = Number.POSITIVE_INFINITY;
let reached = new Set<number>();

// Every place that is changed asks whether its change is in; a loop that never ends asks too often.
(globalThis as unknown as { $m: (id: number) => boolean }).$m = (id) => {
  reached.add(id);
  steps += 1;
  if (steps > mostSteps) throw new Error("goes on and on");
  return id === active;
};

const known: Known[] = [];

async function run({ run: body }: Told): Promise<boolean> {
  steps = 0;
  try {
    await body();
    return true;
  } catch {
    return false;
  }
}

async function load(room: string, from: number): Promise<Said> {
  active = from;
  mostSteps = 2e9;
  // The same cases for every mutant, as the tests themselves have them.
  fc.configureGlobal({ seed: 1 });
  const { told, startFile } = (await import(pathToFileURL(join(room, "vitest.js")).href)) as typeof import("./shim.ts");
  for (const file of JSON.parse(readFileSync(join(room, "tests.json"), "utf8")) as string[]) {
    startFile(file);
    await import(pathToFileURL(join(room, file)).href);
  }
  const whileLoading = [...reached];
  const failing: string[] = [];
  for (const test of told) {
    reached = new Set();
    const start = performance.now();
    if (!(await run(test))) {
      failing.push(`${test.file}: ${test.name}`);
      // With a mutant in, one that fails is all that is wanted.
      if (from !== 0) break;
      continue;
    }
    known.push({ test, reaches: reached, steps, ms: performance.now() - start });
  }
  known.sort((a, b) => a.ms - b.ms);
  return { say: "loaded", reached: whileLoading, failing };
}

async function tryOne(id: number): Promise<Said> {
  for (const { test, reaches, steps: usual } of known) {
    if (!reaches.has(id)) continue;
    active = id;
    mostSteps = 20 * usual + 100_000;
    const passes = await run(test);
    active = 0;
    if (!passes) return { say: "tried", id, by: `${test.file}: ${test.name}` };
  }
  return { say: "tried", id, by: null };
}

process.on("message", async (asked: Asked) => {
  process.send?.(asked.ask === "load" ? await load(asked.room, asked.active) : await tryOne(asked.id));
});
