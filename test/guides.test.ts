import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const folder = "docs/guide";
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

describe("the guides are true", () => {
  it("there is one for each thing that others build on the library", () => {
    expect(guides.map(({ name }) => name)).toEqual([
      "head-files.md",
      "job-sheet.md",
      "rotary-axis.md",
      "spreadsheet.md",
      "web-page.md",
    ]);
    for (const { text } of guides) expect(toldIn(text).length).toBeGreaterThan(1);
  });

  it("what they have a reader write is of the right types, strictly", () => {
    const sources = new Map(guides.map(({ name, text }) => [join(process.cwd(), `${name}.ts`), codeOf(text, true)]));
    const options: ts.CompilerOptions = {
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      module: ts.ModuleKind.NodeNext,
      target: ts.ScriptTarget.ES2022,
      lib: ["lib.es2022.d.ts", "lib.dom.d.ts", "lib.dom.iterable.d.ts"],
      types: ["node"],
      skipLibCheck: true,
    };
    const host = ts.createCompilerHost(options);
    const { fileExists, readFile, getSourceFile } = host;
    host.fileExists = (path) => sources.has(path) || fileExists(path);
    host.readFile = (path) => sources.get(path) ?? readFile(path);
    host.getSourceFile = (path, ...how) => {
      const code = sources.get(path);
      return code === undefined
        ? getSourceFile(path, ...how)
        : ts.createSourceFile(path, code, { languageVersion: ts.ScriptTarget.ES2022, impliedNodeFormat: ts.ModuleKind.ESNext });
    };
    const found = ts.getPreEmitDiagnostics(ts.createProgram([...sources.keys()], options, host));
    expect(
      found.map(({ file, messageText }) => `${file?.fileName ?? ""}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`),
    ).toEqual([]);
  });

  it.each(guides)("$name prints what it says", ({ text }) => {
    const options = { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 };
    const { outputText } = ts.transpileModule(codeOf(text, false), { compilerOptions: options });
    const printed = execFileSync(process.execPath, ["--input-type=module", "-e", outputText], { encoding: "utf8" });
    expect(printed.trimEnd().split("\n")).toEqual(toldIn(text));
  });
});
