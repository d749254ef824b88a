import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { HeadSpec } from "../../src/index.ts";
import { ownFolder } from "./own-folder.ts";

/** Writes heads' own files for the command to read; asked for outside of any test, they are gone after the tests of the file. */
export function headFiles(): (spec: HeadSpec) => string {
  const folder = ownFolder("head");
  let written = 0;
  return (spec) => {
    written += 1;
    const file = join(folder, `${spec.id ?? "head"}-${written}.json`);
    writeFileSync(file, JSON.stringify(spec));
    return file;
  };
}
