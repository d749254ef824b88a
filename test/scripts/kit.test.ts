import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { kitLines } from "../../scripts/kit-words.ts";
import { type Coverage, coverage, indexTable, kindOf } from "../../src/index.ts";
import { coverageWithWhys, untriedOfKitWords } from "../../src/words/index.ts";
import { piecesOf } from "../booklet/read-pdf.ts";
import { runHere } from "../support/command.ts";
import { ready } from "../support/ready.ts";

const ungeared = ["--head", "ratio-40-plates-15-49-ungeared"];
const head = ready("ratio-40-plates-15-49-ungeared");
const folder = mkdtempSync(join(tmpdir(), "kit-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const told = async (...words: readonly string[]) => {
  const { code, stdout } = await runHere(["kit", ...words]);
  return { code, text: stdout, flat: stdout.replace(/\s+/g, " ") };
};

describe("what a kit does, in words", () => {
  it("is how many, by what, which not, and which one would expect", async () => {
    const { code, flat } = await told("2-128", ...ungeared);
    const { counts } = coverage(head, { from: 2, to: 128 });
    expect(code).toBe(1);
    expect(flat).toContain(`Done ${counts.filter(({ kind }) => kind !== null).length} of 127 counts`);
    expect(flat).toContain("117–119, 121, 122, 125, 127");
    expect(flat).toContain("Round: 81, 125. Teeth of a usual change gear: 127.");
    expect(flat).toContain("plate 3: ");
  });

  it("is a grid that tells every count by the letter of its method", async () => {
    const { text } = await told("2-128", ...ungeared);
    const rows = [...text.matchAll(/^ {2}( *\d+) {2}([SC. ]+)$/gm)];
    const letters = new Map(
      rows.flatMap(([, first, row = ""]) =>
        // A gap after each ten.
        [...row].filter((_, at) => at % 11 !== 10).map((letter, at): [number, string] => [Number(first) + at, letter]),
      ),
    );
    for (const { divisions, setting } of indexTable(head, { from: 2, to: 128 })) {
      const letter = setting === null ? "." : { simple: "S", compound: "C" }[kindOf(setting) as "simple" | "compound"];
      expect(letters.get(divisions), String(divisions)).toBe(letter);
    }
    expect(text).toContain("S simple, C compound, . is not done");
  });

  it("has no grid of a range that is no glance", async () => {
    const { text } = await told("2-1999", ...ungeared, "--circle-sizes", "61", "--gear-sizes", "24");
    expect(text).not.toContain("is not done");
    expect(text).toContain("Not done");
  });

  it("says what to add, and what does the same", async () => {
    const { flat } = await told("50-62", ...ungeared);
    expect(flat).toContain("Circle 53 or 106, or 159: 1 more: 53");
    expect(flat).toContain("Plate to drill 53 59 61: 3 more: 53, 59, 61");
  });

  it("ends with 0 where all is done, of the list where there is one", async () => {
    expect((await told("2-40")).code).toBe(0);
    expect((await told("2-100", ...ungeared, "--want", "96,50")).code).toBe(0);
    const some = await told("2-60", ...ungeared, "--want", "96,61,211");
    expect(some.code).toBe(1);
    expect(some.flat).toContain("Done already 96");
    expect(some.flat).toContain("Smallest set");
    const none = await told("2-10", "--head", "ratio-90-dial", "--want", "211");
    expect(none.flat).toContain("Left 211: no one circle and no two gears of the sizes tried do it");
  });

  it("names the gears of the smallest set beside those that are owned", async () => {
    const { flat } = await told("2-10", "--teeth-per-move", "1", "--want", "383,401", "--circle-sizes", "61");
    expect(flat).toMatch(/Smallest set (a gear|gears) of [\d ,and]+ beside those owned: 383, 401\. No fewer do it/);
  });

  it("says what was not tried", () => {
    const codes = ["settings", "plates", "circles", "plates-to-add", "gears", "set"] as const;
    expect(untriedOfKitWords([])).toBe("");
    expect(new Set(codes.map((code) => untriedOfKitWords([{ code }]))).size).toBe(codes.length);
    const cut: Coverage = { ...coverage(head, { from: 2, to: 3 }), complete: false, untried: [{ code: "gears" }] };
    expect(coverageWithWhys(cut)).toMatchObject({ untried: [{ code: "gears", why: "gears to add" }] });
    expect(kitLines(cut, head).join(" ").replace(/\s+/g, " ")).toContain(
      "There may be others, and better ones, of: gears to add.",
    );
  });

  it("is data with --json, by the library, with every code in words", async () => {
    const { text } = await told("2-100", ...ungeared, "--want", "61", "--json");
    const { kit } = JSON.parse(text);
    expect(kit).toMatchObject(JSON.parse(JSON.stringify(coverage(head, { from: 2, to: 100, want: [61] }))));
    expect(kit.expected.every(({ why }: { readonly why: string }) => why.length > 0)).toBe(true);
  });
});

/** How many pages a file has, and all that stands on them. */
async function printed(bytes: Uint8Array): Promise<{ readonly pages: number; readonly text: string }> {
  const pages = await piecesOf(bytes);
  return { pages: pages.length, text: pages.flatMap((pieces) => pieces.map(({ text }) => text)).join(" ") };
}

describe("the sheet of a kit", () => {
  it("says what the words say, on both sides of one leaf", async () => {
    const file = join(folder, "kit.pdf");
    const { flat } = await told("2-400", ...ungeared, "--want", "61,127", "--sheet", file);
    expect(flat).toContain(`Sheet ${file}`.slice(0, 12));
    const { pages, text } = await printed(readFileSync(file));
    expect(pages).toBe(2);
    for (const said of [
      "What this kit does, 2 to 400",
      "218 of 399 counts",
      "Without a plate",
      "Your list",
      "What would add the most",
    ])
      expect(text).toContain(said);
    for (const divisions of [53, 96, 400]) expect(text).toContain(String(divisions));
  });

  it("goes to the output with -, and lists what is missing of a range that no grid holds", async () => {
    const { code, bytes } = await runHere([
      "kit",
      "2-700",
      ...ungeared,
      "--circle-sizes",
      "61",
      "--sheet",
      "-",
      "--paper",
      "letter",
    ]);
    expect(code).toBe(1);
    expect((await printed(bytes)).text).toContain("Not done");
  });
});

it("refuses a sheet and data at the same output, as data", async () => {
  const { code, stdout } = await runHere(["kit", "--sheet", "-", "--json"]);
  expect([code, JSON.parse(stdout).error.message]).toEqual([
    2,
    "--sheet: and --json cannot both go to the output; name a file for the sheet",
  ]);
});

it.each([
  [["9-2"], "2 is below 9; give the smaller count first"],
  [["2-3-4"], '"2-3-4" is no range of counts; give one such as kit 2-400'],
  [["2-9", "--want", "0"], "--want: 0 is not a count of divisions"],
  [["--circle-sizes", "1"], "--circle-sizes: 1 is not a number of holes in a circle"],
  [["--gear-sizes", "3"], "--gear-sizes: 3 is not a number of teeth of a gear"],
  [["--paper", "a4"], "--paper: goes with --sheet"],
  [["--method", "plain"], '--method: there is no method "plain"'],
  [["--bogus"], "kit --help lists the options"],
])("refuses %j in one sentence", async (words, said) => {
  const { code, stdout, stderr } = await runHere(["kit", ...words]);
  expect([code, stdout]).toEqual([2, ""]);
  expect(stderr).toContain(said);
});
