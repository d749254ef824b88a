import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";
import type { HeadSpec } from "../../src/index.ts";

/** Writes a head's own file for the command to read; it is gone after the tests of the file. */
export function headFile(spec: HeadSpec): string {
  const folder = mkdtempSync(join(tmpdir(), "head-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const file = join(folder, `${spec.id ?? "head"}.json`);
  writeFileSync(file, JSON.stringify(spec));
  return file;
}
