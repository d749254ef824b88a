import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import v8 from "@vitest/coverage-v8";
import type { BaseCoverageProvider, CoverageProvider } from "vitest/node";
import { testedFrom } from "./tested-code.ts";

type Transformed = Awaited<ReturnType<BaseCoverageProvider["transformFile"]>>;
type Reading = Parameters<BaseCoverageProvider["readCoverageFiles"]>[0];

/** The name in the environment of the folder that every worker writes what its tests have reached into. */
export const whereCounted = "COUNTED_INTO";

/** What a worker has counted: it writes that as it ends, which is after its last test. */
async function onceWritten(path: string): Promise<string> {
  for (let tenths = 0; tenths < 600; tenths += 1) {
    const text = readFileSync(path, "utf8");
    if (text !== "") return text;
    await setTimeout(100);
  }
  throw new Error(`a worker has not said within a minute what its tests have reached: ${path}`);
}

/**
 * Coverage as the engine counts it, but counted by worker (see `counted.ts`), put together at once, and the code gone
 * through once, whichever projects have run it.
 */
// biome-ignore lint/style/noDefaultExport: so it is asked for
export default {
  takeCoverage(): void {},
  async getProvider(): Promise<CoverageProvider> {
    const folder = mkdtempSync(join(tmpdir(), "counted-"));
    process.env[whereCounted] = folder;
    const provider = (await v8.getProvider()) as CoverageProvider & BaseCoverageProvider;
    provider.readCoverageFiles = async ({ onFileRead, onFinished }: Reading) => {
      const counts = await Promise.all(readdirSync(folder).map((worker) => onceWritten(join(folder, worker))));
      rmSync(folder, { recursive: true });
      onFileRead({ result: counts.flatMap((text) => JSON.parse(text)) });
      await onFinished(provider.ctx.getProjectByName("together"), "ssr");
    };
    provider.transformFile = async (path) => testedFrom(path) as Transformed;
    return provider;
  },
};
