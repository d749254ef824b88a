import { readFileSync } from "node:fs";
import type { Head } from "../../src/index.ts";

/** The book of a ready head, as it is handed on; that it is what the code makes is tested in `printed.test.ts`. */
export function printedFile({ id }: Head): Uint8Array {
  return readFileSync(new URL(`../../booklet/printed/${id}.pdf`, import.meta.url));
}
