import { execFile } from "node:child_process";
import { run as runWith } from "../../scripts/run.ts";
import { command, root } from "./installed.ts";

/** What a run of the command ends with. */
export interface Run {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

let last: Promise<unknown> = Promise.resolve();

/**
 * Runs the command in this process, in a folder of its own where one is named. One after the other, as
 * a process is in one folder at a time.
 */
export function run(words: readonly string[], folder: string = root): Promise<Run> {
  const mine = last.then(() => runIn(words, folder));
  last = mine.catch(() => {});
  return mine;
}

async function runIn(words: readonly string[], folder: string): Promise<Run> {
  process.chdir(folder);
  try {
    return await runHere(words);
  } finally {
    process.chdir(root);
  }
}

/** Runs the command in this process, whatever folder it is in, as for a pipe or for a person at a terminal. */
export async function runHere(words: readonly string[], isTerminal = false): Promise<Run & { readonly bytes: Buffer }> {
  const out: Uint8Array[] = [];
  let stderr = "";
  const code = await runWith(words, {
    isTerminal,
    write: async (what) => void out.push(Buffer.from(what)),
    complain: (text) => {
      stderr += text;
    },
  });
  const bytes = Buffer.concat(out);
  return { code, bytes, stdout: bytes.toString(), stderr };
}

/** Runs the command as a user does, in a process of its own; with options of Node's, where it is to be held short. */
export function runProcess(words: readonly string[], folder?: string, node: readonly string[] = []): Promise<Run> {
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      [...node, command, ...words],
      { cwd: folder, encoding: "utf8", maxBuffer: 64 * 1024 * 1024 },
      (_, stdout, stderr) => resolve({ code: child.exitCode ?? -1, stdout, stderr }),
    );
  });
}
