import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { screenPage } from "../../booklet/index.ts";
import { defineHead, type Head, type HeadSpec, readyHeads } from "../../src/index.ts";
import { run } from "../support/command.ts";
import { ownFolder } from "../support/own-folder.ts";
import { headSpec } from "./heads.ts";

const [usual] = readyHeads as readonly [Head];
const page = screenPage(usual);
const digestOf = (text: string) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
const inside = (text: string, tag: string) =>
  [...text.matchAll(new RegExp(`<${tag}[^>]*>([\\s\\S]*?)</${tag}>`, "g"))].map(([, body = ""]) => body);

/** The most bytes that the page may have, packed as a server sends it. */
const mostPacked = 60_000;

describe("the screen edition by the command", () => {
  const folder = ownFolder("screen");

  it("is written like a book, over one of its own, and over nothing else", async () => {
    const words = ["booklet", "--head", usual.id, "--as", "screen"];
    expect(await run(words, folder)).toMatchObject({ code: 0, stdout: `turns-and-holes-${usual.id}-screen.html\n` });
    expect(readFileSync(join(folder, `turns-and-holes-${usual.id}-screen.html`), "utf8")).toBe(page);
    expect((await run(words, folder)).code).toBe(0);
    writeFileSync(join(folder, "mine.html"), "<!doctype html><title>Mine</title>");
    const refused = await run([...words, "--out", "mine.html"], folder);
    expect(refused.code).toBe(3);
    expect(refused.stderr).toContain("is not a file of this program");
  });

  it("refuses what is of paper alone", async () => {
    const { code, stderr } = await run(["booklet", "--as", "screen", "--to", "50", "--paper", "a5"], folder);
    expect(code).toBe(2);
    expect(stderr).toMatch(/--paper: has no effect on a page for the screen.*--to: has no effect/);
  });
});

describe("the screen edition as a file", () => {
  it.each(readyHeads.map((head) => [head.id, head] as const))("%s: 60 kB packed at most", (_, head) => {
    expect(gzipSync(screenPage(head), { level: 9 }).length).toBeLessThanOrEqual(mostPacked);
  });

  it("is the same text each time", () => {
    expect(screenPage(usual)).toBe(page);
  });

  it("runs its own script and style and nothing else, and loads nothing", () => {
    const [, policy = ""] = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(page) ?? [];
    const [script = ""] = inside(page, "script").slice(-1);
    const [style = ""] = inside(page, "style");
    expect(policy).toBe(
      `default-src 'none'; script-src ${digestOf(script)}; style-src ${digestOf(style)}; base-uri 'none'; form-action 'none'`,
    );
    // The name of the language of drawings is no address that is gone to.
    expect(page.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|\bsrc=|<link|@import|url\(/);
  });

  it("holds any head as data that reads back, whatever its names", () => {
    fc.assert(
      fc.property(headSpec, (spec) => {
        const head = defineHead({ ...spec, name: `</script>${spec.name}`.slice(0, 60) } as HeadSpec);
        const text = screenPage(head);
        expect(inside(text, "script")).toHaveLength(2);
        expect(JSON.parse(inside(text, "script")[0] ?? "").head).toEqual(JSON.parse(JSON.stringify(head)));
      }),
      { numRuns: 30 },
    );
  });
});
