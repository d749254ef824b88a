import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runFetched } from "./fetched.ts";

const compilers = ["5.4", "5.5", "5.6", "5.7", "5.8", "5.9", "6.0", "7.0"] as const;

/** How modules are found, each with the kind of module that goes with it. */
const resolutions = [
  ["node16", "node16"],
  ["nodenext", "nodenext"],
  ["bundler", "esnext"],
] as const;

/** What is wrong with the types of the package, as programs see them that install it and are written as the guides say. */
export function wrongTypes(tell: (what: string) => void): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), "versions-"));
  try {
    install(folder);
    return compilers.flatMap((compiler) =>
      resolutions.flatMap(([moduleResolution, module]) => {
        writeFileSync(join(folder, "tsconfig.json"), JSON.stringify(config(moduleResolution, module)));
        const { status, said } = runFetched(`typescript@${compiler}`, "tsc", ["--project", "."], folder);
        const what = `TypeScript ${compiler}, ${moduleResolution}`;
        tell(`${what}: ${status === 0 ? "right" : "wrong"}`);
        return status === 0 ? [] : [`${what}:\n${said}`];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Packs the package, installs it in a program of its own, and writes there what the guides have a reader write. */
function install(folder: string): void {
  const npm = (words: readonly string[], cwd: string) =>
    execFileSync("npm", words, { cwd, encoding: "utf8", shell: process.platform === "win32" });
  const [{ filename }] = JSON.parse(npm(["pack", "--ignore-scripts", "--json", "--pack-destination", folder], ".")) as [
    { readonly filename: string },
  ];
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name: "program", private: true, type: "module" }));
  // Of these types as of the house: the oldest compiler has to read them as well.
  npm(["install", "--no-audit", "--no-fund", `./${filename}`, "@types/node@20.19.43"], folder);
  mkdirSync(join(folder, "program"));
  for (const name of readdirSync("docs/guide")) {
    const text = readFileSync(join("docs/guide", name), "utf8");
    const blocks = [...text.matchAll(/```ts(?: page)?\n(.*?)```/gs)].map(([, code]) => code);
    writeFileSync(join(folder, "program", `${name}.ts`), blocks.join("\n"));
  }
}

function config(moduleResolution: string, module: string) {
  return {
    compilerOptions: {
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      module,
      moduleResolution,
      target: "es2022",
      lib: ["es2022", "dom", "dom.iterable"],
      types: ["node"],
      // The declarations of the package are what is asked about.
      skipLibCheck: false,
    },
    include: ["program"],
  };
}
