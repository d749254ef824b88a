import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { root } from "./support/installed.ts";
import { LongestFirst } from "./support/longest-first.ts";
import { sweepsAll } from "./support/sweep.ts";
import { loadsTestedCode } from "./support/tested-code.ts";

/** Files that put other modules in the place of the library's own, and so load all of it once more: in a soak. */
const mocking = ["test/gear/repair/worked-out-once.test.ts"];

export default defineConfig({
  root,
  test: {
    globalSetup: "test/support/build.ts",
    setupFiles: "test/support/seed.ts",
    environment: fileURLToPath(new URL("support/counted.ts", import.meta.url)),
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Left to itself it keeps a core free, which of two is the half.
    maxWorkers: "100%",
    // What is tried and thrown away at once fills what V8 keeps for that many times a second. And most code runs so seldom
    // that V8 takes longer to make it fast than to run it: with that left for later, the tests take a sixth less.
    execArgv: ["--max-semi-space-size=64", "--interrupt-budget=600000"],
    sequence: { sequencer: LongestFirst },
    projects: [
      // Files one after the other in the same process: to load the library anew for each takes longer than to test it.
      {
        extends: true,
        plugins: [loadsTestedCode],
        test: {
          name: "together",
          isolate: false,
          include: ["test/**/*.test.ts"],
          exclude: mocking,
          server: { deps: { external: [/\/\.tested\//] } },
        },
      },
      ...(sweepsAll ? [{ extends: true, test: { name: "apart", include: mocking } } as const] : []),
    ],
    coverage: {
      provider: "custom",
      customProviderModule: "test/support/coverage.ts",
      include: ["src/**/*.ts", "booklet/**/*.ts", "scripts/**/*.ts"],
      // What runs in a browser, as a process of its own, or for the developers of the house alone.
      exclude: [
        "test/**",
        "booklet/screen/**",
        "scripts/turns-and-holes.ts",
        "scripts/ready-books.ts",
        "scripts/{bench,worst,mutation,hostile,file-faults,versions,answer-schema}{,/**,.ts}",
      ],
      reporter: [
        [fileURLToPath(new URL("support/decisions.cjs", import.meta.url)), { least: { src: 97, booklet: 90, scripts: 90 } }],
      ],
      thresholds: {
        "src/**": { lines: 100 },
        "booklet/**": { lines: 95 },
        "scripts/**": { lines: 95 },
      },
    },
  },
});
