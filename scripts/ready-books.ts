#!/usr/bin/env node
import { createHash } from "node:crypto";
import { mkdirSync } from "node:fs";
import { bookletDigest, bookletPdf, screenPage } from "../booklet/index.ts";
import { readyHeads } from "../src/index.ts";
import { placeFor } from "./own-file.ts";
import { writeWhole } from "./write-whole.ts";

// Prints the books of all ready heads into booklet/printed, and their screen editions, for those who have no Node, with the
// digests by which the tests know that they are what the code makes. Run it from the top of the
// package whenever a test says that they are not.
const folder = "booklet/printed";
const digestOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
mkdirSync(folder, { recursive: true });
const digests: Record<string, { readonly pages: string; readonly file: string; readonly screen: string }> = {};
for (const head of readyHeads) {
  const [file, screen] = [await bookletPdf(head), Buffer.from(screenPage(head))];
  writeWhole(placeFor(`${folder}/${head.id}.pdf`, true), file);
  writeWhole(placeFor(`${folder}/${head.id}.html`, true), screen);
  digests[head.id] = { pages: await bookletDigest(head), file: digestOf(file), screen: digestOf(screen) };
  process.stdout.write(`${folder}/${head.id}.pdf, .html\n`);
}
writeWhole(placeFor(`${folder}/digests.json`, true), Buffer.from(`${JSON.stringify(digests, null, 2)}\n`));
