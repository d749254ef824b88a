import { createHash } from "node:crypto";
import { createRequire } from "node:module";
import type { Head } from "../src/index.ts";

/** Which code and which inputs a book was made from, so that a sheet found in ten years can be remade. */
export interface Edition {
  readonly version: string;
  /** The first twelve hexadecimal digits of the SHA-256 of head, options and version. */
  readonly digest: string;
}

/** The edition of a book of this head with these options; of a sheet for which no head is turned of the options alone. */
export function editionOf(head: Head | null, options: unknown): Edition {
  const { version } = createRequire(import.meta.url)("turns-and-holes/package.json") as { version: string };
  const digest = createHash("sha256").update(JSON.stringify({ head, options, version })).digest("hex").slice(0, 12);
  return { version, digest };
}
