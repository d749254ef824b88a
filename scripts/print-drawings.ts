import { join } from "node:path";
import { type Job, plateDrawings } from "../booklet/index.ts";
import type { Head } from "../src/index.ts";
import { fault, optionNames } from "./command-line.ts";
import { checkPlace, makeFolder, writeWhole } from "./own-file.ts";
import { withOptionName } from "./read-options.ts";

/** What the drawings are of, and where they go. */
export interface DrawingsAsked {
  readonly job: Job | undefined;
  /** A directory. */
  readonly out: string;
  readonly force: boolean;
}

/**
 * Writes the drawings of a head into a directory, and names each file as it is written. Every place is
 * looked at before the first is.
 *
 * @throws {@link InputError} in one sentence when something asked for is wrong; nothing is written then.
 */
export async function printDrawings(head: Head, { job, out, force }: DrawingsAsked): Promise<void> {
  const drawings = await plateDrawings(head, job === undefined ? {} : { job }).catch((error: unknown) => {
    throw withOptionName({ ...optionNames, job: "--job" }, error);
  });
  if (drawings.length === 0)
    throw fault("not-owned", "--as", "this head has no index plates to draw; leave --as drawings out, or name another head");
  makeFolder(out);
  const files = drawings.map(({ name, svg }) => ({ path: join(out, `${name}.svg`), svg }));
  for (const { path } of files) checkPlace(path, force);
  for (const { path, svg } of files) {
    writeWhole(path, Buffer.from(svg));
    process.stdout.write(`${path}\n`);
  }
}
