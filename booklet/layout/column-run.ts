import type { FillingPage, Sheet } from "./filling-page.ts";
import type { Galley, Slug } from "./slugs.ts";

/** Under columns, in points. */
const below = 5;
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
    let deepest = 0;
    for (let column = 0; column < columns && rest.length > 0; column += 1) {
      const taken = thatFit(rest, height);
      const strips = [...galley.head, ...inColumn(rest.slice(0, taken))];
      page.column(strips, column * pitch);
      page.close(galley);
      deepest = Math.max(deepest, heightOf(strips));
      rest = rest.slice(taken);
    }
    page.down(deepest + below);
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

/** How many strips stand in a column of this height, none parted from what it belongs to; always one. */
function thatFit(slugs: readonly Slug[], limit: number): number {
  let height = 0;
  let taken = 0;
  while (taken < slugs.length) {
    height += heightOf(inColumn(slugs.slice(taken, taken + 1), taken === 0));
    if (height > limit) break;
    taken += 1;
  }
  if (taken === slugs.length) return taken;
  let whole = taken;
  while (whole > 0 && slugs[whole - 1]?.keepWithNext) whole -= 1;
  return Math.max(1, whole === 0 ? taken : whole);
}

/** Strips with what goes above them: in the first place what tells what goes on there, else what parts them. */
function inColumn(slugs: readonly Slug[], atTop = true): readonly Slug[] {
  return slugs.flatMap((slug, index) => {
    if (index === 0 && atTop) return [...(slug.resumed ?? []), slug];
    return slug.between ? [slug.between, slug] : [slug];
  });
}

function heightOf(slugs: readonly Slug[]): number {
  return slugs.reduce((sum, { height }) => sum + height, 0);
}
