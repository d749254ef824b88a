import { leanFractions, oneCrank, typedCallers } from "./lean-page.mjs";
import { screenPage } from "./screen-page.mjs";

/*
 * Packs the command as CommonJS, which Node starts sooner than modules: what a look-up needs in one file with what it shares, each other job in a file of
 * its own that is loaded when it is asked for. pdfkit stays apart, since it may be left out.
 */
const ofGears = /[\\/]gear[\\/]|[\\/]scripts[\\/]gear-/;
const shared = (name, test, priority) => ({ name, test, priority, minShareCount: 2 });

const command = {
  input: "dist/scripts/turns-and-holes.js",
  platform: "node",
  external: ["pdfkit"],
  logLevel: "warn",
  output: {
    dir: "dist/scripts",
    format: "cjs",
    minify: true,
    entryFileNames: "[name].cjs",
    chunkFileNames: "parts/[name].cjs",
    codeSplitting: { groups: [shared("shared", (id) => !ofGears.test(id), 2), shared("gears", ofGears, 1)] },
  },
};

/** Packs the page for the screen, in the language of browsers that are five years old: for heads with one crank, or for any. */
const screen = (fileName, without) => ({
  input: "booklet/screen/main.ts",
  platform: "browser",
  logLevel: "warn",
  transform: { target: "es2022" },
  // The package has no side effects but this one.
  treeshake: {
    propertyReadSideEffects: false,
    moduleSideEffects: [
      { test: /older-engines/, sideEffects: true },
      { test: /./, sideEffects: false },
    ],
  },
  plugins: [leanFractions, typedCallers, ...without, screenPage(fileName)],
  output: { dir: "dist/booklet/screen", format: "iife", minify: true },
});

export default [command, screen("page.html", [oneCrank]), screen("page-for-any.html", [])];
