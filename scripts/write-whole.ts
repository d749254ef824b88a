import { randomBytes } from "node:crypto";
import {
  closeSync,
  fchmodSync,
  fchownSync,
  fstatSync,
  fsyncSync,
  linkSync,
  lstatSync,
  openSync,
  renameSync,
  rmSync,
  type Stats,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { FileError } from "../booklet/file-error.ts";
import { asked, type Place } from "./own-file.ts";
import { whoseFile } from "./whose-file.ts";

/** A file to be written. */
export interface NewFile {
  readonly place: Place;
  readonly bytes: Uint8Array;
}

/** Writes one file, as {@link writeAll} does. */
export function writeWhole(place: Place, bytes: Uint8Array): void {
  writeAll([{ place, bytes }]);
}

/**
 * Writes each file beside its place, and when all are on the disk gives them their names: a file is
 * never there by half, what was there is there until then, and what has come meanwhile stays.
 *
 * @throws {@link FileError} where the system does not allow it, and {@link InputError} where a file
 * of another job, or one that was changed meanwhile, is there.
 */
export function writeAll(files: readonly NewFile[]): void {
  for (const { place, bytes } of files) checkSameJob(place, bytes);
  const beside = new Map<NewFile, string>();
  try {
    for (const file of files) {
      const { place, bytes } = file;
      const path = join(dirname(place.file), `.turns-and-holes-${randomBytes(8).toString("hex")}.tmp`);
      const descriptor = asked(place.path, () => openSync(path, "wx"));
      beside.set(file, path);
      asked(place.path, () => fill(descriptor, bytes, place));
    }
    for (const [{ place }, path] of beside) asked(place.path, () => giveName(path, place));
  } finally {
    for (const path of beside.values()) rmSync(path, { force: true });
  }
}

function checkSameJob({ path, title }: Place, bytes: Uint8Array): void {
  if (title === null) return;
  const whose = whoseFile(bytes);
  if (whose.made === "here" && whose.title === title) return;
  throw new FileError("conflict", path, "is there already, of another head or job; name another file, or add --force to lose it");
}

function fill(descriptor: number, bytes: Uint8Array, { before }: Place): void {
  try {
    writeFileSync(descriptor, bytes);
    if (before !== null) keepOwner(descriptor, before);
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}

/** The new file belongs to whom the old one did, and may be read by the same. */
function keepOwner(descriptor: number, before: Stats): void {
  const { uid, gid } = fstatSync(descriptor);
  if (uid !== before.uid || gid !== before.gid) fchownSync(descriptor, before.uid, before.gid);
  fchmodSync(descriptor, before.mode & 0o7777);
}

function giveName(from: string, { path, file, before, title }: Place): void {
  const isToBeLost = before !== null && title === null;
  if (!isToBeLost) checkUnchanged(path, file, before);
  if (before === null) nameNew(from, file, path);
  else renameSync(from, file);
}

function checkUnchanged(path: string, file: string, before: Stats | null): void {
  const now = lstatSync(file, { throwIfNoEntry: false }) ?? null;
  const isAsItWas = now === null ? before === null : before !== null && isSame(before, now);
  if (!isAsItWas) throw cameMeanwhile(path);
}

function isSame(before: Stats, now: Stats): boolean {
  return before.ino === now.ino && before.size === now.size && before.mtimeMs === now.mtimeMs;
}

/** A second name is refused by the system where there is a file of that name, even one of this instant. */
function nameNew(from: string, file: string, path: string): void {
  try {
    linkSync(from, file);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") throw cameMeanwhile(path);
    // A disk that has no second names.
    renameSync(from, file);
  }
}

function cameMeanwhile(path: string): FileError {
  return new FileError("conflict", path, "has come or was changed while this was being made; it was left as it is");
}
