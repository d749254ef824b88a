import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** A file of this project, by its place below the top. */
export function projectFile(path: string): string {
  for (const up of ["../../", "../../../"]) {
    const file = fileURLToPath(new URL(up + path, import.meta.url));
    if (existsSync(file)) return file;
  }
  throw new Error(`there is no ${path}`);
}

/** Wall time of a Node process, in milliseconds. */
export function nodeTime(words: readonly string[]): number {
  const start = performance.now();
  spawnSync(process.execPath, words, { stdio: "ignore" });
  return performance.now() - start;
}

/** What a Node program prints, run in a fresh process. */
export function nodeSays(program: string): string {
  return execFileSync(process.execPath, ["--input-type=module", "-e", program], { encoding: "utf8" }).trim();
}

/** Compiles the baseline in C and hands out a way to run it, in its own milliseconds; null where there is no compiler. */
export function exhaustiveInC(): { readonly run: () => number; readonly remove: () => void } | null {
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  const program = join(folder, "exhaustive");
  const compiled = spawnSync("cc", ["-O2", "-o", program, projectFile("scripts/bench/exhaustive.c")]);
  const remove = () => rmSync(folder, { recursive: true, force: true });
  if (compiled.status !== 0) {
    remove();
    return null;
  }
  return { run: () => Number(execFileSync(program, { encoding: "utf8" }).split(" ")[1]), remove };
}
