#!/usr/bin/env node
import { createHash } from "node:crypto";
import { mkdirSync } from "node:fs";
import { bookletDigest, bookletPdf } from "../booklet/index.ts";
import { readyHeads } from "../src/index.ts";
import { writeWhole } from "./own-file.ts";

// Prints the books of all ready heads into booklet/printed, for those who have no Node, with the
// digests by which the tests know that they are what the code makes. Run it from the top of the
// package whenever a test says that they are not.
const folder = "booklet/printed";
mkdirSync(folder, { recursive: true });
const digests: Record<string, { readonly pages: string; readonly file: string }> = {};
for (const head of readyHeads) {
  const bytes = await bookletPdf(head);
  writeWhole(`${folder}/${head.id}.pdf`, bytes);
  digests[head.id] = { pages: await bookletDigest(head), file: createHash("sha256").update(bytes).digest("hex") };
  process.stdout.write(`${folder}/${head.id}.pdf\n`);
}
writeWhole(`${folder}/digests.json`, Buffer.from(`${JSON.stringify(digests, null, 2)}\n`));
