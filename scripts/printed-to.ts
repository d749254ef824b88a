import { placeFor } from "./own-file.ts";
import type { Said } from "./said.ts";
import { writeWhole } from "./write-whole.ts";

/** Makes a file and writes it where it was asked for; with `-` it goes to the output. The place is looked at before any work is done. */
export async function printedTo(path: string, force: boolean, made: () => Promise<Uint8Array>): Promise<Said> {
  if (path === "-") return { code: 0, text: "", bytes: await made() };
  const place = placeFor(path, force);
  writeWhole(place, await made());
  return { code: 0, text: "", written: [path] };
}
