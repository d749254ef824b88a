import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { type Mutant, mutated } from "./mutants.ts";

/** Tests of the command, the booklet or the page are none of the library's, and would take most of the time: only where they are named. */
const notTried = /^test\/(booklet|scripts|screen)\//;
/** Those that look at the sources themselves, or replace modules, cannot run on a copy in one process. */
const cannotRun = new Set(["test/bundle.test.ts", "test/examples.test.ts", "test/readme.test.ts"]);
/** What the library's words are asked through, as it stands; and what it reads beside its modules. */
const beside = ["booklet", "scripts"] as const;
const filesRead = ["package.json", "test/golden", "booklet/heads"] as const;

const compilerOptions: ts.CompilerOptions = {
  module: ts.ModuleKind.ES2022,
  target: ts.ScriptTarget.ES2023,
  rewriteRelativeImportExtensions: true,
  verbatimModuleSyntax: true,
};

/**
 * Lays out a room to try mutants in: the library with all of them in it, what stands on it, and the
 * tests, as JavaScript.
 *
 * @param below - The folders or files whose tests are run, with commas between them.
 * @returns All mutants, in the order of their files.
 */
export function layOutRoom(project: string, room: string, below: string): readonly Mutant[] {
  const read = (file: string) => readFileSync(join(project, file), "utf8");
  const sources = sourcesIn(project, "src").map((file) => ({ file, text: read(file) }));
  const tests = sourcesIn(project, "test")
    .map((file) => ({ file, text: read(file) }))
    .filter(({ file, text }) => !cannotRun.has(file) && !/\bvi\./.test(text));
  const others = beside.flatMap((folder) => sourcesIn(project, folder)).map((file) => ({ file, text: read(file) }));
  const mutants: Mutant[] = [];
  const changed = sources.map(({ file, text }) => {
    const { text: rendered, mutants: found } = mutated(file, text, mutants.length + 1);
    mutants.push(...found);
    return { file, text: rendered };
  });
  const modules = [...changed, ...others, ...tests];
  const mark = markOf(modules);
  if (!existsSync(join(room, mark))) {
    rmSync(room, { recursive: true, force: true });
    for (const { file, text } of modules) write(room, file, text);
    write(room, "vitest.ts", readFileSync(fileURLToPath(new URL("shim.js", import.meta.url)), "utf8"));
    for (const file of filesRead) cpSync(join(project, file), join(room, file), { recursive: true });
    symlinkSync(join(project, "node_modules"), join(room, "node_modules"));
    writeFileSync(join(room, mark), "");
  }
  const isWanted = (file: string) =>
    below.split(",").some((each) => file.startsWith(each) && (notTried.test(each) || !notTried.test(file)));
  const told = tests
    .map(({ file }) => file)
    .filter((file) => file.endsWith(".test.ts") && isWanted(file))
    .map((file) => file.replace(/\.ts$/, ".js"));
  writeFileSync(join(room, "tests.json"), JSON.stringify(told));
  return mutants;
}

interface Source {
  readonly file: string;
  readonly text: string;
}

/** The same as long as nothing has changed: what was laid out then is still good. */
function markOf(sources: readonly Source[]): string {
  const hash = createHash("sha256");
  for (const { file, text } of sources) hash.update(`${file}\n${text}\n`);
  return `laid-out-${hash.digest("hex").slice(0, 16)}`;
}

function write(room: string, file: string, text: string): void {
  const { outputText } = ts.transpileModule(text, { compilerOptions, fileName: file });
  const to = join(room, file.replace(/\.ts$/, ".js"));
  mkdirSync(dirname(to), { recursive: true });
  const up = "../".repeat(file.split("/").length - 1);
  writeFileSync(to, outputText.replaceAll('"vitest"', `"${up}vitest.js"`));
}

function sourcesIn(project: string, folder: string): string[] {
  return readdirSync(join(project, folder), { recursive: true, encoding: "utf8" })
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .filter((name) => name.endsWith(".ts") && !name.endsWith("config.ts"))
    .sort();
}
