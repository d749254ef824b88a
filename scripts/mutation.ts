#!/usr/bin/env node
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { projectFile } from "./bench/child.ts";
import { type Explained, figures, keep, keptOf, nameOf, reasonsOf } from "./mutation/kept.ts";
import type { Mutant } from "./mutation/mutants.ts";
import { layOutRoom } from "./mutation/room.ts";
import { type Outcome, tryAll } from "./mutation/runner.ts";

const help = `Small changes of the library, each to be found out by its tests.

  npm run mutation                    all of src; what was done before and has not changed since is not done again
  npm run mutation -- src/gear        the files below a folder; several may be given
  npm run mutation -- src/gear --tests test/gear
                                      by these tests alone: sooner done, and a lower bound; several with commas
                                      between them. Tests of the command are run only where they are named so
  npm run mutation -- src/gear --again
                                      only what no test has found out yet and nothing explains: after tests were
                                      added, or by more tests
  npm run mutation -- src/gear --again --seconds 2
                                      without tests that take longer: a lower bound
  npm run mutation -- src/gear --figures
                                      what was found before: survivors and figures, nothing is tried

Survivors that no test can find out are explained in scripts/mutation/explained.json, and counted apart.
`;

const project = dirname(projectFile("package.json"));
const room = join(project, ".mutation");

interface Wanted {
  readonly again: boolean;
  readonly mostSeconds: number | null;
}

const file = join(project, "scripts/mutation/explained.json");
const explained = existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as Explained[]) : [];
const reasons = reasonsOf(explained);

function tell(sources: readonly string[]): void {
  for (const line of figures(project, sources, explained)) process.stdout.write(`${line}\n`);
}

/** What is to be tried of a source: all, what survived with no reason, or nothing where it was done before. */
function openOf(source: string, mutants: readonly Mutant[], again: boolean): readonly Mutant[] {
  const before = keptOf(project, source);
  if (before === null) return mutants;
  return again ? mutants.filter((mutant, index) => before[index]?.by === null && !reasons.has(nameOf(mutant))) : [];
}

async function mutate(sources: readonly string[], all: readonly Mutant[], { again, mostSeconds }: Wanted): Promise<void> {
  const ofSource = (source: string) => all.filter(({ file }) => file === source);
  const open = new Map(sources.map((source) => [source, openOf(source, ofSource(source), again)]));
  const done = new Map<number, Outcome>();
  const finish = (source: string) => {
    const before = keptOf(project, source);
    const outcomes = ofSource(source).map(
      (mutant, index) => done.get(mutant.id) ?? { ...mutant, by: before?.[index]?.by ?? null },
    );
    keep(project, source, outcomes);
    const survivors = outcomes.filter(({ by }) => by === null).length;
    process.stdout.write(`${source}: ${outcomes.length} mutants, ${survivors} survive\n`);
  };
  const trial = { room, mostSeconds, without: [], order: [] };
  await tryAll([...open.values()].flat(), trial, (outcome) => {
    done.set(outcome.id, outcome);
    if (open.get(outcome.file)?.every(({ id }) => done.has(id))) finish(outcome.file);
  });
}

/** The words before the options; the word after an option, where it has one. */
const words = process.argv.slice(2);
const after = (option: string) => (words.includes(option) ? (words[words.indexOf(option) + 1] ?? null) : null);
const folders = words.slice(
  0,
  Math.max(
    0,
    [...words, "--"].findIndex((word) => word.startsWith("--")),
  ),
);

if (words.includes("--help")) process.stdout.write(help);
else {
  const tests = after("--tests") ?? "test";
  const all = layOutRoom(project, room, tests);
  const sources = [...new Set(all.map(({ file }) => file))].filter(
    (file) => folders.length === 0 || folders.some((folder) => file.startsWith(folder)),
  );
  const seconds = after("--seconds");
  const wanted = { again: words.includes("--again"), mostSeconds: seconds === null ? null : Number(seconds) };
  if (!words.includes("--figures")) await mutate(sources, all, wanted);
  tell(sources);
}
