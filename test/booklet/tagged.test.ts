import { describe, expect, it } from "vitest";
import { bookletPdf } from "../../booklet/index.ts";
import { type Head, readyHeads } from "../../src/index.ts";
import { openPdf, operators } from "./read-pdf.ts";

const [usual] = readyHeads as readonly [Head];
const document = await openPdf(await bookletPdf(usual, { to: 60, tagged: true }));
const pages = await Promise.all(Array.from({ length: document.numPages }, (_, index) => document.getPage(index + 1)));

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

function all(node: Node, role: string): readonly Node[] {
  return [...(node.role === role ? [node] : []), ...(node.children ?? []).flatMap((child) => all(child, role))];
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
      const heads = all(children[0] ?? {}, "TH").length;
      expect(Math.max(...children.map((row) => (row.children ?? []).length))).toBe(heads);
    }
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
