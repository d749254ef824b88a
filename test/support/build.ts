import { spawnSync } from "node:child_process";
import { readdirSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { command } from "./command.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const sources = ["src", "booklet", "scripts"].flatMap((folder) =>
  readdirSync(`${root}${folder}`, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => `${root}${folder}/${name}`),
);

const writtenAt = (path: string) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Builds the command once for all tests, where the sources are younger than the last build. */
export function setup(): void {
  const started = Date.now();
  if (writtenAt(command) > Math.max(...sources.map(writtenAt))) return;
  const { stdout } = spawnSync(process.execPath, [`${root}node_modules/typescript/bin/tsc`, "-p", root], { encoding: "utf8" });
  // What the types say is for the type check to judge; here it only matters that there is a command.
  if (writtenAt(command) < started - 1000) throw new Error(`the command could not be built:\n${stdout}`);
}
