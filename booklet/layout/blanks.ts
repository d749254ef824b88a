import type { BlanksBlock } from "../content/blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { type Galley, galley, type Slug, space } from "./slugs.ts";

/** Room to write a figure by hand, and from one line of blanks to the next: 18 mm and 8.5 mm. */
const blank = 51;
const apart = 24;

/** Sets what is to be measured, and under it a blank for each measure with what it is for. */
export function blanksGalley({ text, limits, labels }: BlanksBlock, width: number, paper: Paper, measure: Measure): Galley {
  const plain: Style = { weight: "regular", size: paper.text };
  const strong: Style = { weight: "bold", size: paper.text };
  const small: Style = { weight: "semibold", size: paper.note };
  const height = paper.text * paper.closeness.line;
  const said = brokenIntoLines(measure, text, plain, width);
  const lastWidth = measure(`${said.at(-1) ?? ""} `, plain) + 2;
  const beside = lastWidth + measure(limits, strong) <= width;
  const line = (index: number, marks: (left: number, base: number) => readonly Mark[]): Slug => ({
    height,
    keepWithNext: true,
    marks: (left, top) => [
      { kind: "group", role: "P", ...(index > 0 ? { continues: true } : {}), marks: marks(left, top + height * 0.74) },
    ],
  });
  const lines = said.map((each, index) =>
    line(index, (left, base) => [
      setText(measure, each, plain, left, base),
      // The limits stand beside the last line where there is room.
      ...(beside && index === said.length - 1 ? [setText(measure, limits, strong, left + lastWidth, base)] : []),
    ]),
  );
  const under = beside
    ? []
    : brokenIntoLines(measure, limits, strong, width).map((each, index) =>
        line(said.length + index, (left, base) => [setText(measure, each, strong, left, base)]),
      );
  const label = Math.max(...labels.map((each) => measure(each, small))) + 4;
  const pitch = label + blank + 8;
  const perLine = Math.max(1, Math.floor((width + 8) / pitch));
  const rows = Array.from({ length: Math.ceil(labels.length / perLine) }, (_, row) =>
    labels.slice(row * perLine, (row + 1) * perLine),
  );
  return galley([
    ...lines,
    ...under,
    ...rows.map(
      (row): Slug => ({
        height: apart,
        marks: (left, top) =>
          row.flatMap((each, index): Mark[] => {
            const x = left + index * pitch;
            const y = top + apart - 4;
            return [
              { kind: "group", role: "P", marks: [setText(measure, each, small, x + label - 4, y - 1, "right")] },
              { kind: "rule", from: [x + label, y], to: [x + label + blank, y], width: 0.6, grey: 0.35 },
            ];
          }),
      }),
    ),
    space(paper.text * 0.55 * paper.closeness.gap),
  ]);
}
