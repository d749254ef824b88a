import { spawnSync } from "node:child_process";
import { readdirSync, statSync } from "node:fs";
import { command, root } from "./installed.ts";
import { makeTestedCode } from "./make-tested-code.ts";
import { rooms } from "./tested-code.ts";

const sources = rooms.flatMap((room) =>
  readdirSync(`${root}${room}`, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(?:ts|mjs|css)$/.test(name))
    .map((name) => `${root}${room}/${name}`),
);

const writtenAt = (path: string) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Makes what all tests stand on, once: the code as it is tested, and the command where its sources are younger than it. */
export function setup(): void {
  makeTestedCode(sources);
  if (writtenAt(command) > Math.max(...sources.map(writtenAt))) return;
  const { status, stdout, stderr } = spawnSync("npm", ["run", "build", "--silent"], {
    encoding: "utf8",
    cwd: root,
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error(`the command could not be built:\n${stdout}${stderr}`);
}
