import { type PaperName, type ScaleSheet, scaleSheetPdf } from "../booklet/index.ts";
import { created } from "./created.ts";
import { printedTo } from "./printed-to.ts";
import type { Said } from "./said.ts";

/** A sheet with the name of its paper as it was typed. */
export interface ScaleSheetAsked extends ScaleSheet {
  readonly paper?: string;
}

/**
 * Prints the sheet of a scale to a file, or with `-` to the output.
 *
 * @throws {@link InputError} in one sentence when the file or the paper is not allowed; nothing is written then.
 */
export function printScaleSheet(path: string, force: boolean, { paper, ...sheet }: ScaleSheetAsked): Promise<Said> {
  return printedTo(path, force, () =>
    scaleSheetPdf({ ...sheet, ...(paper !== undefined && { paper: paper as PaperName }), ...created() }),
  );
}
