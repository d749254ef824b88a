import type { Fault } from "../src/index.ts";
import { said } from "./command.ts";
import { fault } from "./command-line.ts";
import { printable } from "./printable.ts";

/** Where a run of the command writes. */
export interface Outlet {
  /** Whether a person reads the output as it comes. */
  readonly isTerminal: boolean;
  /** How wide the terminal is, where there is one. */
  readonly columns?: number | undefined;
  /** Writes to the output; rejects where it cannot. */
  write(what: string | Uint8Array): Promise<void>;
  /** Writes to the error stream. */
  complain(text: string): void;
}

/**
 * Runs the command: says what is asked for on the output, or in one line on the error stream why it
 * cannot. With `--json` that line is data too, on the output: there is always one object to read.
 *
 * @returns The status: 0 answered, 1 no exact setting, 2 the question cannot be read, 3 a file cannot
 * be read or written, 4 a fault of the program's own.
 */
export async function run(words: readonly string[], outlet: Outlet): Promise<number> {
  try {
    const { code, text, bytes, written = [] } = await said(words, outlet.columns);
    if (bytes !== undefined) await writeBytes(bytes, outlet);
    // Of a pipe the path is taken as it is; a terminal is not to be steered by one.
    const paths = written.map((path) => `${outlet.isTerminal ? printable(path) : path}\n`).join("");
    const all = paths + printable(text);
    if (all !== "") await outlet.write(all);
    return code;
  } catch (error) {
    return complained(refusalOf(error), words, outlet);
  }
}

async function writeBytes(bytes: Uint8Array, outlet: Outlet): Promise<void> {
  if (outlet.isTerminal)
    throw fault("conflict", "-", "the file would go to the terminal; send the output on to a file or a program, or name a file");
  await outlet.write(bytes);
}

/** What is said of a run that came to nothing. */
interface Refusal {
  readonly status: 2 | 3 | 4;
  readonly message: string;
  readonly faults: readonly Fault[];
}

function refusalOf(error: unknown): Refusal {
  // By name: the booklet is loaded apart from this file and has the classes a second time.
  if (error instanceof Error && (error.name === "InputError" || error.name === "FileError")) {
    const { faults } = error as Error & { readonly faults: readonly Fault[] };
    return { status: error.name === "FileError" ? 3 : 2, message: error.message, faults };
  }
  const told = error instanceof Error ? error.message : String(error);
  const message = told.includes("please report it") ? told : `turns-and-holes is at fault, please report it: ${told}`;
  return { status: 4, message, faults: [] };
}

async function complained(refusal: Refusal, words: readonly string[], outlet: Outlet): Promise<number> {
  const { status } = refusal;
  // What was typed may hold a line break, but what is said of it is one line.
  const sentence = `turns-and-holes: ${printable(refusal.message.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, " "))}\n`;
  try {
    if (asksForData(words)) await outlet.write(printable(`${JSON.stringify({ error: refusal })}\n`));
    else outlet.complain(sentence);
  } catch {
    // The output itself is what fails.
    outlet.complain(sentence);
  }
  return status;
}

function asksForData(words: readonly string[]): boolean {
  const end = words.indexOf("--");
  return (end < 0 ? words : words.slice(0, end)).includes("--json");
}
