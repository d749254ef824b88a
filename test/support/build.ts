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
  if (writtenAt(command) > Math.max(...sources.map(writtenAt))) return;
  const built = (tool: string, ...words: string[]) =>
    spawnSync(process.execPath, [`${root}node_modules/${tool}`, ...words], { encoding: "utf8", cwd: root });
  // What the types say is for the type check to judge.
  const compiled = built("typescript-native/bin/tsc", "--noCheck", "-p", root);
  if (compiled.status !== 0) throw new Error(`the code could not be compiled:\n${compiled.stdout}`);
  const packed = built("rolldown/bin/cli.mjs", "-c", "scripts/rolldown.config.mjs");
  if (packed.status !== 0) throw new Error(`command and page for the screen could not be packed:\n${packed.stderr}`);
}
