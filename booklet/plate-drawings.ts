import type { Head } from "../src/index.ts";
import type { Job } from "./content/job.ts";
import { armsSheet, faceSheets } from "./content/plate-sheets.ts";
import { openPrintShop } from "./draw/print-shop.ts";
import { svgOf } from "./draw/svg.ts";
import { editionOf } from "./edition.ts";
import { drawingPage } from "./layout/drawing-sheet.ts";

/** Named in every file, and by this a file is known to be of our making. */
export const creator = "Turns & Holes";

/** A drawing as a file. */
export interface PlateDrawing {
  /** For the file, without its ending: small letters, digits, points and hyphens; no two of a head are alike. */
  readonly name: string;
  /** The file: SVG, its lengths true. */
  readonly svg: string;
}

/** What to draw. */
export interface PlateDrawingsOptions {
  /** A job whose arms are to be set; left out, the plates themselves. */
  readonly job?: Job;
}

/**
 * Draws the plates of a head as SVG at true size: each face to be drilled through, centre marks on its
 * holes; or for a job one card to lay under the sector arms, their angle and the holes of the move.
 *
 * The circles of a face whose diameters the head does not state are drawn on diameters of the drawing's
 * own, which it names: the angles are the plate's all the same.
 *
 * @returns One drawing a face, in the head's order; none where it has no plates. One for a job.
 * @throws {@link InputError} as a job sheet does, or where the job takes no arms.
 */
export async function plateDrawings(head: Head, { job }: PlateDrawingsOptions = {}): Promise<readonly PlateDrawing[]> {
  const sheets = job === undefined ? faceSheets(head) : [armsSheet(head, job)];
  const { measure, outlines } = await openPrintShop();
  const { version, digest } = editionOf(head, { drawings: job ?? "plates" });
  const named = new Map<string, number>();
  return sheets.map(({ name, ...sheet }) => {
    const before = named.get(name) ?? 0;
    named.set(name, before + 1);
    const about = { title: sheet.title, creator, digest: `${version} ${digest}` };
    return { name: before === 0 ? name : `${name}-no-${before + 1}`, svg: svgOf(drawingPage(sheet, measure), about, outlines) };
  });
}
