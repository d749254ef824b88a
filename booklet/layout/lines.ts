import type { Role, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { type Slug, space } from "./slugs.ts";

/** Sets text in lines of the width given; with `keep` none of them may stand last on a page. */
export function lines(
  text: string,
  style: Style,
  role: Role,
  width: number,
  { closeness }: Paper,
  measure: Measure,
  keep = false,
): Slug[] {
  const height = style.size * closeness.line;
  return brokenIntoLines(measure, text, style, width).map((line, index, all) => ({
    height,
    // No first line alone at the foot of a page, and no last line alone at the head of one.
    keepWithNext: keep || (index === 0 && all.length > 1) || index === all.length - 2,
    marks: (left, top) => [
      {
        kind: "group",
        role,
        ...(index > 0 ? { continues: true } : {}),
        marks: [setText(measure, line, style, left, top + height * 0.74)],
      },
    ],
  }));
}

/** Sets a heading within a part. */
export function headingSlugs(
  text: string,
  anchor: string | undefined,
  width: number,
  paper: Paper,
  measure: Measure,
): readonly Slug[] {
  const style: Style = { weight: "semibold", size: paper.text * 1.15 };
  const above = { ...space(paper.text * 0.8 * paper.closeness.gap, true), ...(anchor === undefined ? {} : { anchor }) };
  return [above, ...lines(text, style, "H2", width, paper, measure, true), space(2, true)];
}
