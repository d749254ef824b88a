import { type KitSheetOptions, kitSheetPdf } from "../booklet/index.ts";
import type { Head } from "../src/index.ts";
import { created } from "./created.ts";
import { printedTo } from "./printed-to.ts";
import type { Said } from "./said.ts";

/**
 * Prints the sheet of a kit to a file, or with `-` to the output.
 *
 * @throws {@link InputError} in one sentence when the file or the paper is not allowed; nothing is written then.
 */
export function printKitSheet(
  path: string,
  force: boolean,
  { head, ...asked }: KitSheetOptions & { readonly head: Head },
): Promise<Said> {
  return printedTo(path, force, () => kitSheetPdf(head, { ...asked, ...created() }));
}
