import { closeSync, openSync, readSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { creator } from "../booklet/index.ts";
import { InputError } from "../src/index.ts";

/** How far into a file its beginning goes: enough for the Info of a small PDF is not known, so all of it is read up to this. */
const mostRead = 64 * 1024 * 1024;

/**
 * Refuses a place that cannot be written to, before any work is done: a missing directory, a
 * directory, or a file that is not a book of ours.
 */
export function checkPlace(path: string, force: boolean): void {
  const folder = statSync(dirname(path), { throwIfNoEntry: false });
  if (!folder?.isDirectory()) throw fault(path, `there is no directory ${JSON.stringify(dirname(path))}; make it first, or name another`);
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return;
  if (there.isDirectory()) throw fault(path, "is a directory; name a file in it");
  if (!there.isFile()) throw fault(path, "is not a plain file; name another");
  if (!force && !isOurs(path, there.size)) throw fault(path, "is there already and is not a book of this program; name another file, or add --force to lose it");
}

/** Writes beside the place and then renames, so that no half-written file is ever there. */
export function writeWhole(path: string, bytes: Uint8Array): void {
  const beside = `${path}.${process.pid}.tmp`;
  try {
    writeFileSync(beside, bytes, { flag: "wx" });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    const reason = error instanceof Error && "code" in error ? String(error.code) : "the disk refused it";
    throw fault(path, `cannot be written (${reason}); name another place, or make room and check its permissions`);
  }
}

/** A PDF whose Info names this program. */
function isOurs(path: string, size: number): boolean {
  const bytes = Buffer.alloc(Math.min(size, mostRead));
  let file: number;
  try {
    file = openSync(path, "r");
  } catch {
    return false;
  }
  try {
    readSync(file, bytes, 0, bytes.length, 0);
  } finally {
    closeSync(file);
  }
  return bytes.subarray(0, 5).toString("latin1") === "%PDF-" && bytes.includes(`/Creator (${creator})`);
}

function fault(place: string, problem: string): InputError {
  return new InputError([{ place, problem }]);
}
