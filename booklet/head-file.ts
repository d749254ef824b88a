import { readFileSync, statSync } from "node:fs";
import { defineHead, type FaultCode, type Head, InputError, readyHeads } from "../src/index.ts";
import { FileError, fileError, shownPath } from "./file-error.ts";

/** A head file of over a megabyte is no head. */
export const largestFile = 1_000_000;

/**
 * Finds a head by its id among the ready heads, or reads it from a JSON file.
 *
 * @param nameOrPath - `ratio-40-plates-15-49`, or a path to a file such as `my-head.json`.
 * @throws {@link InputError} in one sentence, when there is no such head or the file is not one; a
 * {@link FileError} when the system does not let it be read.
 */
export function loadHead(nameOrPath: string): Head {
  return readyHeads.find(({ id }) => id === nameOrPath) ?? readHeadFile(nameOrPath);
}

function readHeadFile(path: string): Head {
  return headFromText(readText(path), path);
}

/**
 * Reads a head from the text of its file.
 *
 * @param path - What to call the text where it is refused.
 * @throws {@link InputError} in one sentence, when it is too long, no JSON, or no head.
 */
export function headFromText(text: string, path: string): Head {
  if (text.length > largestFile) throw tooLarge(path, text.length);
  let spec: unknown;
  try {
    spec = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    const detail = error instanceof SyntaxError ? error.message : "it is nested too deeply";
    throw fault(
      "unreadable",
      path,
      `is not JSON (${detail.replace(/\s+/g, " ").slice(0, 120)}); mend it or start from a copy of an example`,
    );
  }
  try {
    return defineHead(spec as Parameters<typeof defineHead>[0]);
  } catch (error) {
    if (error instanceof InputError)
      throw new InputError(
        error.faults.map((each) => ({ ...each, place: [shownPath(path), each.place].filter(Boolean).join(", ") })),
      );
    throw error;
  }
}

function readText(path: string): string {
  if (path.trim() === "") throw fault("missing", "head", "no name or file was given; name a ready head or a JSON file");
  const about = statOf(path);
  if (about === null) {
    throw fault(
      "missing",
      path,
      `there is no such ready head and no such file; the ready heads are ${readyHeads.map(({ id }) => id).join(", ")}`,
    );
  }
  if (about.isDirectory()) throw new FileError("unreadable", path, "is a directory; name the JSON file in it");
  if (!about.isFile()) throw new FileError("unreadable", path, "is not a plain file; name a JSON file");
  if (about.size > largestFile) throw tooLarge(path, about.size);
  try {
    return readFileSync(path, "utf8");
  } catch (error) {
    throw fileError(path, "read", error);
  }
}

function tooLarge(path: string, size: number): InputError {
  return fault(
    "too-many",
    path,
    `has ${size.toLocaleString("en-US")} bytes, too many for a head file; a head takes a few hundred`,
  );
}

function statOf(path: string) {
  try {
    return statSync(path, { throwIfNoEntry: false }) ?? null;
  } catch (error) {
    // A name that no file can have may still be a ready head's, misspelt.
    if (error instanceof Error && "code" in error && error.code === "ERR_INVALID_ARG_VALUE") return null;
    throw fileError(path, "read", error);
  }
}

function fault(code: FaultCode, path: string, problem: string): InputError {
  return new InputError([{ code, place: shownPath(path), problem }]);
}
