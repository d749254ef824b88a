import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: { include: ["test/**/*.test.ts"], globalSetup: "test/support/build.ts", testTimeout: 60_000 },
});
