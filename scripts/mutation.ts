#!/usr/bin/env node
import { type ChildProcess, fork } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { projectFile } from "./bench/child.ts";
import type { Asked, Said } from "./mutation/child.ts";
import type { Mutant } from "./mutation/mutants.ts";
import { layOutRoom } from "./mutation/room.ts";

const help = `Small changes of the library, each to be found out by its tests.

  npm run mutation                    all of src; what was done before and has not changed since is not done again
  npm run mutation -- src/gear        the files below a folder
  npm run mutation -- src/gear --tests test/gear
                                      by these tests alone: sooner done, and a lower bound
  npm run mutation -- --survivors     those that no test found out, from what was done before
`;

/** What became of a mutant: the test that found it out; null where none did. */
interface Outcome extends Mutant {
  readonly by: string | null;
}

const project = dirname(projectFile("package.json"));
const room = join(project, ".mutation");
const kept = join(project, ".mutation-results");
const program = fileURLToPath(new URL("mutation/child.js", import.meta.url));
const mostSeconds = 120;

function start(active: number): { readonly child: ChildProcess; readonly loaded: Promise<Said | null> } {
  const child = fork(program, { stdio: "ignore" });
  return { child, loaded: asked(child, { ask: "load", room, active }, 3600) };
}

function asked(child: ChildProcess, ask: Asked, seconds = mostSeconds): Promise<Said | null> {
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
async function tryAll(mutants: readonly Mutant[], say: (outcome: Outcome) => void): Promise<void> {
  let runner = start(0);
  let loaded = await runner.loaded;
  if (loaded?.say !== "loaded") throw new Error("the tests could not be loaded");
  for (const each of loaded.failing) process.stderr.write(`fails without a mutant, and is left out: ${each}\n`);
  const whileLoading = new Set(loaded.reached);
  for (const mutant of mutants) {
    const said = await asked(runner.child, { ask: "try", id: mutant.id });
    let by = said === null ? "it does not come back" : said.say === "tried" ? said.by : null;
    if (said === null) {
      runner = start(0);
      loaded = await runner.loaded;
    }
    // What is worked out once, while a module is loaded, is mutated only where it is loaded so.
    if (by === null && whileLoading.has(mutant.id)) by = await afresh(mutant.id);
    say({ ...mutant, by });
  }
  runner.child.kill();
}

async function afresh(id: number): Promise<string | null> {
  const { child, loaded } = start(id);
  const said = await loaded;
  child.kill("SIGKILL");
  if (said?.say !== "loaded") return "it does not come back";
  return said.failing[0] ?? null;
}

const fileOf = (source: string) => join(kept, `${source.replaceAll("/", "_")}.json`);
const markOf = (source: string) =>
  createHash("sha256")
    .update(readFileSync(join(project, source)))
    .digest("hex")
    .slice(0, 16);

interface Kept {
  readonly mark: string;
  readonly outcomes: readonly Outcome[];
}

function keptOf(source: string): Kept | null {
  return existsSync(fileOf(source)) ? (JSON.parse(readFileSync(fileOf(source), "utf8")) as Kept) : null;
}

function tell(sources: readonly string[]): void {
  const all = sources.flatMap((source) => keptOf(source)?.outcomes ?? []);
  const survivors = all.filter(({ by }) => by === null);
  for (const { file, line, what, at } of survivors) process.stdout.write(`${file}:${line}: ${what}: ${at}\n`);
  const share = ((100 * (all.length - survivors.length)) / Math.max(1, all.length)).toFixed(1);
  process.stdout.write(`${all.length} mutants, ${all.length - survivors.length} found out: ${share} %\n`);
}

async function mutate(folders: readonly string[], tests: string): Promise<void> {
  mkdirSync(kept, { recursive: true });
  const mutants = layOutRoom(project, room, tests);
  const sources = [...new Set(mutants.map(({ file }) => file))].filter(
    (file) => folders.length === 0 || folders.some((folder) => file.startsWith(folder)),
  );
  const open = sources.filter((source) => keptOf(source)?.mark !== markOf(source));
  const done = new Map<string, Outcome[]>();
  await tryAll(
    mutants.filter(({ file }) => open.includes(file)),
    (outcome) => {
      const outcomes = done.get(outcome.file) ?? [];
      done.set(outcome.file, [...outcomes, outcome]);
      if (outcomes.length + 1 < mutants.filter(({ file }) => file === outcome.file).length) return;
      writeFileSync(
        fileOf(outcome.file),
        JSON.stringify({ mark: markOf(outcome.file), outcomes: done.get(outcome.file) ?? [] } satisfies Kept),
      );
      const survivors = [...outcomes, outcome].filter(({ by }) => by === null).length;
      process.stdout.write(`${outcome.file}: ${outcomes.length + 1} mutants, ${survivors} survive\n`);
    },
  );
  tell(sources);
}

/** The words before an option, and those after it. */
function optionOf(words: readonly string[], option: string): readonly [string[], string[]] {
  const at = words.includes(option) ? words.indexOf(option) : words.length;
  return [words.slice(0, at), words.slice(at + 1)];
}

const words = process.argv.slice(2);
if (words.includes("--help")) process.stdout.write(help);
else if (words.includes("--survivors")) tell([...new Set(layOutRoom(project, room, "test").map(({ file }) => file))]);
else {
  const [folders, [tests = "test"]] = optionOf(words, "--tests");
  await mutate(folders, tests);
}
