import { type FaultCode, InputError } from "../src/index.ts";

/**
 * A file that cannot be read or written: a permission, a full disk, links in a circle, another file in
 * its place. The question may be right; by its name a program can tell it from a mistake in what was asked.
 */
export class FileError extends InputError {
  constructor(code: FaultCode, path: string, problem: string) {
    super([{ code, place: shownPath(path), problem }]);
    this.name = "FileError";
  }
}

const reasons: Readonly<Record<string, string>> = {
  EACCES: "its permissions, or those of its folder, do not allow it",
  EPERM: "its permissions, or those of its folder, do not allow it",
  EROFS: "the disk may only be read",
  ENOSPC: "there is no room left",
  EDQUOT: "there is no room left for you",
  EFBIG: "a file may not be so large there",
  ELOOP: "its links lead in a circle",
  ENAMETOOLONG: "the name is too long",
  EINVAL: "there can be no such name there",
  EISDIR: "it is a directory",
  ENOTDIR: "a part of its path is a file, not a directory",
  ENOENT: "there is no such file or directory",
  EBUSY: "it is in use",
  ETXTBSY: "it is in use",
  EMFILE: "too many files are open",
  ENFILE: "too many files are open",
  EIO: "the device failed",
  ENXIO: "the device is not there",
};

/** What the system said against a file, as one sentence. */
export function fileError(path: string, done: "read" | "written", error: unknown): FileError {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const reason = reasons[code] ?? (code === "" ? "the system refused it" : `the system says ${code}`);
  return new FileError("cannot-be-made", path, `cannot be ${done}: ${reason}; mend that, or name another`);
}

const longestPath = 120;

/** A path as one line to print; of a very long one, the end. */
export function shownPath(path: string): string {
  const line = path.replace(/\p{Cc}+/gu, " ");
  return line.length > longestPath ? `…${line.slice(1 - longestPath)}` : line;
}
