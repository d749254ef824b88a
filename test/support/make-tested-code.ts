import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname } from "node:path";
import { transformSync } from "rolldown/utils";
import { loadsSources, testedFolder, testedOf } from "./tested-code.ts";

/** Makes the code as it is tested anew, from the sources that are code. */
export function makeTestedCode(sources: readonly string[]): void {
  if (loadsSources) return;
  rmSync(testedFolder, { recursive: true, force: true });
  for (const source of sources) {
    const tested = testedOf(source);
    if (tested === undefined) continue;
    const { code, map, errors } = transformSync(source, readFileSync(source, "utf8"), {
      sourcemap: true,
      typescript: { rewriteImportExtensions: "rewrite", onlyRemoveTypeImports: true },
    });
    if (errors.length > 0) throw new Error(`${source} is no code: ${errors.map(({ message }) => message).join("; ")}`);
    mkdirSync(dirname(tested), { recursive: true });
    writeFileSync(`${tested}.map`, JSON.stringify(map));
    writeFileSync(tested, `${code}\n//# sourceMappingURL=${basename(tested)}.map\n`);
  }
}
