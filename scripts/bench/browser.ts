import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Browser } from "playwright-core";
import { projectFile } from "./child.ts";

/** Where the browser that comes as a package is unpacked. */
const unpacked = join(dirname(projectFile("package.json")), "node_modules/.cache/screen-browser");

const installed = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** What the browser may not do without on a machine with no display and no user but one. */
const asRoot = ["--no-sandbox", "--no-zygote", "--disable-gpu", "--font-render-hinting=none"];

const runs = (path: string, env = process.env) => spawnSync(path, ["--version"], { env }).status === 0;

interface Found {
  readonly path: string;
  readonly env: NodeJS.ProcessEnv;
}

/**
 * Opens a browser: one that is installed, else the one that comes as a package. Null where neither
 * runs, which is no excuse on a clean clone: there it must.
 */
export async function openBrowser(): Promise<Browser | null> {
  const found = installedBrowser() ?? (await packagedBrowser());
  if (found === null) {
    if (process.env.CI === "true") throw new Error("no browser runs here, neither an installed one nor the one of the package");
    process.stderr.write("no browser runs here: what needs one is left out\n");
    return null;
  }
  const env = Object.fromEntries(
    Object.entries(found.env).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
  const { chromium } = await import("playwright-core");
  return chromium.launch({ executablePath: found.path, args: asRoot, env });
}

function installedBrowser(): Found | null {
  const path = installed.find((name) => runs(name));
  if (path === undefined) return null;
  const { stdout } = spawnSync("which", [path], { encoding: "utf8" });
  return { path: stdout.trim(), env: process.env };
}

/** The package unpacks into the folder for temporary files, and its libraries only where it takes itself to be on a server that lacks them. */
async function packagedBrowser(): Promise<Found | null> {
  const { TMPDIR, AWS_EXECUTION_ENV, LD_LIBRARY_PATH, FONTCONFIG_PATH } = process.env;
  Object.assign(process.env, { TMPDIR: unpacked, AWS_EXECUTION_ENV: "nodejs20.x" });
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    const unpack = () => {
      mkdirSync(unpacked, { recursive: true });
      return packaged.executablePath();
    };
    let path = await unpack();
    const withLibraries = { ...process.env, TMPDIR };
    const plain = { ...process.env, TMPDIR, LD_LIBRARY_PATH };
    const envThatRuns = () => [plain, withLibraries].find((env) => runs(path, env));
    if (envThatRuns() === undefined) {
      // Unpacking may have been broken off half-way.
      rmSync(unpacked, { recursive: true, force: true });
      path = await unpack();
    }
    const env = envThatRuns();
    return env === undefined ? null : { path, env };
  } finally {
    for (const [name, value] of Object.entries({ TMPDIR, AWS_EXECUTION_ENV, LD_LIBRARY_PATH, FONTCONFIG_PATH })) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}
