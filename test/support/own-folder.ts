import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";

/** A folder to write into, asked for outside of any test; it is gone after the tests of the file, or of the part of it that asks. */
export function ownFolder(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), `${name}-`));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
