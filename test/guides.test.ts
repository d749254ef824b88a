import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { format } from "node:util";
import { transformSync } from "rolldown/utils";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { loadHead } from "../booklet/head-file.ts";
import { defineHead } from "../src/index.ts";
import { ownFolder } from "./support/own-folder.ts";
import { blocksIn, expectTold } from "./support/told-by-command.ts";

const folder = "docs/guide";
const project = ownFolder("guides");
const guides = readdirSync(folder)
  .filter((name) => name.endsWith(".md"))
  .map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));

/** What a guide has a reader write, block after block as one module; what only a page can run is checked and not run. */
function codeOf(text: string, alsoOnPage: boolean): string {
  return [...text.matchAll(/```ts( page)?\n(.*?)```/gs)]
    .filter(([, onPage]) => alsoOnPage || onPage === undefined)
    .map(([, , code]) => code)
    .join("\n");
}

/** What it says that its lines print. */
function toldIn(text: string): readonly string[] {
  return [...codeOf(text, false).matchAll(/console\.log\(.*\); \/\/ (.*)$/gm)].map(([, told = ""]) => told);
}

// A project of its own that has the library installed.
beforeAll(() => {
  writeFileSync(join(project, "package.json"), JSON.stringify({ type: "module" }));
  mkdirSync(join(project, "node_modules"));
  for (const [name, to] of [
    ["turns-and-holes", "."],
    ["@types", "node_modules/@types"],
  ] as const)
    symlinkSync(resolve(to), join(project, "node_modules", name), "junction");
});

describe("the guides are true", () => {
  it("there is one for each thing that others build on the library", () => {
    expect(guides.map(({ name }) => name)).toEqual([
      "head-files.md",
      "job-sheet.md",
      "other-heads.md",
      "rotary-axis.md",
      "spreadsheet.md",
      "web-page.md",
    ]);
    for (const { text } of guides) expect(toldIn(text).length).toBeGreaterThan(1);
  });

  it("what they have a reader write is of the right types, strictly", () => {
    for (const { name, text } of guides) writeFileSync(join(project, `${name}.ts`), codeOf(text, true));
    const options = {
      ...{ strict: true, exactOptionalPropertyTypes: true, noEmit: true, skipLibCheck: true },
      ...{ module: "nodenext", target: "es2022", lib: ["es2022", "dom", "dom.iterable"], types: ["node"] },
    };
    writeFileSync(join(project, "tsconfig.json"), JSON.stringify({ compilerOptions: options }));
    const compiler = resolve("node_modules/typescript-native/bin/tsc");
    const { status, stdout } = spawnSync(process.execPath, [compiler, "-p", project], { encoding: "utf8" });
    expect([status, stdout]).toEqual([0, ""]);
  });

  it.each(guides)("$name prints what it says", async ({ name, text }) => {
    // Beside the library, where Node itself loads it.
    const module = join(project, "node_modules", `${name}.mjs`);
    writeFileSync(module, transformSync(`${name}.ts`, codeOf(text, false)).code);
    const printed: string[] = [];
    const log = vi.spyOn(console, "log").mockImplementation((...said) => void printed.push(format(...said)));
    await import(pathToFileURL(module).href).finally(() => log.mockRestore());
    expect(printed.flatMap((each) => each.split("\n"))).toEqual(toldIn(text));
  });

  it.each(guides.flatMap(({ text }) => blocksIn(text, "console")))("the command prints what they show: %s", expectTold);

  it("a head file that they show is the example that the command after it names", () => {
    const files = guides.flatMap(({ text }) => [...text.matchAll(/```json\n(.*?)```.*?--head (booklet\/heads\/\S+)/gs)]);
    expect(files.length).toBeGreaterThan(2);
    for (const [, shown = "", named = ""] of files) expect(defineHead(JSON.parse(shown))).toEqual(loadHead(named));
  });
});
