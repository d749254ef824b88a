import { spawnSync } from "node:child_process";
import { openSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { printable } from "../../scripts/printable.ts";
import { readyHeads } from "../../src/index.ts";
import { runHere } from "../support/command.ts";
import { command } from "../support/installed.ts";
import { ownFolder } from "../support/own-folder.ts";

const folder = ownFolder("run");

/** What a terminal would act on. */
const raw = /[^\P{Cc}\n\t\r]|\r(?!\n)|[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u2028\u2029]/u;

describe("nothing steers the terminal", () => {
  it("whatever the text, and what is shown of JSON is the same data", () => {
    const texts = fc.array(
      fc.oneof(fc.string({ unit: "binary" }), fc.constantFrom("\u001b[31m", "\u202e", "\u009b", "\u2066", "\u{e0041}")),
    );
    fc.assert(
      fc.property(texts, (pieces) => {
        const text = pieces.join("");
        expect(printable(text)).not.toMatch(raw);
        const json = JSON.stringify({ text });
        expect(JSON.parse(printable(json))).toEqual({ text });
      }),
    );
  });

  it("leaves letters of every language, signs and what joins them", () => {
    for (const text of ["Fräsmaschine 2° 54′ 00″ ½ – ≈", "תבנית", "می‌خواهم", "👩‍🔧", "a\tb\nc"])
      expect(printable(text)).toBe(text);
  });

  it.each([["12\u001b[2J"], ["12\u202e"], ["--\u009b31m"], ["\u001b]0;title\u0007"]])("of %j as it is refused", async (word) => {
    for (const words of [[word], [word, "--json"], ["12", "--head", word], ["gear", word], ["booklet", word]]) {
      const { code, stdout, stderr } = await runHere(words);
      expect(code).toBe(2);
      expect(stdout + stderr).not.toMatch(raw);
      expect((stdout + stderr).trimEnd()).not.toContain("\n");
    }
  });

  it("by the path of a file, which a pipe gets as it is", async () => {
    const path = join(folder, "turns-\u202eand-holes.pdf");
    const words = ["booklet", "--job", "9", "--force", "--out", path];
    expect((await runHere(words, true)).stdout).toBe(`${join(folder, "turns-\\u202eand-holes.pdf")}\n`);
    expect((await runHere(words)).stdout).toBe(`${path}\n`);
  });

  it("by a file that would go to it", async () => {
    const words = ["booklet", "--job", "9", "--out", "-"];
    expect((await runHere(words)).bytes.subarray(0, 5).toString()).toBe("%PDF-");
    const { code, stdout, stderr } = await runHere(words, true);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain("the file would go to the terminal");
  });
});

describe("with --json there is one object on the output", () => {
  it.each([
    ["a question that cannot be read", ["abc", "--json"], 2, "unreadable", ""],
    ["an option that is not there", ["12", "--json", "--bogus"], 2, "unknown-key", ""],
    ["an option without effect", ["12", "--json", "--minus"], 2, "no-effect", "--minus"],
    ["a file that cannot be read", ["12", "--json", "--head", "/"], 3, "unreadable", "/"],
    ["a gear that cannot be", ["gear", "2", "--module", "2", "--json"], 2, "out-of-range", ""],
    ["a repair of nothing", ["repair", "86", "--module", "2", "--json"], 2, "missing", "--damaged"],
  ])("%s", async (_, words, status, code, place) => {
    const { code: ended, stdout, stderr } = await runHere(words);
    const { error } = JSON.parse(stdout);
    expect([ended, stderr, error.status, error.faults[0].code, error.faults[0].place]).toEqual([status, "", status, code, place]);
    const plain = await runHere(words.filter((word) => word !== "--json"));
    expect([plain.code, plain.stdout]).toEqual([status, ""]);
    expect(error.message).not.toBe("");
  });

  it("the heads", async () => {
    expect(JSON.parse((await runHere(["heads", "--json"])).stdout).heads).toEqual(
      readyHeads.map(({ id, name, wormRatio }) => ({ id, name, wormRatio })),
    );
  });
});

it.each([
  [["--version"]],
  [["heads", "--version"]],
  [["gear", "--version"]],
  [["repair", "--version"]],
  [["booklet", "--version"]],
])("%j tells the version", async (words) => {
  const { version } = JSON.parse(readFileSync("package.json", "utf8"));
  expect((await runHere(words)).stdout).toBe(`${version}\n`);
});

describe("as a process", () => {
  const process_ = (words: readonly string[], input: string | undefined, out: "pipe" | number = "pipe") =>
    spawnSync(process.execPath, [command, ...words], { input, stdio: ["pipe", out, "pipe"], encoding: "utf8" });

  it("takes a head at the input, and prints a file to the output", () => {
    const head = JSON.stringify({ wormRatio: 40, plates: [{ name: "1", circles: [15] }] });
    expect(process_(["15", "--head", "-"], head)).toMatchObject({ status: 0, stderr: "" });
    const { status, stdout, stderr } = process_(["booklet", "--head", "-", "--job", "15", "--out", "-"], `\uFEFF${head}`);
    expect([status, stdout.slice(0, 5), stderr]).toEqual([0, "%PDF-", ""]);
    expect(
      process_(["repair", "15", "--module", "2", "--damaged", "3", "--head", "-", "--sheet", "-"], head).stdout.slice(0, 5),
    ).toBe("%PDF-");
    expect(process_(["15", "--head", "-"], "x").stderr).toMatch(/^turns-and-holes: the input: is not JSON/);
    expect(process_(["15", "--head", "-"], " ".repeat(2_000_000)).stderr).toMatch(/too many for a head file/);
  });

  it.skipIf(process.platform === "win32")("says in one sentence that the output is full", () => {
    const { status, stderr } = process_(["127"], "", openSync("/dev/full", "w"));
    expect([status, stderr]).toEqual([
      3,
      "turns-and-holes: the output: cannot be written: there is no room left; mend that, or name another\n",
    ]);
  });
});
