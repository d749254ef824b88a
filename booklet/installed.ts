import { createRequire } from "node:module";
import { InputError } from "../src/index.ts";

/**
 * Loads what printing needs, which a package manager may leave out.
 *
 * @throws {@link InputError} that says what to install, where it is not there.
 */
export async function ifInstalled<Loaded>(load: () => Promise<Loaded>): Promise<Loaded> {
  try {
    return await load();
  } catch (error) {
    if (!isNotFound(error)) throw error;
    throw new InputError([
      { code: "missing", place: "", problem: `printing is not installed; install it with npm install ${wanted().join(" ")}` },
    ]);
  }
}

function isNotFound(error: unknown): boolean {
  return error instanceof Error && "code" in error && /^(?:ERR_)?MODULE_NOT_FOUND$/.test(String(error.code));
}

/** Each package with the version that this one is made for. */
function wanted(): readonly string[] {
  const about = createRequire(import.meta.url)("turns-and-holes/package.json") as {
    readonly optionalDependencies: Readonly<Record<string, string>>;
  };
  return Object.entries(about.optionalDependencies).map(([name, version]) => `${name}@${version}`);
}
