import { type PaperName, type PlateSheet, plateSheetPdf } from "../booklet/index.ts";
import { created } from "./created.ts";
import { printedTo } from "./printed-to.ts";
import type { Said } from "./said.ts";

/** A sheet with the name of its paper as it was typed. */
export interface PlateSheetAsked extends PlateSheet {
  readonly paper?: string;
}

/**
 * Prints the sheet of an index plate to a file, or with `-` to the output.
 *
 * @throws {@link InputError} in one sentence when the file or the paper is not allowed; nothing is written then.
 */
export function printPlateSheet(path: string, force: boolean, { paper, ...sheet }: PlateSheetAsked): Promise<Said> {
  return printedTo(path, force, () =>
    plateSheetPdf({ ...sheet, ...(paper !== undefined && { paper: paper as PaperName }), ...created() }),
  );
}
