import { execFileSync, spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { checkPackage, createPackageFromTarballData, type Problem } from "@arethetypeswrong/core";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { beforeAll, describe, expect, it } from "vitest";
import { ownFolder } from "./support/own-folder.ts";

const folder = ownFolder("packed");
const manifest = JSON.parse(readFileSync("package.json", "utf8")) as Record<string, unknown>;
let file = "";
let names: readonly string[] = [];

beforeAll(() => {
  const told = execFileSync("npm", ["pack", "--ignore-scripts", "--json", "--pack-destination", folder], {
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  const [packed] = JSON.parse(told) as [{ filename: string; files: { path: string }[] }];
  file = join(folder, packed.filename);
  names = packed.files.map(({ path }) => path);
});

describe("the package", () => {
  it("is found and run by whatever loads it, as its manifest says", async () => {
    const { messages } = await publint({
      pack: { tarball: new Uint8Array(readFileSync(file)).buffer },
      strict: true,
    });
    expect(messages.map((message) => formatMessage(message, manifest, { color: false }))).toEqual([]);
  });

  it("has types that are right wherever modules are: for node16, nodenext and bundlers", async () => {
    const checked = await checkPackage(createPackageFromTarballData(new Uint8Array(readFileSync(file))));
    expect(checked.types).not.toBe(false);
    const problems: readonly Problem[] = checked.types ? checked.problems : [];
    // It is modules alone: what requires it, must await it; and the resolution of Node 10 knows no entries.
    const expected = (problem: Problem) =>
      problem.kind === "CJSResolvesToESM" || ("resolutionKind" in problem && problem.resolutionKind === "node10");
    expect(problems.filter((problem) => !expected(problem))).toEqual([]);
  });

  it("holds what is used and no more", () => {
    expect(names).toEqual(
      expect.arrayContaining(["README.md", "LICENSE", "CHANGELOG.md", "dist/src/index.js", "dist/src/index.d.ts"]),
    );
    expect(names.filter((name) => /bench|mutation|worst|hostile|test|\.map$|^docs|^scripts|^src/.test(name))).toEqual([]);
  });
});

describe("the code", () => {
  it("has no file, no export and no dependency that nothing uses", () => {
    const { status, stdout } = spawnSync(process.execPath, ["node_modules/knip/bin/knip.js", "--no-config-hints"], {
      encoding: "utf8",
    });
    expect([status, stdout]).toEqual([0, ""]);
  });
});
