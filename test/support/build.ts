import { spawnSync } from "node:child_process";
import { readdirSync, statSync } from "node:fs";
import { command, root } from "./installed.ts";
import { makeTestedCode } from "./tested-code.ts";

const sources = ["src", "booklet", "scripts"].flatMap((folder) =>
  readdirSync(`${root}${folder}`, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(?:ts|mjs|css)$/.test(name))
    .map((name) => `${root}${folder}/${name}`),
);

const writtenAt = (path: string) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Builds the command once for all tests, where the sources are younger than the last build. */
export function setup(): void {
  makeTestedCode();
  const started = Date.now();
  if (writtenAt(command) > Math.max(...sources.map(writtenAt))) return;
  const built = (tool: string, ...words: string[]) =>
    spawnSync(process.execPath, [`${root}node_modules/${tool}`, ...words], { encoding: "utf8", cwd: root });
  const { stdout } = built("typescript-native/bin/tsc", "-p", root);
  // What the types say is for the type check to judge; here it only matters that there is a command.
  if (writtenAt(command) < started - 1000) throw new Error(`the command could not be built:\n${stdout}`);
  const { status, stderr } = built("rolldown/bin/cli.mjs", "-c", "scripts/rolldown.config.mjs");
  if (status !== 0) throw new Error(`the page for the screen could not be packed:\n${stderr}`);
}
