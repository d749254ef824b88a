import { fstatSync } from "node:fs";
import { fileError } from "../booklet/file-error.ts";
import { headFromText, largestFile, loadHead } from "../booklet/head-file.ts";
import type { Head } from "../src/index.ts";
import { usualHead } from "./head-options.ts";

/**
 * The head that `--head` names: a ready one, a file, or with `-` what comes in at the input.
 *
 * @throws {@link InputError} in one sentence, as {@link loadHead} does.
 */
export async function headAsked(name: string = usualHead): Promise<Head> {
  return name === "-" ? headFromText(await input(), "the input") : loadHead(name);
}

/** All of the input, or as much as shows that it is too much. */
async function input(): Promise<string> {
  const pieces: Buffer[] = [];
  let size = 0;
  try {
    // It would come in as nothing at all.
    if (fstatSync(process.stdin.fd).isDirectory()) throw Object.assign(new Error(), { code: "EISDIR" });
    for await (const piece of process.stdin) {
      pieces.push(piece as Buffer);
      size += (piece as Buffer).length;
      if (size > largestFile) break;
    }
  } catch (error) {
    throw fileError("the input", "read", error);
  }
  return Buffer.concat(pieces).toString("utf8");
}
