import { describe, expect, it } from "vitest";
import { compoundPart } from "../../booklet/content/compound-part.ts";
import { countsOneByOne } from "../../booklet/content/head-counts.ts";
import type { TableBlock } from "../../booklet/content/table-block.ts";
import { forWall } from "../../booklet/content/wall.ts";
import { prepare } from "../../src/index.ts";
import { ready } from "../support/ready.ts";

const head = ready("ratio-40-plates-15-49-ungeared");
const on = prepare(head);
const desk = {
  head,
  keys: [],
  on,
  counts: [...countsOneByOne(on, 2, 400)],
  included: new Set(["compound"]),
  degreeTables: null,
};
const part = compoundPart(desk);
if (part === null) throw new Error("the ungeared head has counts by compound indexing");

const tables = (blocks: readonly { readonly kind: string }[]) =>
  blocks.filter((block): block is TableBlock => block.kind === "table");

function groupsOf({ columns }: TableBlock): readonly (string | undefined)[] {
  return [...new Set(columns.map(({ group }) => group).filter((group) => group !== undefined))];
}

/** Which part the heads over a table call the first. */
function firstOf({ columns }: TableBlock): readonly string[] {
  return [...new Set(columns.flatMap(({ group }) => (group?.startsWith("FIRST") ? [group] : [])))];
}

describe("the two parts of a compound move in the book", () => {
  it("a part that goes back is made first, so that the worm is last moved forward", () => {
    const rows = tables(part.blocks).flatMap((table) =>
      table.rows.map((row) => ({ row, first: firstOf(table), groups: groupsOf(table) })),
    );
    expect(rows).toHaveLength(desk.counts.filter(({ section }) => section === "compound").length);
    const seen = new Set<string>();
    for (const { row, first, groups } of rows) {
      const direction = row.cells.find(({ text }) => text === "with" || text === "against")?.text ?? "";
      seen.add(direction);
      expect(first, row.anchor).toEqual([direction === "against" ? "FIRST: BOTH, BACK" : "FIRST: CRANK"]);
      expect(groups.indexOf(first[0]), "what is first stands first").toBe(groups.indexOf("SET UP") + 1);
    }
    expect([...seen].sort()).toEqual(["against", "with"]);
  });

  it("on the wall, too, where no running text is left to say it", () => {
    const book = {
      title: "",
      fileTitle: "",
      subject: "",
      digest: "",
      running: { plates: "", platesInShort: "" } as never,
      parts: [part],
      sheetsStandAlone: false,
    };
    const wall = forWall(book).parts.flatMap(({ blocks }) => blocks);
    expect(tables(wall).map(firstOf)).toEqual(tables(part.blocks).map(firstOf));
  });
});
