import { readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { pathToFileURL } from "node:url";
import type { Plugin } from "vitest/config";
import { root } from "./installed.ts";

/*
 * The code as it is tested: each module with its types taken off, as a module that Node loads by itself. Sent one by one
 * to each worker by the runner of tests, the same code takes several times as long to load.
 */
export const rooms: readonly string[] = ["src", "booklet", "scripts"];

/** The folder of the code as it is tested: as deep as what is published, from which modules look for the manifest. */
export const testedFolder: string = join(root, ".tested");

/** The module that stands for one of the house's own, and nothing where it is none of them. */
export const testedOf = (path: string): string | undefined => {
  const place = relative(root, path);
  const isOfTheCode = rooms.includes(place.split(sep)[0] ?? "") && place.endsWith(".ts");
  return isOfTheCode ? join(testedFolder, place.replace(/\.ts$/, ".js")) : undefined;
};

/** The source that a module as it is tested was made from. */
export const sourceOf = (tested: string): string => join(root, relative(testedFolder, tested).replace(/\.js$/, ".ts"));

/** Whether a module is one of the code as it is tested. */
export const isTested = (path: string): boolean => path.startsWith(testedFolder + sep);

/** What a source was made into, and where each part of that stands in the source. */
export function testedFrom(source: string): { readonly code: string; readonly map: object } {
  const tested = testedOf(source);
  if (tested === undefined) throw new Error(`${source} is none of the code that is tested`);
  const map = JSON.parse(readFileSync(`${tested}.map`, "utf8"));
  return { code: readFileSync(tested, "utf8"), map: { ...map, sources: [pathToFileURL(source).href] } };
}

/** Whether tests load the sources themselves, which takes longer, but a change of one is seen by tests that are watched. */
export const loadsSources: boolean = process.env.LOADED === "sources";

/** Has tests import the code as it is tested, by the names of its sources. */
export const loadsTestedCode: Plugin = {
  name: "tested-code",
  enforce: "pre",
  resolveId(asked, importer) {
    if (loadsSources || importer === undefined || !asked.startsWith(".")) return;
    // Names of modules have the slashes of addresses on every machine.
    return testedOf(join(dirname(importer), asked))?.replaceAll(sep, "/");
  },
};
