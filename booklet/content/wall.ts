import type { Block, Book, Part, TableBlock } from "./blocks.ts";
import type { PartId } from "./parts.ts";

/** The parts that make wall sheets, each sheet of one subject. */
export const wallParts: readonly PartId[] = ["reading", "reach", "simple", "direct", "dial", "geared", "compound", "impossible"];

/** A book made over into sheets for the wall: what the hand sets, in large type, and what warns. */
export function forWall(book: Book): Book {
  return { ...book, sheetsStandAlone: true, parts: book.parts.filter(({ id }) => id !== "title").map(wallPart) };
}

function wallPart(part: Part): Part {
  if (part.id === "reading") return part;
  return { ...part, blocks: part.blocks.flatMap(wallBlock) };
}

/** Explanations in running text stay in the book. */
function wallBlock(block: Block): readonly Block[] {
  if (block.kind === "table") return [wallTable(block)];
  return block.kind === "paragraph" && block.style === undefined ? [] : [block];
}

function wallTable({ columns, rows, ...table }: TableBlock): TableBlock {
  const stays = columns.map(({ aside, under }) => aside === undefined && under === undefined);
  return {
    ...table,
    columns: columns.filter((_, index) => stays[index]),
    rows: rows.map(({ notes: _, ...row }) => {
      const under = row.cells.flatMap(({ text }, index) => columns[index]?.under?.replace("{}", text) ?? []);
      return {
        ...row,
        cells: row.cells.filter((__, index) => stays[index] !== false),
        ...(under.length === 0 ? {} : { lines: [under.join("  ·  ")] }),
      };
    }),
  };
}
