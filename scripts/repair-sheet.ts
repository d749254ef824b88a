import { type PaperName, type RepairSheet, repairSheetPdf } from "../booklet/index.ts";
import { created } from "./created.ts";
import { checkPlace, writeWhole } from "./own-file.ts";

/** A sheet with the name of its paper as it was typed. */
export interface RepairSheetAsked extends RepairSheet {
  readonly paper?: string;
}

/**
 * Prints the sheet of a repair to a file.
 *
 * @throws {@link InputError} in one sentence when the file or the paper is not allowed; nothing is written then.
 */
export async function printRepairSheet(path: string, force: boolean, { paper, ...sheet }: RepairSheetAsked): Promise<void> {
  checkPlace(path, force);
  writeWhole(path, await repairSheetPdf({ ...sheet, ...(paper !== undefined && { paper: paper as PaperName }), ...created() }));
}
