import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bookletDigest, screenPage } from "../../booklet/index.ts";
import { readyHeads } from "../../src/index.ts";

const folder = new URL("../../booklet/printed/", import.meta.url);
const digests = JSON.parse(readFileSync(new URL("digests.json", folder), "utf8")) as Record<
  string,
  { pages: string; file: string; screen: string }
>;

// Where these fail the books are to be printed again: npm run build && node dist/scripts/ready-books.js
describe("the printed books of the ready heads, and their screen editions", () => {
  it("are there, one for each head", () => {
    const there = readdirSync(folder).filter((name) => name !== "digests.json");
    expect(there.sort()).toEqual(readyHeads.flatMap(({ id }) => [`${id}.pdf`, `${id}.html`]).sort());
  });

  const digestOf = (name: string) =>
    createHash("sha256")
      .update(readFileSync(new URL(name, folder)))
      .digest("hex");

  it.each(readyHeads.map((head) => [head.id, head] as const))("%s: is what the code makes", async (id, head) => {
    const { pages, file } = digests[id] ?? {};
    expect({ pages: await bookletDigest(head), file: digestOf(`${id}.pdf`) }).toEqual({ pages, file });
  });

  it.each(readyHeads.map((head) => [head.id, head] as const))(
    "%s: its page for the screen is what the code makes",
    (id, head) => {
      expect(digestOf(`${id}.html`)).toBe(digests[id]?.screen);
      expect(readFileSync(new URL(`${id}.html`, folder), "utf8") === screenPage(head)).toBe(true);
    },
  );
});
