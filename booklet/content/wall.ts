import type { Head } from "../../src/index.ts";
import type { Block, Book, Part } from "./blocks.ts";
import { type Contents, withoutTitlePage } from "./book.ts";
import { commonestCounts } from "./commonest-counts.ts";
import type { PartId } from "./parts.ts";
import { keyLine, type PlateKey } from "./plate-keys.ts";
import { isReadHead } from "./readings.ts";
import type { TableBlock } from "./table-block.ts";

/** The parts that make wall sheets, each sheet of one subject. */
const wallParts: readonly PartId[] = [
  "reading",
  "reach",
  "simple",
  "direct",
  "dial",
  "geared",
  "compound",
  "impossible",
  "unfound",
];

/**
 * What the sheets of a head hold where nothing else is asked for: on one that is set by readings every
 * position of the commonest counts, since a row of each count alone would set none.
 */
export function wallContents(head: Head, from: number, to: number): Pick<Contents, "parts" | "degreeTables"> {
  if (!isReadHead(head)) return { parts: wallParts, degreeTables: null };
  return { parts: ["reading", "degrees"], degreeTables: commonestCounts.filter((count) => count >= from && count <= to) };
}

/** A book made over into sheets for the wall: what the hand sets, in large type, and what warns. */
export function forWall(book: Book): Book {
  const { parts, running, plateKeys = [] } = book;
  const sheet = keySheet(plateKeys);
  return {
    ...book,
    sheetsStandAlone: true,
    running: withoutTitlePage(running),
    parts: [
      ...sheet,
      ...parts
        .filter(({ id }) => id !== "title")
        .map((part) => withKey(part, plateKeys, sheet.length > 0))
        .flatMap(wallPartsOf),
    ],
  };
}

/** Parts whose rows name no plate. */
const withoutPlates: ReadonlySet<string> = new Set<PartId>(["reach", "dial", "readings"]);

/** Letters of a line on the plates that a sheet has room for over its rows. */
const mostOverRows = 400;
const ofTheLetters = "The letters of the plates";

/** Where the plates are too many to be told on each sheet, a sheet of them. */
function keySheet(keys: readonly PlateKey[]): readonly Part[] {
  if ((keyLine(keys)?.length ?? 0) <= mostOverRows) return [];
  const items = keys.map(({ key, name }) => ({ term: key, text: `= ${name}` }));
  return [{ id: "letters", title: ofTheLetters, blocks: [{ kind: "list", items }] }];
}

/** A part whose sheets say what the letters of their plates stand for, or which sheet does. */
function withKey(part: Part, keys: readonly PlateKey[], hasSheet: boolean): Part {
  if (withoutPlates.has(part.id)) return part;
  const used = keys.filter(({ direct }) => direct === (part.id === "direct"));
  const key = hasSheet && used.length > 0 ? `${ofTheLetters}: page 1.` : keyLine(used);
  return key === undefined ? part : { ...part, alone: part.alone === undefined ? key : `${part.alone} ${key}` };
}

/** No more rows than stay together with the heading and the warning over them. */
const fewRows = 3;

function rowsIn(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => sum + (block.kind === "table" ? block.rows.length : 0), 0);
}

/**
 * What stands under a heading of its own has sheets of its own: each then says what the heading says. A
 * few rows stand with it under those before them, where there is room.
 */
function wallPartsOf(part: Part): readonly Part[] {
  if (part.id === "reading") return [part];
  const parts: Part[] = [];
  for (const { heading, blocks } of byHeading(part.blocks)) {
    const before = parts.at(-1);
    if (heading === null) {
      if (hasSheet(blocks)) parts.push({ ...part, blocks: blocks.flatMap(wallBlock) });
    } else if (before !== undefined && rowsIn(blocks) <= fewRows) {
      const under: readonly Block[] = [{ kind: "heading", text: heading }, ...blocks.flatMap(wallBlock)];
      parts[parts.length - 1] = { ...before, blocks: [...before.blocks, ...under] };
    } else {
      const warning = [part.warning, asSentence(heading), ...blocks.flatMap(warningIn)].filter((text) => text !== undefined);
      const others = blocks.filter((block) => !isWarning(block));
      parts.push({ ...part, warning: warning.join(" "), blocks: others.flatMap(wallBlock) });
    }
  }
  return parts.map((each, index) => (index === 0 ? each : { ...each, id: `${each.id}${letters[index]}` }));
}

/** Anchors are letters, then digits. */
const letters = "abcdefghijklmnopqrstuvwxyz";

interface UnderHeading {
  readonly heading: string | null;
  readonly blocks: readonly Block[];
}

function byHeading(blocks: readonly Block[]): readonly UnderHeading[] {
  const starts = blocks.flatMap((block, index) => (block.kind === "heading" ? [{ heading: block.text, index }] : []));
  const ends = [...starts.slice(1).map(({ index }) => index), blocks.length];
  return [
    { heading: null, blocks: blocks.slice(0, starts[0]?.index) },
    ...starts.map(({ heading, index }, at) => ({ heading, blocks: blocks.slice(index + 1, ends[at]) })),
  ];
}

function hasSheet(blocks: readonly Block[]): boolean {
  return blocks.flatMap(wallBlock).length > 0;
}

function isWarning(block: Block): boolean {
  return block.kind === "paragraph" && block.style === "strong";
}

function warningIn(block: Block): readonly string[] {
  return block.kind === "paragraph" && isWarning(block) ? [block.text] : [];
}

function asSentence(text: string): string {
  return /[.:]$/.test(text) ? text : `${text}.`;
}

/** Explanations in running text stay in the book. */
function wallBlock(block: Block): readonly Block[] {
  if (block.kind === "table") return [wallTable(block)];
  return block.kind === "paragraph" && block.style === undefined ? [] : [block];
}

/** Columns that are not set go, or under the row where they warn; small notes stay in the book. */
function wallTable({ columns, rows, ...table }: TableBlock): TableBlock {
  const stays = columns.map(({ aside, under }) => aside === undefined && under === undefined);
  return {
    ...table,
    columns: columns.filter((_, index) => stays[index]),
    rows: rows.map(({ notes: _, ...row }) => {
      const under = row.cells.flatMap(({ text }, index) => columns[index]?.under?.replace("{}", text) ?? []);
      const lines = [...(under.length === 0 ? [] : [under.join("  ·  ")]), ...(row.lines ?? [])];
      return {
        ...row,
        cells: row.cells.filter((__, index) => stays[index] !== false),
        ...(lines.length === 0 ? {} : { lines }),
      };
    }),
  };
}
