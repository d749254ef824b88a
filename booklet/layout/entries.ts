import type { ColumnsBlock } from "../content/blocks.ts";
import { headingSlugs } from "./lines.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { type Galley, type Slug, space } from "./slugs.ts";

/** Rows of one lead that are not parted. */
const mostKept = 10;

type Entry = ColumnsBlock["items"][number];

/** How entries stand side by side. */
interface Grid {
  readonly styles: readonly Style[];
  readonly widths: readonly number[];
  readonly gap: number;
  /** Width of an entry, from one to the next, and how many stand in a row. */
  readonly entry: number;
  readonly pitch: number;
  readonly perRow: number;
  readonly height: number;
  /** Where the entries begin, right of what they are entries of. */
  readonly indent: number;
}

/** As wide as this at least, so that the entries of one circle stand under those of another. */
const usualEntry = ["000", "00 + 00"];

/** In parts of the size of the type: room for what the entries are of, where it stands before them. */
const leadWidth = 2.6;

/** Sets entries side by side, in as many columns as fit, read across; their heading is said again on each page. */
export function entriesGalley(block: ColumnsBlock, width: number, paper: Paper, measure: Measure): Galley {
  const { items, title, lead } = block;
  const grid = gridFor(block, width, paper, measure);
  const rows = Array.from({ length: Math.ceil(items.length / grid.perRow) }, (_, row) =>
    rowOf(items.slice(row * grid.perRow, (row + 1) * grid.perRow), grid, row === 0 ? lead : undefined, measure),
  ).map((slug, row, all): Slug => ({ ...slug, keepWithNext: lead !== undefined && row < all.length - 1 && row < mostKept }));
  return {
    head: title === undefined ? [] : headingSlugs(title, undefined, width, paper, measure),
    slugs: [...rows, space(paper.text * 0.5 * paper.closeness.gap)],
  };
}

function gridFor({ items, lead }: ColumnsBlock, width: number, paper: Paper, measure: Measure): Grid {
  const styles = lead === undefined ? looked(paper.note + 0.5) : set(paper.table);
  const size = styles[0]?.size ?? paper.note;
  const gap = size * (lead === undefined ? 0.5 : 0.36);
  const apart = size * (lead === undefined ? 1 : 0.75);
  const least = lead === undefined ? [] : usualEntry;
  const widths = styles.map((style, part) =>
    Math.max(...[least[part] ?? "", ...items.map(({ parts }) => parts[part] ?? "")].map((text) => measure(text, style))),
  );
  const entry = widths.reduce((sum, each) => sum + each + gap, 0);
  const indent = lead === undefined ? 0 : size * leadWidth;
  const inside = width - indent + apart;
  const perRow = Math.max(1, Math.floor(inside / (entry + apart)));
  return { styles, widths, gap, entry, pitch: inside / perRow, perRow, height: size * 1.45, indent };
}

/** What is looked up: small, the count first. */
function looked(size: number): readonly Style[] {
  return [
    { weight: "bold", size },
    { weight: "regular", size },
    { weight: "regular", size, grey: 0.25 },
  ];
}

/** What the hand sets: as large as in any table, and what is set stronger than what it is for. */
function set(size: number): readonly Style[] {
  return [
    { weight: "regular", size },
    { weight: "bold", size },
  ];
}

function rowOf(row: readonly Entry[], grid: Grid, lead: string | undefined, measure: Measure): Slug {
  const { height, indent, pitch, styles } = grid;
  return {
    height,
    marks(left, top) {
      const base = top + height * 0.74;
      const style: Style = { weight: "semibold", size: styles[0]?.size ?? 0 };
      const before: Mark[] =
        lead === undefined ? [] : [{ kind: "group", role: "P", marks: [setText(measure, lead, style, left, base)] }];
      return [...before, ...row.flatMap((each, at) => entryMarks(each, left + indent + at * pitch, top, grid, measure))];
    },
  };
}

function entryMarks({ parts, link }: Entry, left: number, top: number, grid: Grid, measure: Measure): Mark[] {
  const { styles, widths, gap, entry, height } = grid;
  let right = left;
  const said = styles.map((style, part) => {
    right += (widths[part] ?? 0) + gap;
    const centred = part === 1 && styles.length > 2;
    const x = centred ? right - gap - (widths[part] ?? 0) / 2 : right - gap;
    return setText(measure, parts[part] ?? "", style, x, top + height * 0.74, centred ? "center" : "right");
  });
  const marks: Mark[] = [{ kind: "group", role: "P", marks: said }];
  if (link !== undefined)
    marks.push({ kind: "link", x: left, y: top, width: entry, height, to: link, says: `count ${parts[0]}` });
  return marks;
}
