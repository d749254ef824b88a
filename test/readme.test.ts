import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions } from "../src/index.ts";
import { blocksIn, expectTold } from "./support/told-by-command.ts";

const readme = readFileSync("README.md", "utf8");

/** The blocks of code in one language. */
const blocks = (language: string) => blocksIn(readme, language);

describe("the README is true", () => {
  it.each(blocks("console"))("prints what it shows: %s", expectTold);

  it.each(blocks("ts"))("runs what it imports: %s", (code) => {
    const [, said] = /console\.log\(.*\); \/\/ (.*)/.exec(code) ?? [];
    expect(execFileSync(process.execPath, ["--input-type=module", "-e", code], { encoding: "utf8" }).trim()).toBe(said);
  });

  it.each(blocks("json"))("takes the head it describes: %s", (text) => {
    const head = defineHead(JSON.parse(text));
    expect(indexDivisions(head, 63).exact).toBe(true);
  });

  it("has two commands that install everything themselves", () => {
    expect(
      blocks("sh")[0]
        ?.trim()
        .split("\n")
        .every((line) => line.startsWith("npm ci && ")),
    ).toBe(true);
    expect([blocks("console").length, blocks("ts").length, blocks("json").length].every((count) => count > 0)).toBe(true);
  });
});
