#!/usr/bin/env node
import { said } from "./command.ts";

// A reader that closes early, such as a pager, is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

try {
  const { code, text } = await said(process.argv.slice(2));
  process.stdout.write(text);
  process.exitCode = code;
} catch (error) {
  // By name: the booklet is loaded apart from this file and has the class a second time.
  if (!(error instanceof Error && error.name === "InputError")) throw error;
  // What was typed may hold a line break, but what is said of it is one line.
  process.stderr.write(`turns-and-holes: ${error.message.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, " ")}\n`);
  process.exitCode = 2;
}
