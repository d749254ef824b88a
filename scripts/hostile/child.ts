import { tried } from "./tried.ts";

// A process of its own, so that what hangs can be ended.
process.on("message", async (seed: number) => {
  process.send?.(await tried(seed));
});
