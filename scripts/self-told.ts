import type { MoreOfJob } from "./more.ts";
import { version } from "./version.ts";

/** What a command with options of its own says of itself, where `--help` or `--version` asks it to; else null. */
export function toldOfItself(
  asked: { readonly help?: boolean; readonly version?: boolean },
  help: (columns?: number) => string,
  columns?: number,
): MoreOfJob | null {
  if (asked.help === true) return { data: {}, lines: [help(columns).trimEnd()], json: false };
  return asked.version === true ? { data: {}, lines: [version()], json: false } : null;
}
