import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    include: ["test/**/*.test.ts"],
    globalSetup: "test/support/build.ts",
    setupFiles: "test/support/seed.ts",
    testTimeout: 60_000,
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      reporter: ["text"],
      // Two functions only word what cannot happen: the claims of invariants.
      thresholds: { lines: 100, functions: 99, statements: 99, branches: 95 },
    },
  },
});
