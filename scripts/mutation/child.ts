import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import fc from "fast-check";
import type { Told } from "./shim.ts";

/** What the parent asks of a process: which mutant is in from the start (0: none), and then one after the other. */
export type Asked =
  | {
      readonly ask: "load";
      readonly room: string;
      readonly active: number;
      /** Tests that take more of the processor are left out, and so are those named. */
      readonly mostSeconds: number | null;
      readonly without: readonly string[];
      /** Tests by name, those first that are to be run first; the others after them. */
      readonly order: readonly string[];
    }
  | { readonly ask: "try"; readonly id: number };

/** What a process says. */
export type Said =
  | {
      readonly say: "loaded";
      readonly reached: readonly number[];
      readonly failing: readonly string[];
      readonly slow: readonly string[];
      /** The tests that passed, the quickest first. */
      readonly quickest: readonly string[];
    }
  | { readonly say: "tried"; readonly id: number; readonly by: string | null; readonly reached: boolean };

interface Known {
  readonly test: Told;
  readonly reaches: Set<number>;
  steps: number;
  ms: number;
}

const mostMutants = 2 ** 16;
let active = 0;
let steps = 0;
let mostSteps = Number.POSITIVE_INFINITY;
/** What was reached is noted while the tests are loaded, and no more while mutants are tried. */
let reached: Uint8Array | null = new Uint8Array(mostMutants);

// Every place that is changed asks whether its change is in; a loop that never ends asks too often.
(globalThis as unknown as { $m: (id: number) => boolean }).$m = (id) => {
  if (reached !== null) reached[id] = 1;
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

const idsIn = (marked: Uint8Array): readonly number[] => [...marked.keys()].filter((id) => marked[id] === 1);

const nameOf = ({ file, name }: Told) => `${file}: ${name}`;

async function toldIn(room: string): Promise<readonly Told[]> {
  const { told, startFile } = (await import(pathToFileURL(join(room, "vitest.js")).href)) as typeof import("./shim.ts");
  for (const file of JSON.parse(readFileSync(join(room, "tests.json"), "utf8")) as string[]) {
    startFile(file);
    await import(pathToFileURL(join(room, file)).href);
  }
  return told;
}

/** The tests of a room, those first that are named first. */
function inOrder(told: readonly Told[], order: readonly string[]): readonly Told[] {
  const rank = new Map(order.map((name, index) => [name, index]));
  const of = (test: Told) => rank.get(nameOf(test)) ?? order.length;
  return [...told].sort((a, b) => of(a) - of(b));
}

async function load({ room, active: from, mostSeconds, without, order }: Asked & { ask: "load" }): Promise<Said> {
  active = from;
  mostSteps = 2e9;
  // The same cases for every mutant, as the tests themselves have them; that one fails is enough.
  fc.configureGlobal({ seed: 1, endOnFailure: true });
  const told = inOrder(await toldIn(room), order);
  const whileLoading = idsIn(reached ?? new Uint8Array());
  const [failing, slow]: [string[], string[]] = [[], []];
  for (const test of told) {
    if (without.includes(nameOf(test))) continue;
    const marked = new Uint8Array(mostMutants);
    reached = marked;
    const start = process.cpuUsage();
    const passes = await run(test);
    const ms = process.cpuUsage(start).user / 1000;
    if (!passes) failing.push(nameOf(test));
    else if (mostSeconds !== null && ms > 1000 * mostSeconds) slow.push(nameOf(test));
    else known.push({ test, reaches: new Set(idsIn(marked)), steps, ms });
    // With a mutant in, one that fails is all that is wanted.
    if (!passes && from !== 0) break;
  }
  reached = null;
  known.sort((a, b) => a.ms - b.ms);
  return { say: "loaded", reached: whileLoading, failing, slow, quickest: known.map(({ test }) => nameOf(test)) };
}

async function tryOne(id: number): Promise<Said> {
  const reachedBy = known.filter(({ reaches }) => reaches.has(id));
  for (const { test, steps: usual } of reachedBy) {
    active = id;
    mostSteps = 20 * usual + 100_000;
    const passes = await run(test);
    active = 0;
    if (!passes) return { say: "tried", id, by: nameOf(test), reached: true };
  }
  return { say: "tried", id, by: null, reached: reachedBy.length > 0 };
}

process.on("message", async (asked: Asked) => {
  process.send?.(asked.ask === "load" ? await load(asked) : await tryOne(asked.id));
});
