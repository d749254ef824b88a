import { spawnSync } from "node:child_process";

export interface Run {
  /** Null where the run could not be started. */
  readonly status: number | null;
  readonly said: string;
}

/** Runs a command of a package at one version, fetched by npm where it is not there yet. */
export function runFetched(packed: string, command: string, words: readonly string[], folder: string): Run {
  const given = ["exec", "--yes", `--package=${packed}`, "--", command, ...words];
  const { status, stdout, stderr } = spawnSync("npm", given, {
    cwd: folder,
    encoding: "utf8",
    shell: process.platform === "win32",
    maxBuffer: 2 ** 28,
  });
  return { status, said: `${stdout}${stderr}` };
}
