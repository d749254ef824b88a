import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The command as it is installed. */
export const command: string = fileURLToPath(new URL("../../dist/scripts/turns-and-holes.js", import.meta.url));

/** What a run of the command ends with. */
export interface Run {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the command as a user does, with options of Node's own where it is to be held short. */
export function run(words: readonly string[], folder?: string, node: readonly string[] = []): Promise<Run> {
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      [...node, command, ...words],
      { cwd: folder, encoding: "utf8", maxBuffer: 64 * 1024 * 1024 },
      (_, stdout, stderr) => resolve({ code: child.exitCode ?? -1, stdout, stderr }),
    );
  });
}
