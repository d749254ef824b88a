import {
  boltCircleSheetPdf,
  flatsSheetPdf,
  kitSheetPdf,
  type PaperName,
  plateSheetPdf,
  repairSheetPdf,
  scaleSheetPdf,
} from "../booklet/index.ts";
import { created } from "./created.ts";
import { printedTo } from "./printed-to.ts";
import type { Said } from "./said.ts";

/** What prints the sheet that goes with an answer, by what the sheet is of. */
interface SheetPdfs {
  readonly "bolt-circle": typeof boltCircleSheetPdf;
  readonly flats: typeof flatsSheetPdf;
  readonly kit: typeof kitSheetPdf;
  readonly plate: typeof plateSheetPdf;
  readonly repair: typeof repairSheetPdf;
  readonly scale: typeof scaleSheetPdf;
}

const sheetPdfs: SheetPdfs = {
  "bolt-circle": boltCircleSheetPdf,
  flats: flatsSheetPdf,
  kit: kitSheetPdf,
  plate: plateSheetPdf,
  repair: repairSheetPdf,
  scale: scaleSheetPdf,
};

/** What a sheet is of. */
export type SheetKind = keyof SheetPdfs;

/** What the sheet of a kind is made from. */
export type SheetOf<Kind extends SheetKind> = Parameters<SheetPdfs[Kind]>[0];

/**
 * Prints a sheet to a file, or with `-` to the output.
 *
 * @param paper - Its name as it was typed.
 * @throws {@link InputError} in one sentence when the file or the paper is not allowed; nothing is written then.
 */
export function printSheet<Kind extends SheetKind>(
  kind: Kind,
  sheet: SheetOf<Kind>,
  { path, paper, force }: { readonly path: string; readonly paper: string | undefined; readonly force: boolean },
): Promise<Said> {
  const print = sheetPdfs[kind] as (options: SheetOf<Kind>) => Promise<Uint8Array>;
  return printedTo(path, force, () =>
    print({ ...sheet, ...(paper !== undefined && { paper: paper as PaperName }), ...created() }),
  );
}
