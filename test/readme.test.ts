import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions } from "../src/index.ts";
import { run } from "./support/command.ts";

const readme = readFileSync("README.md", "utf8");

/** The blocks of code in one language. */
function blocks(language: string): string[] {
  return [...readme.matchAll(new RegExp(`\`\`\`${language}\\n(.*?)\`\`\``, "gs"))].map(([, code = ""]) => code);
}

describe("the README is true", () => {
  it.each(blocks("console"))("prints what it shows: %s", async (block) => {
    const [asked = "", ...shown] = block.trimEnd().split("\n");
    const words = [...asked.replace(/^\$ (?:npm start --silent --|turns-and-holes) /, "").matchAll(/"([^"]*)"|(\S+)/g)].map(
      ([, quoted, plain]) => quoted ?? plain ?? "",
    );
    const { stdout } = await run(words);
    let from = 0;
    for (const line of shown.filter((each) => each.trim() !== "…")) {
      const at = stdout.indexOf(`${line}\n`, from);
      expect(at, `${JSON.stringify(line)} after what came before`).toBeGreaterThanOrEqual(from);
      from = at + line.length;
    }
  });

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
