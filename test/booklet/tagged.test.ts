import { describe, expect, it } from "vitest";
import { bookletPdf } from "../../booklet/index.ts";
import { type Head, readyHeads } from "../../src/index.ts";
import { openPdf, operators } from "./read-pdf.ts";

const [usual] = readyHeads as readonly [Head];
const document = await openPdf(await bookletPdf(usual, { to: 60, tagged: true }));
const pages = await Promise.all(Array.from({ length: document.numPages }, (_, index) => document.getPage(index + 1)));

interface Node {
  readonly role?: string;
  readonly id?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

function all(node: Node, role: string): readonly Node[] {
  return [...(node.role === role ? [node] : []), ...(node.children ?? []).flatMap((child) => all(child, role))];
}

/** The text of each marked piece of a page by its number, with every space that is drawn. */
async function wordsByMark(page: (typeof pages)[number]): Promise<ReadonlyMap<string, string>> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const words = new Map<string, string>();
  const open: string[] = [];
  for (const [index, name] of operators(fnArray).entries()) {
    const args = (argsArray[index] ?? []) as readonly unknown[];
    if (name.startsWith("beginMarkedContent")) open.push(String(args[1] ?? ""));
    else if (name === "endMarkedContent") open.pop();
    else if (name === "showText") {
      const shown = args[0] as readonly ({ readonly unicode: string } | number)[];
      const id = open.at(-1) ?? "";
      words.set(id, `${words.get(id) ?? ""}${shown.map((each) => (typeof each === "number" ? "" : each.unicode)).join("")}`);
    }
  }
  return words;
}

/** What is read out of a node. */
function textOf({ id, children = [] }: Node, words: ReadonlyMap<string, string>): string {
  const own = id === undefined ? "" : (words.get(/_mc(\d+)$/.exec(id)?.[1] ?? "none") ?? "");
  return [own, ...children.map((child) => textOf(child, words))].join("").replace(/\s+/g, " ").trim();
}

const trees = await Promise.all(pages.map(async (page) => (await page.getStructTree()) as Node));

describe("the tagged edition", () => {
  it("says that it is tagged, in what language, and shows its title", async () => {
    expect((await document.getMarkInfo())?.Marked).toBe(true);
    expect((await document.getMetadata()).info).toMatchObject({ Language: "en" });
    expect(await document.getViewerPreferences()).toMatchObject({ DisplayDocTitle: true });
  });

  it("has real tables: rows of head cells and cells, and nothing else", () => {
    const tables = trees.flatMap((tree) => all(tree, "Table"));
    expect(tables.length).toBeGreaterThan(4);
    for (const { children = [] } of tables) {
      expect(new Set(children.map(({ role }) => role))).toEqual(new Set(["TR"]));
      for (const row of children) expect((row.children ?? []).every(({ role }) => role === "TH" || role === "TD")).toBe(true);
      // Over the heads of columns may stand those of groups.
      const heads = Math.max(
        ...children.slice(0, 2).map((row) => (row.children ?? []).filter(({ role }) => role === "TH").length),
      );
      expect(Math.max(...children.map((row) => (row.children ?? []).length))).toBe(heads);
    }
  });

  it("reads out pieces that stand apart as words apart", async () => {
    const read = (await Promise.all(pages.map(wordsByMark))).map((words, index) => ({ words, tree: trees[index] ?? {} }));
    const spoken = (role: string) => read.flatMap(({ words, tree }) => all(tree, role).map((node) => textOf(node, words)));
    expect(spoken("P")).toContain("WORM RATIO 40:1 9° a turn");
    expect(spoken("P").filter((text) => /^51 G \d+$/.test(text))).toHaveLength(1);
    expect(spoken("TH")).toContain("enclose holes");
  });

  it("tells columns of one name apart by the heads of their groups", async () => {
    for (const [index, tree] of trees.entries()) {
      const words = await wordsByMark(pages[index] as (typeof pages)[number]);
      for (const { children = [] } of all(tree, "Table")) {
        const rows = children.map((row) => (row.children ?? []).map((cell) => ({ role: cell.role, text: textOf(cell, words) })));
        const heads = rows.filter((row) => row.every(({ role }) => role === "TH"));
        const names =
          heads
            .at(-1)
            ?.map(({ text }) => text)
            .filter((text) => text !== "") ?? [];
        const groups = heads.length < 2 ? [] : (heads[0] ?? []).filter(({ text }) => text !== "");
        const twice = names.filter((name, at) => names.indexOf(name) !== at);
        if (twice.length > 0) expect(groups.length, twice.join()).toBeGreaterThan(1);
      }
    }
  });

  it("reads out every count of the grid by how it is done", () => {
    const [grid] = trees
      .flatMap((tree) => all(tree, "Figure"))
      .flatMap(({ alt = "" }) => (alt.startsWith("Every count") ? [alt] : []));
    expect(grid).toMatch(/by simple indexing: plate and crank alone: 2 to 50, 52, 54 to 56, 58, 60\./);
    expect(grid).toMatch(/with gears only: 51, 53, 57, 59\./);
  });

  it("says every drawing in words", () => {
    const figures = trees.flatMap((tree) => all(tree, "Figure"));
    expect(figures.length).toBeGreaterThan(5);
    expect(figures.filter(({ alt }) => (alt ?? "").length < 20)).toEqual([]);
  });

  it("has headings on the pages where parts begin", () => {
    expect(trees.flatMap((tree) => all(tree, "H1")).length).toBeGreaterThan(7);
  });

  it("leaves no ink outside what is tagged or marked as decoration", async () => {
    for (const page of pages) {
      let depth = 0;
      for (const name of operators((await page.getOperatorList()).fnArray)) {
        if (name.startsWith("beginMarkedContent")) depth += 1;
        else if (name === "endMarkedContent") depth -= 1;
        else if (/^(?:showText|constructPath|stroke|fill|eoFill|fillStroke)$/.test(name)) expect(depth).toBeGreaterThan(0);
      }
      expect(depth).toBe(0);
    }
  });

  it("says in words where each link leads", async () => {
    const links = (await Promise.all(pages.map((page) => page.getAnnotations())))
      .flat()
      .filter(({ subtype }) => subtype === "Link");
    expect(links.length).toBeGreaterThan(50);
    for (const { contentsObj, dest } of links) {
      expect(contentsObj.str).not.toBe("");
      expect(await document.getDestination(dest)).not.toBeNull();
    }
  });

  it("is not made for a folded booklet, whose pages stand in the order of the sheet", async () => {
    await expect(bookletPdf(usual, { as: "booklet", tagged: true, to: 10 })).rejects.toThrow(/no order of reading/);
  });
});
