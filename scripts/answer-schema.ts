#!/usr/bin/env node
import { readFileSync, writeFileSync } from "node:fs";
import { schemaOf } from "./answer-schema/schema.ts";
import { projectFile } from "./bench/child.ts";

// Writes booklet/answer.schema.json, what --json prints, from the types that it is printed by; with "check" it only says whether that is so.
const path = projectFile("booklet/head.schema.json").replace("head.schema", "answer.schema");
const { $defs, ...head } = schemaOf(projectFile("scripts/answer-schema/printed.ts"));
// A type a line: small, and its changes can be read.
const lines = Object.entries($defs as object).map(([name, part]) => `${JSON.stringify(name)}:${JSON.stringify(part)}`);
const text = `${JSON.stringify(head).slice(0, -1)},"$defs":{\n${lines.join(",\n")}\n}}\n`;
if (process.argv[2] !== "check") writeFileSync(path, text);
else if (readFileSync(path, "utf8") !== text) {
  process.stderr.write("booklet/answer.schema.json is not what the types say; run npm run answer-schema\n");
  process.exitCode = 1;
}
