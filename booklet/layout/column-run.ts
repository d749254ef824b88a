import type { FillingPage, Sheet } from "./filling-page.ts";
import { below, fillColumns, heightOf, thatFit } from "./side-by-side.ts";
import type { Galley, Slug } from "./slugs.ts";

/** Columns lower than this in points are not worth beginning on a page. */
const fewestBegun = 120;
/** Steps in which the height of even columns is sought, in points. */
const step = 2;

/**
 * Runs strips through columns side by side, down one and then down the next, over as many pages as
 * they take; on the last page the columns come out even.
 */
export function* runInColumns(
  galley: Galley,
  { columns, pitch }: NonNullable<Galley["runs"]>,
  page: FillingPage,
): Generator<Sheet> {
  const head = heightOf(galley.head);
  let above = galley.opening ?? [];
  let rest = galley.slugs;
  while (rest.length > 0) {
    const room = () => page.room() - heightOf(above) - head - below;
    if (!page.fresh() && room() < fewestBegun && evenHeight(rest, columns, room()) === null) yield page.turn();
    for (const slug of above) page.put(slug);
    page.close();
    const full = page.room() - head - below;
    const height = evenHeight(rest, columns, full) ?? full;
    rest = fillColumns(page, galley, rest, { columns, pitch }, height);
    above = galley.continued ?? [];
    if (rest.length > 0) yield page.turn();
  }
}

/** The least height at which all strips go into the columns; null where they do not on this page. */
function evenHeight(slugs: readonly Slug[], columns: number, most: number): number | null {
  if (!allFit(slugs, columns, most)) return null;
  const least = heightOf(slugs) / columns;
  for (let height = least; height < most; height += step) if (allFit(slugs, columns, height)) return height;
  return most;
}

function allFit(slugs: readonly Slug[], columns: number, height: number): boolean {
  let rest = slugs;
  for (let column = 0; column < columns && rest.length > 0; column += 1) rest = rest.slice(thatFit(rest, height));
  return rest.length === 0;
}
