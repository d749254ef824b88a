import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { type Mutant, mutated } from "./mutants.ts";

/** Tests that start the command or a browser, or print, are none of the library's, and would take most of the time. */
const notTried = /^test\/(booklet|scripts|screen)\//;
/** Those that look at the sources themselves, or replace modules, cannot run on a copy in one process. */
const cannotRun = new Set(["test/bundle.test.ts", "test/examples.test.ts", "test/readme.test.ts"]);

const compilerOptions: ts.CompilerOptions = {
  module: ts.ModuleKind.ES2022,
  target: ts.ScriptTarget.ES2023,
  rewriteRelativeImportExtensions: true,
  verbatimModuleSyntax: true,
};

/**
 * Lays out a room to try mutants in: the library with all of them in it, and its tests, as JavaScript.
 *
 * @param below - The folders or files whose tests are run, with commas between them.
 * @returns All mutants, in the order of their files.
 */
export function layOutRoom(project: string, room: string, below: string): readonly Mutant[] {
  rmSync(room, { recursive: true, force: true });
  const mutants: Mutant[] = [];
  const write = (file: string, text: string) => {
    const { outputText } = ts.transpileModule(text, { compilerOptions, fileName: file });
    const to = join(room, file.replace(/\.ts$/, ".js"));
    mkdirSync(dirname(to), { recursive: true });
    const up = "../".repeat(file.split("/").length - 1);
    writeFileSync(to, outputText.replaceAll('"vitest"', `"${up}vitest.js"`));
  };
  for (const file of sourcesIn(project, "src")) {
    const { text, mutants: found } = mutated(file, readFileSync(join(project, file), "utf8"), mutants.length + 1);
    mutants.push(...found);
    write(file, text);
  }
  const read = (file: string) => readFileSync(join(project, file), "utf8");
  const tests = sourcesIn(project, "test").filter(
    (file) => !notTried.test(file) && !cannotRun.has(file) && !/\bvi\./.test(read(file)),
  );
  for (const file of tests) write(file, read(file));
  cpSync(join(project, "test/golden"), join(room, "test/golden"), { recursive: true });
  symlinkSync(join(project, "node_modules"), join(room, "node_modules"));
  write("vitest.ts", readFileSync(fileURLToPath(new URL("shim.js", import.meta.url)), "utf8"));
  writeFileSync(join(room, "package.json"), '{ "type": "module" }\n');
  const told = tests
    .filter((file) => file.endsWith(".test.ts") && below.split(",").some((each) => file.startsWith(each)))
    .map((file) => file.replace(/\.ts$/, ".js"));
  writeFileSync(join(room, "tests.json"), JSON.stringify(told));
  return mutants;
}

function sourcesIn(project: string, folder: string): string[] {
  return readdirSync(join(project, folder), { recursive: true, encoding: "utf8" })
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .filter((name) => name.endsWith(".ts") && !name.endsWith("config.ts"))
    .sort();
}
