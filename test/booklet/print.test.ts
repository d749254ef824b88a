import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { printBooklet } from "../../scripts/booklet.ts";
import { InputError, readyHeads } from "../../src/index.ts";

let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "booklet-"));
});

afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});

const at = (name: string) => join(folder, name);
const short = ["--to", "9", "--parts", "simple"];

describe("printing a book", () => {
  it("writes the file asked for, whole, and says where it is", async () => {
    expect(await printBooklet(["--out", at("book.pdf"), ...short])).toEqual({ code: 0, text: "", written: [at("book.pdf")] });
    expect(readFileSync(at("book.pdf"), "latin1").slice(0, 5)).toBe("%PDF-");
    expect(readdirSync(folder)).toEqual(["book.pdf"]);
  });

  it("writes over a book of its own without asking", async () => {
    await printBooklet(["--out", at("book.pdf"), ...short]);
    const before = readFileSync(at("book.pdf"));
    await printBooklet(["--out", at("book.pdf"), "--to", "12", "--parts", "simple"]);
    expect(readFileSync(at("book.pdf")).equals(before)).toBe(false);
  });

  it.each([
    ["a text", "notes"],
    ["a PDF of another program", "%PDF-1.7\n1 0 obj\n(somebody else)\nendobj\n2 0 obj\n<< /Creator 1 0 R >>\n"],
    ["an empty file", ""],
  ])("does not write over %s unless forced", async (_, content) => {
    writeFileSync(at("mine.pdf"), content);
    await expect(printBooklet(["--out", at("mine.pdf"), ...short])).rejects.toThrow(/is not a file of this program.*--force/);
    expect(readFileSync(at("mine.pdf"), "utf8")).toBe(content);
    expect((await printBooklet(["--out", at("mine.pdf"), "--force", ...short])).code).toBe(0);
    expect(readFileSync(at("mine.pdf"), "latin1").slice(0, 5)).toBe("%PDF-");
  });

  it("takes a head from a file, and leaves nothing behind when it is wrong", async () => {
    writeFileSync(at("head.json"), JSON.stringify({ wormRatio: 40, plates: [{ name: "1", circles: [15] }] }));
    expect((await printBooklet(["--head", at("head.json"), "--out", at("good.pdf"), ...short])).code).toBe(0);
    writeFileSync(at("head.json"), JSON.stringify({ wormRatio: 0, plates: [] }));
    await expect(printBooklet(["--head", at("head.json"), "--out", at("bad.pdf")])).rejects.toThrow(InputError);
    expect(existsSync(at("bad.pdf"))).toBe(false);
  });

  it("gives the same bytes again, and others with another date from SOURCE_DATE_EPOCH", async () => {
    await printBooklet(["--out", at("a.pdf"), ...short]);
    await printBooklet(["--out", at("b.pdf"), ...short]);
    vi.stubEnv("SOURCE_DATE_EPOCH", "1700000000");
    await printBooklet(["--out", at("c.pdf"), ...short]);
    const [a, b, c] = ["a.pdf", "b.pdf", "c.pdf"].map((name) => readFileSync(at(name)));
    expect(a?.equals(b ?? Buffer.alloc(0))).toBe(true);
    expect(a?.equals(c ?? Buffer.alloc(0))).toBe(false);
  });

  it("names the file after the head and what is printed", async () => {
    const here = process.cwd();
    process.chdir(folder);
    try {
      await printBooklet(short);
      await printBooklet(["--as", "wall", ...short]);
      await printBooklet(["--job", "9"]);
    } finally {
      process.chdir(here);
    }
    const id = readyHeads[0]?.id;
    expect(readdirSync(folder).sort()).toEqual([
      `turns-and-holes-${id}-job-9.pdf`,
      `turns-and-holes-${id}-wall.pdf`,
      `turns-and-holes-${id}.pdf`,
    ]);
  });

  it("explains itself with examples", async () => {
    const { code, text: said } = await printBooklet(["--help"]);
    expect(code).toBe(0);
    expect(said).toContain("turns-and-holes booklet --head my-head.json --paper a5");
    for (const { id } of readyHeads) expect(said).toContain(id);
  });
});

describe("refused in one sentence, with nothing written", () => {
  it.each([
    ["a paper there is none of", ["--paper", "a9"], /no paper "a9" for a book; the papers are/],
    ["a head there is none of", ["--head", "nowhere.json"], /no such ready head and no such file/],
    ["a first count of 0", ["--from", "0"], /"0" is not a count for a book/],
    ["a last count that is no number", ["--to", "many"], /"many" is not a count for a book/],
    ["counts upside down", ["--from", "20", "--to", "10"], /10 is below 20/],
    ["a part there is none of", ["--parts", "recipes"], /no part recipes/],
    ["a form there is none of", ["--as", "scroll"], /no form "scroll"; the forms are pages, large, booklet, wall, poster, card/],
    ["too many degree tables", ["--degrees", "2-400"], /too many counts/],
    ["degree tables of no count", ["--degrees", "9-7"], /"9-7" is not a run of numbers/],
    ["a job of 1", ["--job", "1"], /"1" is not a count/],
    ["teeth without their job", ["--teeth", "1,2"], /goes with --job/],
    ["a tooth beyond the count", ["--job", "9", "--teeth", "10"], /10/],
    ["a word that is no option", ["please"], /is not an option/],
    ["an option there is none of", ["--colour"], /--colour/],
  ])("%s", async (_, words, message) => {
    const refused = printBooklet([...words, "--out", at("none.pdf")]);
    await expect(refused).rejects.toThrow(InputError);
    await expect(printBooklet([...words, "--out", at("none.pdf")])).rejects.toThrow(message);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("a directory, a place that is not there, and one that cannot be written", async () => {
    mkdirSync(at("shelf"));
    await expect(printBooklet(["--out", at("shelf"), ...short])).rejects.toThrow(/is a directory/);
    await expect(printBooklet(["--out", at("no/such/book.pdf"), ...short])).rejects.toThrow(/there is no directory/);
    chmodSync(at("shelf"), 0o500);
    // Whoever may write anywhere, such as an administrator, is not stopped by permissions.
    if (process.getuid?.() !== 0)
      await expect(printBooklet(["--out", at("shelf/book.pdf"), ...short])).rejects.toThrow(/cannot be written/);
    expect(readdirSync(at("shelf"))).toEqual([]);
  });
});
