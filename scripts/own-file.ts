import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { creator } from "../booklet/index.ts";
import { fault } from "./command-line.ts";

/** A book takes a few hundred kilobytes; a file far over that is not one. */
const largestBook = 64 * 1024 * 1024;

/**
 * Refuses a place that cannot be written to, before any work is done: a missing directory, a
 * directory, or a file that is not a book of ours.
 */
export function checkPlace(path: string, force: boolean): void {
  const folder = statSync(dirname(path), { throwIfNoEntry: false });
  if (!folder?.isDirectory())
    throw fault("missing", path, `there is no directory ${JSON.stringify(dirname(path))}; make it first, or name another`);
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return;
  if (there.isDirectory()) throw fault("conflict", path, "is a directory; name a file in it");
  if (!there.isFile()) throw fault("conflict", path, "is not a plain file; name another");
  if (!force && !isOurs(path, there.size))
    throw fault(
      "conflict",
      path,
      "is there already and is not a book of this program; name another file, or add --force to lose it",
    );
}

/** Makes a directory to write files in, where it is not there already. */
export function makeFolder(path: string): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isDirectory()) return;
  if (there !== undefined) throw fault("conflict", path, "is a file; name a directory for the drawings");
  if (!statSync(dirname(path), { throwIfNoEntry: false })?.isDirectory())
    throw fault("missing", path, `there is no directory ${JSON.stringify(dirname(path))}; make it first, or name another`);
  try {
    mkdirSync(path);
  } catch (error) {
    throw notWritten(path, error);
  }
}

/** Writes beside the place and then renames, so that no half-written file is ever there. */
export function writeWhole(path: string, bytes: Uint8Array): void {
  const beside = `${path}.${process.pid}.tmp`;
  try {
    writeFileSync(beside, bytes, { flag: "wx" });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw notWritten(path, error);
  }
}

function notWritten(path: string, error: unknown): Error {
  const reason = error instanceof Error && "code" in error ? String(error.code) : "the disk refused it";
  return fault(
    "cannot-be-made",
    path,
    `cannot be written (${reason}); name another place, or make room and check its permissions`,
  );
}

/** A PDF whose Info, a drawing whose description, or a page for the screen whose title names this program as its creator. */
function isOurs(path: string, size: number): boolean {
  if (size > largestBook) return false;
  let text: string;
  try {
    text = readFileSync(path, "latin1");
  } catch {
    return false;
  }
  if (text.startsWith("<!doctype html>")) return text.includes(`<title>${creator.replace("&", "&amp;")}</title>`);
  if (text.startsWith("<svg ")) return text.includes(`\n<desc>${creator.replace("&", "&amp;")} `);
  const reference = /\/Creator (\d+) 0 R/.exec(text);
  return text.startsWith("%PDF-") && reference !== null && text.includes(`\n${reference[1]} 0 obj\n(${creator})\n`);
}
