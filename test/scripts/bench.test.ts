import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { ownFolder } from "../support/own-folder.ts";
import { sweepsAll } from "../support/sweep.ts";

const bench = fileURLToPath(new URL("../../dist/scripts/bench.js", import.meta.url));
const folder = ownFolder("bench");

/** Looks again and again until it is so, or the run is over. */
async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((again) => setTimeout(again, 50));
}

// In a soak: it is of a tool of the developers, and takes as long as a hundred other tests.
it.runIf(sweepsAll).each(["SIGINT", "SIGTERM"] as const)(
  "a run that measures in a browser, stopped by %s, ends without a fault and leaves nothing",
  async (signal) => {
    const run = spawn(process.execPath, [bench, "screen"], { env: { ...process.env, TMPDIR: folder } });
    let said = "";
    run.stderr.on("data", (text) => {
      said += text;
    });
    const isOver = new Promise<number | null>((over) => run.once("exit", over));
    // A page for the first head, and the browser that opens it.
    const begun = () => readdirSync(folder).filter((name) => /^(?:screen-|playwright_)/.test(name)).length >= 2;
    await until(() => begun() || run.exitCode !== null);
    // On a machine where no browser runs there is nothing to stop.
    if (run.exitCode !== null) return expect(said).toContain("no browser runs here");
    await new Promise((measuring) => setTimeout(measuring, 2000));
    run.kill(signal);
    expect(await isOver).toBe(signal === "SIGTERM" ? 143 : 130);
    expect(said).toBe("");
    expect(readdirSync(folder).filter((name) => name.startsWith("screen-"))).toEqual([]);
  },
);
