import { type ChildProcess, fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Asked, Said } from "./child.ts";
import type { Mutant } from "./mutants.ts";

/** What became of a mutant: the test that found it out; null where none did. */
export interface Outcome extends Mutant {
  readonly by: string | null;
}

/** Where the tests are, and which of them are run: none that takes longer than so many seconds. */
export interface Trial {
  readonly room: string;
  readonly mostSeconds: number | null;
  readonly without: readonly string[];
  /** By name, the quickest first, where that is known: most mutants are found out by quick tests. */
  readonly order: readonly string[];
}

const program = fileURLToPath(new URL("child.js", import.meta.url));
/** For a loop that asks for no mutant and so counts no steps; long, as a busy machine is slow and no mutant found out by that. */
const mostSecondsOfOne = 1200;

function start(trial: Trial, active: number): { readonly child: ChildProcess; readonly loaded: Promise<Said | null> } {
  const child = fork(program, { stdio: "ignore" });
  return { child, loaded: asked(child, { ask: "load", active, ...trial }, 3600) };
}

function asked(child: ChildProcess, ask: Asked, seconds = mostSecondsOfOne): Promise<Said | null> {
  return new Promise((done) => {
    const timer = setTimeout(() => finish(null), 1000 * seconds);
    const finish = (said: Said | null) => {
      clearTimeout(timer);
      child.removeAllListeners();
      if (said === null) child.kill("SIGKILL");
      done(said);
    };
    child.once("message", (said) => finish(said as Said));
    child.once("exit", () => finish(null));
    child.send(ask);
  });
}

/** Tries mutants one after the other; where the process does not come back, the mutant is found out by that. */
export async function tryAll(mutants: readonly Mutant[], trial: Trial, say: (outcome: Outcome) => void): Promise<void> {
  let runner = start(trial, 0);
  let loaded = await runner.loaded;
  if (loaded?.say !== "loaded") throw new Error("the tests could not be loaded");
  for (const each of loaded.failing) process.stderr.write(`fails without a mutant, and is left out: ${each}\n`);
  if (loaded.slow.length > 0) process.stderr.write(`${loaded.slow.length} tests take longer, and are left out\n`);
  const whileLoading = new Set(loaded.reached);
  // What failed or was slow once is left out from now on, so that a mutant tried afresh is judged by the same tests.
  const same = { ...trial, mostSeconds: null, without: [...loaded.failing, ...loaded.slow], order: loaded.quickest };
  for (const mutant of mutants) {
    const said = await asked(runner.child, { ask: "try", id: mutant.id });
    let by = said === null ? "it does not come back" : said.say === "tried" ? said.by : null;
    if (said === null) {
      runner = start(same, 0);
      loaded = await runner.loaded;
    }
    // What is worked out once, while a module is loaded, is mutated only where it is loaded so. What tests reach
    // besides is judged by them.
    const isReached = said?.say === "tried" && said.reached;
    if (by === null && !isReached && whileLoading.has(mutant.id)) by = await afresh(mutant.id, same);
    say({ ...mutant, by });
  }
  runner.child.kill();
}

async function afresh(id: number, trial: Trial): Promise<string | null> {
  const { child, loaded } = start(trial, id);
  const said = await loaded;
  child.kill("SIGKILL");
  if (said?.say !== "loaded") return "it does not come back";
  return said.failing[0] ?? null;
}
