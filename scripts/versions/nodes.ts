import { readdirSync } from "node:fs";
import { runFetched } from "./fetched.ts";

const nodes = ["20", "22", "24"] as const;

/** Rooms of the tests that are of print, of the page for the screen, of commands, or of no room of the library. */
const notOfLibrary = new Set(["booklet", "screen", "scripts", "support"]);

/** What the library's tests find wrong on each line of Node. */
export function wrongOnNodes(tell: (what: string) => void): readonly string[] {
  const rooms = readdirSync("test", { withFileTypes: true })
    .filter((each) => each.isDirectory() && !notOfLibrary.has(each.name))
    .map(({ name }) => `test/${name}/`);
  return nodes.flatMap((node) => {
    const words = ["node_modules/vitest/vitest.mjs", "run", "--config", "test/vitest.config.ts", ...rooms];
    const { status, said } = runFetched(`node@${node}`, "node", words, process.cwd());
    const told = /Tests.*$/m.exec(said)?.[0] ?? "no test ran";
    tell(`Node ${node}: ${told}`);
    return status === 0 ? [] : [`Node ${node}:\n${said}`];
  });
}
