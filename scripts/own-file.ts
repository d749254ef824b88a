import {
  accessSync,
  constants,
  lstatSync,
  mkdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  type Stats,
  statSync,
} from "node:fs";
import { dirname, resolve } from "node:path";
import { FileError, fileError } from "../booklet/file-error.ts";
import { InputError } from "../src/index.ts";
import { whoseFile } from "./whose-file.ts";

/** A place that a file may be written to, as it was found. */
export interface Place {
  /** As it was asked for. */
  readonly path: string;
  /** The file itself, behind any links. */
  readonly file: string;
  /** What was there; null where there was nothing. */
  readonly before: Stats | null;
  /** What the file there is of; null where there is none, or where it is to be lost whatever it is. */
  readonly title: string | null;
}

/** A book takes a few hundred kilobytes; a file far over that is not one. */
const largestBook = 64 * 1024 * 1024;

/**
 * Finds the place of a file, before any work is done, and refuses one that cannot be written to: a
 * missing directory, a directory, a file that is not of our making or was changed since.
 *
 * @throws {@link FileError} where the system does not allow it.
 */
export function placeFor(path: string, force: boolean): Place {
  if (path.trim() === "") throw new FileError("missing", "", "no name was given for the file; give one such as book.pdf");
  const file = behindLinks(path);
  checkFolder(path, dirname(file));
  const before = asked(path, () => lstatSync(file, { throwIfNoEntry: false }) ?? null);
  if (before === null) {
    asked(path, () => accessSync(dirname(file), constants.W_OK | constants.X_OK));
    return { path, file, before, title: null };
  }
  if (before.isDirectory()) throw new FileError("conflict", path, "is a directory; name a file in it");
  if (!before.isFile()) throw new FileError("conflict", path, "is not a plain file; name another");
  asked(path, () => accessSync(file, constants.W_OK));
  asked(path, () => accessSync(dirname(file), constants.W_OK | constants.X_OK));
  return { path, file, before, title: force ? null : titleOf(path, file, before) };
}

/** What a file of ours is of; refuses any other. */
function titleOf(path: string, file: string, { size }: Stats): string {
  const whose = size > largestBook ? null : whoseFile(asked(path, () => readFileSync(file)));
  switch (whose?.made) {
    case "here":
      return whose.title;
    case "here-and-changed":
      throw new FileError(
        "conflict",
        path,
        "was filled in or changed since it was printed; name another file, or add --force to lose what is in it",
      );
    case "elsewhere":
    case undefined:
      throw new FileError(
        "conflict",
        path,
        "is there already and is not a file of this program; name another file, or add --force to lose it",
      );
  }
}

/** Makes a directory to write files in, where it is not there already. */
export function makeFolder(path: string): void {
  const there = asked(path, () => statSync(path, { throwIfNoEntry: false }));
  if (there?.isDirectory()) return;
  if (there !== undefined) throw new FileError("conflict", path, "is a file; name a directory for the drawings");
  checkFolder(path, dirname(path));
  asked(path, () => mkdirSync(path));
}

function checkFolder(path: string, folder: string): void {
  if (asked(path, () => statSync(folder, { throwIfNoEntry: false }))?.isDirectory()) return;
  throw new FileError("missing", path, `there is no directory ${JSON.stringify(folder)}; make it first, or name another`);
}

const mostLinks = 40;

/** The file that a path comes to; links are followed, also to what is not there yet. */
function behindLinks(path: string): string {
  let at = path;
  for (let links = 0; links < mostLinks; links += 1) {
    const folder = dirname(at);
    const { isLink, to } = asked(path, () => {
      const there = lstatSync(at, { throwIfNoEntry: false });
      return there?.isSymbolicLink() ? { isLink: true, to: readlinkSync(at) } : { isLink: false, to: at };
    });
    if (!isLink) return at;
    at = resolve(
      asked(path, () => realpathSync(folder)),
      to,
    );
  }
  throw fileError(path, "written", Object.assign(new Error(), { code: "ELOOP" }));
}

/** Asks the system; what it says against the path is a fault of the file. */
export function asked<Result>(path: string, ask: () => Result): Result {
  try {
    return ask();
  } catch (error) {
    throw error instanceof InputError ? error : fileError(path, "written", error);
  }
}
