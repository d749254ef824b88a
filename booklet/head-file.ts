import { readFileSync, statSync } from "node:fs";
import { defineHead, type FaultCode, type Head, InputError, readyHeads } from "../src/index.ts";

/** A head file of over a megabyte is no head. */
const largestFile = 1_000_000;

/**
 * Finds a head by its id among the ready heads, or reads it from a JSON file.
 *
 * @param nameOrPath - `ratio-40-plates-15-49`, or a path to a file such as `my-head.json`.
 * @throws {@link InputError} in one sentence, when there is no such head or the file is not one.
 */
export function loadHead(nameOrPath: string): Head {
  return readyHeads.find(({ id }) => id === nameOrPath) ?? readHeadFile(nameOrPath);
}

function readHeadFile(path: string): Head {
  const text = readText(path);
  let spec: unknown;
  try {
    spec = JSON.parse(text);
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
        error.faults.map((each) => ({ ...each, place: [shown(path), each.place].filter(Boolean).join(", ") })),
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
  if (about.isDirectory()) throw fault("unreadable", path, "is a directory; name the JSON file in it");
  if (!about.isFile()) throw fault("unreadable", path, "is not a plain file; name a JSON file");
  if (about.size > largestFile)
    throw fault(
      "too-many",
      path,
      `has ${about.size.toLocaleString("en-US")} bytes, too many for a head file; a head takes a few hundred`,
    );
  try {
    return readFileSync(path, "utf8").replace(/^\uFEFF/, "");
  } catch {
    throw fault("unreadable", path, "cannot be read; check its permissions");
  }
}

function statOf(path: string) {
  try {
    return statSync(path, { throwIfNoEntry: false }) ?? null;
  } catch {
    return null;
  }
}

const longestPath = 120;

/** A path as one line to print; of a very long one, the end. */
function shown(path: string): string {
  const line = path.replace(/\p{Cc}+/gu, " ");
  return line.length > longestPath ? `…${line.slice(1 - longestPath)}` : line;
}

function fault(code: FaultCode, path: string, problem: string): InputError {
  return new InputError([{ code, place: shown(path), problem }]);
}
