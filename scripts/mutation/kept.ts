import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Mutant } from "./mutants.ts";
import type { Outcome } from "./runner.ts";

interface Kept {
  readonly mark: string;
  readonly outcomes: readonly Outcome[];
}

/** Mutants that no test can find out, or that need not be, with one reason for all of them. */
export interface Explained {
  readonly why: string;
  /** Each as it is printed, without the number of its line, which moves. */
  readonly mutants: readonly string[];
}

const folder = (project: string) => join(project, ".mutation-results");
const fileOf = (project: string, source: string) => join(folder(project), `${source.replaceAll("/", "_")}.json`);
const markOf = (project: string, source: string) =>
  createHash("sha256")
    .update(readFileSync(join(project, source)))
    .digest("hex")
    .slice(0, 16);

/** What was found of a source as it stands now; null where it was never tried, or has changed since. */
export function keptOf(project: string, source: string): readonly Outcome[] | null {
  const file = fileOf(project, source);
  if (!existsSync(file)) return null;
  const { mark, outcomes } = JSON.parse(readFileSync(file, "utf8")) as Kept;
  return mark === markOf(project, source) ? outcomes : null;
}

export function keep(project: string, source: string, outcomes: readonly Outcome[]): void {
  mkdirSync(folder(project), { recursive: true });
  writeFileSync(fileOf(project, source), JSON.stringify({ mark: markOf(project, source), outcomes } satisfies Kept));
}

/** A mutant as it is named where it is explained. */
export function nameOf({ file, what, at }: Mutant): string {
  return `${file}: ${what}: ${at}`;
}

/** Every mutant that is explained, by its name. */
export function reasonsOf(explained: readonly Explained[]): ReadonlySet<string> {
  return new Set(explained.flatMap(({ mutants }) => mutants));
}

/** The figures of sources, folder by folder, after those that no test found out and no reason is given for. */
export function* figures(
  project: string,
  sources: readonly string[],
  explained: readonly Explained[],
): Generator<string, void, undefined> {
  const reasons = reasonsOf(explained);
  const all = sources.flatMap((source) => keptOf(project, source) ?? []);
  const survivors = all.filter(({ by }) => by === null);
  for (const mutant of survivors) {
    if (!reasons.has(nameOf(mutant))) yield `${mutant.file}:${mutant.line}: ${mutant.what}: ${mutant.at}`;
  }
  const survive = new Set(survivors.map(nameOf));
  const tried = new Set(all.map(({ file }) => file));
  for (const reason of reasons) {
    if (tried.has(reason.split(":")[0] ?? "") && !survive.has(reason)) yield `explained, but does not survive: ${reason}`;
  }
  const folders = [...new Set(all.map(({ file }) => folderOf(file)))];
  for (const each of folders) yield figuresOf(each, all, reasons);
  if (folders.length !== 1) yield figuresOf("all", all, reasons);
}

const folderOf = (file: string) => file.split("/").slice(0, -1).join("/");

function figuresOf(which: string, all: readonly Outcome[], reasons: ReadonlySet<string>): string {
  const those = which === "all" ? all : all.filter(({ file }) => folderOf(file) === which);
  const survivors = those.filter(({ by }) => by === null);
  const without = survivors.filter((mutant) => !reasons.has(nameOf(mutant))).length;
  const found = those.length - survivors.length;
  const share = ((100 * found) / Math.max(1, those.length)).toFixed(1);
  return `${which}: ${those.length} mutants, ${found} found out: ${share} %; ${survivors.length - without} explained, ${without} open`;
}
