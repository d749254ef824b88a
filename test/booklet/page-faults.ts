import { boxOf, flattened, type Mark, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { frameOf, type Paper } from "../../booklet/layout/paper.ts";
import { insideFurniture } from "../../booklet/layout/running.ts";

/** In points. */
export const slack = 0.7;

/** Marks that reach beyond the margins of their page. */
function beyondMargins(page: Page, number: number, paper: Paper): Mark[] {
  const { left, right, top, bottom } = frameOf(paper, number);
  return [...flattened(page.marks)].filter((mark) => {
    const box = boxOf(mark);
    return box !== null && (box[0] < left - slack || box[1] < top - slack || box[2] > right + slack || box[3] > bottom + slack);
  });
}

/** Pieces of text that lie over each other. */
function overlapping(page: Page): [string, string][] {
  const texts = [...flattened(page.marks)]
    .filter((mark): mark is TextMark => mark.kind === "text" && mark.text !== "")
    .sort((a, b) => a.y - b.y);
  const found: [string, string][] = [];
  for (const [index, one] of texts.entries()) {
    for (const other of texts.slice(index + 1)) {
      if (other.y - one.y > 40) break;
      const [a, b] = [boxOf(one), boxOf(other)];
      if (a && b && Math.min(a[2], b[2]) - Math.max(a[0], b[0]) > 0.3 && Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > 0.5)
        found.push([one.text, other.text]);
    }
  }
  return found;
}

/** Pages that end on a heading, which belongs with what follows. */
function endsOnHeading({ marks }: Page): boolean {
  const last = marks.findLast((mark) => mark.kind === "group");
  return last?.kind === "group" && (last.role === "H1" || last.role === "H2");
}

/** Less than this in parts of the height, and a page is hardly worth turning to. */
const leastFilled = 0.1;

/** Pages with hardly anything on them; only a table may end so, as its rows cannot be set closer. */
function allButEmpty({ marks }: Page, number: number, paper: Paper): boolean {
  const { top, bottom } = insideFurniture(frameOf(paper, number), paper);
  const inside = [...flattened(marks)].flatMap((mark) => {
    const box = boxOf(mark);
    return box !== null && box[1] > top - slack && box[3] < bottom + slack ? [box[3]] : [];
  });
  const last = marks.findLast((mark) => mark.kind === "group");
  const endsOnTable = last?.kind === "group" && last.role === "Table";
  return !endsOnTable && Math.max(top, ...inside) - top < leastFilled * (bottom - top);
}

/** What is wrong with pages, whatever is on them: marks beyond the margins, text over text, a heading that ends a page, a page with hardly anything. */
export function faultsIn(pages: readonly Page[], paper: Paper) {
  return pages.flatMap((page, index) => [
    ...beyondMargins(page, index + 1, paper).map((mark) => ({ page: index + 1, beyond: mark })),
    ...overlapping(page).map((pair) => ({ page: index + 1, over: pair })),
    ...(endsOnHeading(page) ? [{ page: index + 1, endsOnHeading: true }] : []),
    ...(allButEmpty(page, index + 1, paper) ? [{ page: index + 1, allButEmpty: true }] : []),
  ]);
}
