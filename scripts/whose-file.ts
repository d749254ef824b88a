import { creator } from "../booklet/index.ts";

const named = creator.replace("&", "&amp;");

/** What this program finds in a file: its own, as it wrote it; its own, changed since; or another's. */
export type Whose =
  | { readonly made: "here"; readonly title: string }
  | { readonly made: "here-and-changed" }
  | { readonly made: "elsewhere" };

const elsewhere: Whose = { made: "elsewhere" };

/**
 * Tells whose a file is: a PDF whose Info, a drawing whose description, or a page for the screen whose
 * title names this program. `title` says what it is of: another job's file has another.
 */
export function whoseFile(bytes: Uint8Array): Whose {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString("latin1");
  if (text.startsWith("%PDF-")) return ofPdf(text);
  if (text.startsWith("<svg ")) return text.includes(`\n<desc>${named} `) ? here(/^<title>(.*)<\/title>$/m, text) : elsewhere;
  if (text.startsWith("<!doctype html>"))
    return text.includes(`<title>${named}</title>`)
      ? here(/ id="filled">(\{"head":\{"id":"[^"]*","name":"(?:[^"\\]|\\.)*")/, text)
      : elsewhere;
  return elsewhere;
}

function here(pattern: RegExp, text: string): Whose {
  const title = pattern.exec(text)?.[1];
  return title === undefined ? { made: "here-and-changed" } : { made: "here", title };
}

function ofPdf(text: string): Whose {
  if (infoOf(text, "Creator") !== `(${creator})`) return elsewhere;
  const title = infoOf(text, "Title");
  return title === null || !isAsWritten(text) ? { made: "here-and-changed" } : { made: "here", title };
}

/** An entry of a PDF's Info, as pdfkit writes it: each an object of its own. */
function infoOf(text: string, key: "Creator" | "Title"): string | null {
  const [, id] = new RegExp(`/${key} (\\d+) 0 R`).exec(text) ?? [];
  const start = id === undefined ? -1 : text.indexOf(`\n${id} 0 obj\n`);
  if (id === undefined || start < 0) return null;
  const from = start + `\n${id} 0 obj\n`.length;
  const to = text.indexOf("\nendobj", from);
  return to < 0 ? null : text.slice(from, to);
}

/** Whoever fills in a PDF or writes on it adds a second end to it, or writes all of it anew in another order. */
function isAsWritten(text: string): boolean {
  const [, table] = /\nstartxref\n(\d+)\n%%EOF\n?$/.exec(text.slice(-60)) ?? [];
  return (
    table !== undefined &&
    text.indexOf("\nstartxref") === text.lastIndexOf("\nstartxref") &&
    text.startsWith("xref", Number(table))
  );
}
