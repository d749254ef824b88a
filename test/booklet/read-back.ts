import { type BookletOptions, bookletPdf } from "../../booklet/index.ts";
import type { Head } from "../../src/index.ts";
import { type Piece, piecesOf } from "./read-pdf.ts";

type Pages = readonly (readonly Piece[])[];

const printed = new WeakMap<Head, Map<string, Promise<Uint8Array>>>();
const read = new WeakMap<Promise<Uint8Array>, Promise<Pages>>();

/** A head's book as a file, printed once for all that look at it. */
export function printedBook(head: Head, options: BookletOptions = {}): Promise<Uint8Array> {
  const known = printed.get(head) ?? new Map<string, Promise<Uint8Array>>();
  printed.set(head, known);
  const name = JSON.stringify(options);
  const bytes = known.get(name) ?? bookletPdf(head, options);
  known.set(name, bytes);
  return bytes;
}

/** The text of each page of a head's book, piece by piece, printed and read back once. */
export function readBack(head: Head, options: BookletOptions = {}): Promise<Pages> {
  const bytes = printedBook(head, options);
  const pages = read.get(bytes) ?? bytes.then(piecesOf);
  read.set(bytes, pages);
  return pages;
}
