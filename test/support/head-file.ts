import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { HeadSpec } from "../../src/index.ts";
import { ownFolder } from "./own-folder.ts";

// Made while the file is loaded: what is asked for within a test is not taken away after it.
const folder = ownFolder("head");
let written = 0;

/** Writes a head's own file for the command to read; it is gone after the tests of the file. */
export function headFile(spec: HeadSpec): string {
  written += 1;
  const file = join(folder, `${spec.id ?? "head"}-${written}.json`);
  writeFileSync(file, JSON.stringify(spec));
  return file;
}
