import type { PanelBlock, RuledBlock } from "../content/blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { type Galley, galley, type Slug, space } from "./slugs.ts";

/** Sets large figures side by side between two rules. */
export function panelGalley({ items }: PanelBlock, width: number, paper: Paper, measure: Measure): Galley {
  const pitch = width / items.length;
  const fitted = (texts: readonly string[], style: Style): Style => {
    const widest = Math.max(...texts.map((text) => measure(text, style)));
    return { ...style, size: style.size * Math.min(1, (pitch * 0.95) / widest) };
  };
  const heads = fitted(
    items.map(({ head }) => head),
    { weight: "semibold", size: paper.note, grey: 0.25 },
  );
  const under = fitted(
    items.map((item) => item.under),
    { weight: "regular", size: paper.note + 1 },
  );
  const figure: Style = { weight: "bold", size: figureSize(items, pitch, paper, measure) };
  const height = heads.size * 1.8 + figure.size * 0.95 + under.size * 1.9;
  const panel: Slug = {
    height,
    keepWithNext: true,
    marks: (left, top) => [
      ...[top, top + height - 2].map((y): Mark => ({ kind: "rule", from: [left, y], to: [left + width, y], width: 1.2 })),
      ...items.map(
        (item, index): Mark => ({
          kind: "group",
          role: "P",
          marks: [
            setText(measure, item.head, heads, left + index * pitch, top + heads.size * 1.5),
            setText(measure, item.figure, figure, left + index * pitch, top + heads.size * 1.8 + figure.size * 0.78),
            setText(measure, item.under, under, left + index * pitch, top + height - under.size * 0.75),
          ],
        }),
      ),
    ],
  };
  return galley([panel, space(paper.text * 0.5 * paper.closeness.gap)]);
}

/** Of what a figure has for itself and the gap after it: 180:1 and 7 must not be read as 180:17. */
const mostOfPitch = 0.82;

/** As large as the widest figure leaves room for. */
function figureSize(items: PanelBlock["items"], pitch: number, paper: Paper, measure: Measure): number {
  const widest = Math.max(...items.map(({ figure }) => measure(figure, { weight: "bold", size: 1 })));
  return Math.min(paper.text * 4.4, (pitch * mostOfPitch) / widest);
}

/** Sets lines to write on, 8 mm apart; where there is less room, fewer of them. */
export function ruledGalley({ text, lines, least = lines }: RuledBlock, width: number, paper: Paper, measure: Measure): Galley {
  const [most, ...smaller] = Array.from({ length: lines - least + 1 }, (_, fewer) =>
    ruled(text, lines - fewer, width, paper, measure),
  );
  return galley(most === undefined ? [] : [{ ...most, smaller }]);
}

function ruled(text: string, lines: number, width: number, paper: Paper, measure: Measure): Slug {
  const apart = 22.7;
  const style: Style = { weight: "regular", size: paper.note, grey: 0.25 };
  return {
    height: style.size * 1.5 + apart * lines + 2,
    marks: (left, top) => [
      { kind: "group", role: "P", marks: [setText(measure, text, style, left, top + style.size)] },
      ...Array.from({ length: lines }, (_, index): Mark => {
        const y = top + style.size * 1.5 + apart * (index + 1);
        return { kind: "rule", from: [left, y], to: [left + width, y], width: 0.5, grey: 0.5 };
      }),
    ],
  };
}
