#!/usr/bin/env node
import { said } from "./command.ts";

// A reader that closes early, such as a pager, is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

/** Says what is asked for on the output, or in one line on the error stream why it cannot be read. */
async function run(words: readonly string[]): Promise<void> {
  try {
    const { code, text } = await said(words);
    process.stdout.write(text);
    process.exitCode = code;
  } catch (error) {
    // By name: the booklet is loaded apart from this file and has the class a second time.
    if (!(error instanceof Error && error.name === "InputError")) throw error;
    // What was typed may hold a line break, but what is said of it is one line.
    process.stderr.write(`turns-and-holes: ${error.message.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, " ")}\n`);
    process.exitCode = 2;
  }
}

// Not awaited at the top: the command is packed as a CommonJS file, which starts sooner and cannot.
void run(process.argv.slice(2));
