import { renameSync, writeFileSync } from "node:fs";
import { Session } from "node:inspector/promises";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Environment } from "vitest/runtime";
import { whereCounted } from "./coverage.ts";
import { isTested, sourceOf } from "./tested-code.ts";

/**
 * The plain environment of Node, in which the engine counts what is reached where coverage is asked for. What it has
 * counted is taken once, at a worker's end: to take it after each file of tests, and to put that together, takes as
 * long as a fifth of all tests.
 */
const counted: Environment = {
  name: "counted",
  viteEnvironment: "ssr",
  async setup() {
    const folder = process.env[whereCounted];
    if (folder === undefined) return { teardown() {} };
    const path = join(folder, `${process.pid}`);
    writeFileSync(path, "");
    const session = new Session();
    session.connect();
    await session.post("Profiler.enable");
    await session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });
    return {
      async teardown() {
        const { result } = await session.post("Profiler.takePreciseCoverage");
        session.disconnect();
        const reached = result
          .filter(({ url }) => url.startsWith("file:") && isTested(fileURLToPath(url)))
          .map((each) => ({ ...each, url: pathToFileURL(sourceOf(fileURLToPath(each.url))).href }));
        writeFileSync(`${path}.written`, JSON.stringify(reached));
        renameSync(`${path}.written`, path);
      },
    };
  },
};

// biome-ignore lint/style/noDefaultExport: so it is asked for
export default counted;
