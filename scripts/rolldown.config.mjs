import { readdirSync } from "node:fs";
import { resolve } from "node:path";
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

/**
 * The rooms whose modules are packed beside one another: what is like what stands next to it packs smaller. The order is the best of some hundred that
 * were tried, and by it the page is a hundred and fiftieth smaller.
 */
const rooms = [
  ...[
    "src/head",
    "src/number",
    "src/search",
    "src/instead",
    "src/methods",
    "src",
    "src/setting",
    "src/near",
    "src/gear",
    "src/gear/identify",
  ],
  ...["src/mechanism", "src/machine", "src/gear/repair", "booklet/screen", "src/words", "src/words/gear"],
];

/** Begins the page with all modules, room by room; of those that it does not call nothing is left. */
const roomByRoom = {
  name: "room-by-room",
  resolveId: (id) => (id === "page" ? "\0page" : null),
  load(id) {
    if (id !== "\0page") return null;
    const isModule = (file) => file.endsWith(".ts") && !["index.ts", "main.ts"].includes(file);
    const files = rooms.flatMap((room) =>
      readdirSync(room)
        .sort()
        .filter(isModule)
        .map((file) => `${room}/${file}`),
    );
    const lines = [...files, "booklet/screen/main.ts"].map((file) => `import ${JSON.stringify(resolve(file))};`);
    return { code: lines.join("\n"), moduleSideEffects: true };
  },
};

/** Packs the page for the screen, in the language of browsers that are five years old: for heads with one crank, or for any. */
const screen = (fileName, without) => ({
  input: "page",
  platform: "browser",
  logLevel: "warn",
  transform: { target: "es2022" },
  // The package has no side effects but these.
  treeshake: {
    propertyReadSideEffects: false,
    moduleSideEffects: [
      { test: /older-engines|[\\/]screen[\\/]main\.ts/, sideEffects: true },
      { test: /./, sideEffects: false },
    ],
  },
  plugins: [roomByRoom, leanFractions, typedCallers, ...without, screenPage(fileName)],
  output: { dir: "dist/booklet/screen", format: "iife", minify: true },
});

export default [command, screen("page.html", [oneCrank]), screen("page-for-any.html", [])];
