import type { ListBlock } from "../content/blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { heightOf } from "./side-by-side.ts";
import { type Galley, galley, type Slug, space } from "./slugs.ts";

type Item = ListBlock["items"][number];

/** Between two columns, in points. */
const gutter = 16;
/** Gaps closer than this are a page short of room. */
const shortOfRoom = 0.8;

/** Of the height of a page, what may be kept on one: longer lists would leave too much of the page before white. */
const mostTogether = 0.5;

/** Sets terms with what each means; in two columns where room is short and no item needs a second line in them. */
export function listGalley({ items, folds, together = false }: ListBlock, width: number, paper: Paper, measure: Measure): Galley {
  const pitch = (width + gutter) / 2;
  const halved = folds && paper.closeness.gap < shortOfRoom ? itemSlugs(items, pitch - gutter, paper, measure) : [];
  if (halved.length === items.length) return { ...galley(halved), fold: { columns: 2, pitch } };
  const slugs = itemSlugs(items, width, paper, measure);
  const keeps = together && heightOf(slugs) <= paper.height * mostTogether;
  return galley([...(keeps ? keptTogether(slugs) : slugs), space(paper.text * 0.5 * paper.closeness.gap)]);
}

function keptTogether(slugs: readonly Slug[]): readonly Slug[] {
  return slugs.map((slug, index) => ({ ...slug, keepWithNext: index < slugs.length - 1 }));
}

function itemSlugs(items: readonly Item[], width: number, paper: Paper, measure: Measure): readonly Slug[] {
  const term: Style = { weight: "semibold", size: paper.text };
  const indent = Math.min(width / 3, Math.max(...items.map((item) => measure(item.term, term))) + paper.text);
  return items.flatMap((item, index) => {
    const goesOn = items[index + 1]?.term === "";
    return itemLines(item, goesOn, indent, width, paper, measure);
  });
}

/** The lines of an item, which keep together, and with the next item where that goes on under the same term. */
function itemLines(item: Item, goesOn: boolean, indent: number, width: number, paper: Paper, measure: Measure): readonly Slug[] {
  const [term, text]: readonly [Style, Style] = [
    { weight: "semibold", size: paper.text },
    { weight: "regular", size: paper.text },
  ];
  const height = paper.text * paper.closeness.line;
  const terms = brokenIntoLines(measure, item.term, term, indent - 4);
  const texts = brokenIntoLines(measure, item.text, text, width - indent);
  const lines = Math.max(terms.length, texts.length);
  return Array.from({ length: lines }, (_, index) => ({
    height,
    keepWithNext: goesOn || index < lines - 1,
    marks(left: number, top: number): readonly Mark[] {
      const y = top + height * 0.74;
      const said: Mark[] = texts[index] === undefined ? [] : [setText(measure, texts[index], text, left + indent, y)];
      if (item.link !== undefined) said.push({ kind: "link", x: left, y: top, width, height, to: item.link, says: item.text });
      return [
        ...(terms[index] === undefined
          ? []
          : [{ kind: "group", role: "P", marks: [setText(measure, terms[index], term, left, y)] } as const]),
        { kind: "group", role: "P", ...(index > 0 && terms[index] === undefined ? { continues: true } : {}), marks: said },
      ];
    },
  }));
}
