import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as index from "../src/index.ts";
import * as words from "../src/words/index.ts";

const library = { ...index, ...words };

/** Each line of an example in the comments of the library: `expression; // value`. */
const examples = readdirSync("src", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) =>
    [...readFileSync(`src/${file}`, "utf8").matchAll(/\* ```ts\n(.*?)\* ```/gs)].flatMap(([, block = ""]) =>
      block
        .split("\n")
        .map((line) => line.replace(/^\s*\*?\s?/, ""))
        .filter((line) => line.trim() !== "")
        .map((line) => ({ file, line })),
    ),
  );

describe("examples in the comments", () => {
  it("are there, for every function of the library", () => {
    const shown = examples.map(({ line }) => line);
    const without = Object.entries(index)
      .filter(([name, value]) => typeof value === "function" && !/^[A-Z]/.test(name))
      .filter(([name]) => !shown.some((line) => new RegExp(`\\b${name}\\(`).test(line)))
      .map(([name]) => name);
    expect(without).toEqual([]);
  });

  it.each(examples)("$file: $line", ({ line }) => {
    const [, expression, value] = /^(.*); \/\/ (.*)$/.exec(line) ?? [];
    const evaluate = new Function(...Object.keys(library), `return ${expression};`);
    const result = evaluate(...Object.values(library));
    if (value?.endsWith("…")) expect(String(result)).toContain(value.slice(0, -1));
    else expect(result).toEqual(JSON.parse(value ?? ""));
  });
});
