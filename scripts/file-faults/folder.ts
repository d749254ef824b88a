import { spawnSync } from "node:child_process";
import { chmodSync, lstatSync, mkdtempSync, readdirSync, readFileSync, readlinkSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The command as it is installed. */
export const command: string = fileURLToPath(new URL("../turns-and-holes.cjs", import.meta.url));

/** Where the system lets everybody write anywhere, the command is run as somebody who may not. */
const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};

/** A run of the command that has ended. */
export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a line of the shell in a folder, `$T` being the command. */
export function shell(line: string, cwd: string): Ran {
  const env = { ...process.env, T: `${process.execPath} ${command}` };
  const { status, stdout, stderr } = spawnSync("bash", ["--norc", "-c", line], {
    cwd,
    env,
    encoding: "latin1",
    maxBuffer: 2 ** 26,
    ...nobody,
  });
  return { status, stdout, stderr: Buffer.from(stderr, "latin1").toString() };
}

/** An empty folder that anybody may write to. */
export function newFolder(): { readonly path: string; readonly remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), "file-faults-"));
  chmodSync(path, 0o777);
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** All that is in a folder, to be compared: names with what is in them. */
export function contents(path: string): string {
  const each = (name: string): string => {
    const file = join(path, name);
    const there = lstatSync(file);
    if (there.isSymbolicLink()) return `${name} -> ${readlinkSync(file)}`;
    if (there.isDirectory()) return `${name}/`;
    return `${name} ${there.mode.toString(8)} ${there.uid} ${readFileSync(file).toString("base64")}`;
  };
  return readdirSync(path, { recursive: true, encoding: "utf8" }).sort().map(each).join("\n");
}
