import { join } from "node:path";
import { type Job, plateDrawings } from "../booklet/index.ts";
import type { Head } from "../src/index.ts";
import { fault, optionNames } from "./command-line.ts";
import { makeFolder, placeFor } from "./own-file.ts";
import { withOptionName } from "./read-options.ts";
import type { Said } from "./said.ts";
import { writeAll } from "./write-whole.ts";

/** What the drawings are of, and where they go. */
export interface DrawingsAsked {
  readonly job: Job | undefined;
  /** A directory. */
  readonly out: string;
  readonly force: boolean;
}

/**
 * Writes the drawings of a head into a directory. Every place is looked at before any file is written.
 *
 * @throws {@link InputError} in one sentence when something asked for is wrong; nothing is written then.
 */
export async function printDrawings(head: Head, { job, out, force }: DrawingsAsked): Promise<Said> {
  const drawings = await plateDrawings(head, job === undefined ? {} : { job }).catch((error: unknown) => {
    throw withOptionName({ ...optionNames, job: "--job" }, error);
  });
  if (drawings.length === 0)
    throw fault("not-owned", "--as", "this head has no index plates to draw; leave --as drawings out, or name another head");
  if (out === "-") throw fault("conflict", "--out", "drawings are several files; name a directory for them");
  makeFolder(out);
  const files = drawings.map(({ name, svg }) => ({ place: placeFor(join(out, `${name}.svg`), force), bytes: Buffer.from(svg) }));
  writeAll(files);
  return { code: 0, text: "", written: files.map(({ place }) => place.path) };
}
