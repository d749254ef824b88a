import { readFileSync } from "node:fs";

/** From the sources or from the build: the one is a folder nearer to package.json than the other. */
export function version(): string {
  for (const up of ["../package.json", "../../package.json", "../../../package.json"]) {
    try {
      return (JSON.parse(readFileSync(new URL(up, import.meta.url), "utf8")) as { version: string }).version;
    } catch {}
  }
  return "unknown";
}
