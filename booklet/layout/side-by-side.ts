import type { FillingPage } from "./filling-page.ts";
import type { Galley, Slug } from "./slugs.ts";

/** Under columns, in points. */
export const below = 5;

/** Fills the columns of a page with strips to the height given, and moves on under them; gives what is left over. */
export function fillColumns(
  page: FillingPage,
  galley: Galley,
  strips: readonly Slug[],
  { columns, pitch }: { readonly columns: number; readonly pitch: number },
  height: number,
): readonly Slug[] {
  let rest = strips;
  let deepest = 0;
  for (let column = 0; column < columns && rest.length > 0; column += 1) {
    const taken = thatFit(rest, height);
    const set = [...galley.head, ...inColumn(rest.slice(0, taken))];
    page.column(set, column * pitch);
    page.close(galley);
    deepest = Math.max(deepest, heightOf(set));
    rest = rest.slice(taken);
  }
  page.down(deepest + below);
  return rest;
}

/** How many strips stand in a column of this height, none parted from what it belongs to; always one. */
export function thatFit(slugs: readonly Slug[], limit: number): number {
  let height = 0;
  let taken = 0;
  for (const slug of slugs) {
    height += heightOf(above(slug, taken === 0)) + slug.height;
    if (height > limit) break;
    taken += 1;
  }
  if (taken === slugs.length) return taken;
  let whole = taken;
  while (whole > 0 && slugs[whole - 1]?.keepWithNext) whole -= 1;
  return Math.max(1, whole === 0 ? taken : whole);
}

/** Strips with what goes above them in a column. */
function inColumn(slugs: readonly Slug[]): readonly Slug[] {
  return slugs.flatMap((slug, index) => [...above(slug, index === 0), slug]);
}

/** At the top of a column what tells what goes on there, else what parts a strip from the one before. */
function above({ resumed = [], between }: Slug, atTop: boolean): readonly Slug[] {
  if (atTop) return resumed;
  return between === undefined ? [] : [between];
}

/** The height of strips one under the other. */
export function heightOf(slugs: readonly Slug[]): number {
  return slugs.reduce((sum, { height }) => sum + height, 0);
}
