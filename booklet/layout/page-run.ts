import type { Part } from "../content/blocks.ts";
import { runInColumns } from "./column-run.ts";
import { emptyPage, type FillingPage, type Ground, type Sheet } from "./filling-page.ts";
import { fillColumns, heightOf, thatFit } from "./side-by-side.ts";
import type { Galley, Slug } from "./slugs.ts";

interface Strip {
  readonly galley: Galley;
  readonly slug: Slug;
  readonly first: boolean;
}

/** Fills page after page with strips, and hands on each as it is full; a part begins a new page. */
export function* runIntoPages(galleys: readonly Galley[], part: Part, ground: Ground): Generator<Sheet> {
  const strips = galleys.flatMap((galley) => galley.slugs.map((slug, index): Strip => ({ galley, slug, first: index === 0 })));
  const page = emptyPage(part, ground);
  page.name(part.id);
  for (const [index, { galley, slug, first }] of strips.entries()) {
    if (galley.runs) {
      if (first) yield* runInColumns(galley, galley.runs, page);
      continue;
    }
    if (galley.fold) {
      if (first) yield* runFolded(galley, galley.fold, page);
      continue;
    }
    const droppedAtFoot = slug.blank && !slug.keepWithNext && page.full(slug.height);
    const full = droppedAtFoot ? null : putNext(page, galley, slug, above(galley, slug, first), needed(page, strips, index));
    if (full !== null) yield full;
    if (strips[index + 1]?.first !== false) page.close(galley);
    else page.of(galley);
  }
  yield page.end();
}

/** Puts a strip on the page, or on the next with the head of its galley where it and what belongs to it do not fit; gives back the page that is full. */
function putNext(page: FillingPage, galley: Galley, slug: Slug, before: readonly Slug[], needed: number): Sheet | null {
  const turns = page.full(heightOf(before) + needed);
  const smaller = turns ? slug.smaller?.find(({ height }) => !page.full(heightOf(before) + height)) : undefined;
  if (smaller) {
    for (const each of before) page.put(each);
    page.put(smaller);
    return null;
  }
  if (turns) page.close();
  const full = turns ? page.turn() : null;
  for (const each of turns ? galley.head : before) page.put(each);
  // What is larger than a whole page, too, gives way to the largest of its smaller ones that is not.
  page.put([slug, ...(slug.smaller ?? [])].find(({ height }) => height <= page.room()) ?? slug);
  return full;
}

/** Fewer rows than this, in all columns, are not worth beginning a table for. */
const fewestBegun = 8;

/**
 * Runs strips through columns side by side; on the last page the columns come out even. What
 * would fit the next page whole is not parted, unless too much of this page would be left white.
 */
function* runFolded(galley: Galley, { columns, pitch }: NonNullable<Galley["fold"]>, page: FillingPage): Generator<Sheet> {
  const head = heightOf(galley.head);
  let above = galley.opening ?? [];
  let rest = galley.slugs;
  while (rest.length > 0) {
    const room = () => page.room() - heightOf(above) - head;
    const even = evenHeight(rest, columns);
    const whole = even <= room();
    const wholeOnNext = even <= page.roomOnFresh() - heightOf(above) - head && !page.sparse();
    if (!whole && !page.fresh() && (wholeOnNext || thatFit(rest, room()) * columns < fewestBegun)) yield page.turn();
    for (const slug of above) page.put(slug);
    page.close();
    const limit = Math.min(page.room() - head, even);
    rest = fillColumns(page, galley, rest, { columns, pitch }, limit);
    above = galley.continued ?? [];
    if (rest.length > 0) yield page.turn();
  }
}

/** The height at which all strips fill the columns evenly. */
function evenHeight(slugs: readonly Slug[], columns: number): number {
  const perColumn = Math.ceil(slugs.length / columns);
  const heights = Array.from({ length: columns }, (_, column) =>
    slugs
      .slice(column * perColumn, (column + 1) * perColumn)
      .reduce((sum, { height, between }, index) => sum + height + (index === 0 ? 0 : (between?.height ?? 0)), 0),
  );
  return Math.max(...heights) + 0.01;
}

/** What goes above a strip: the head of its galley, or what parts it from the strip before. */
function above(galley: Galley, slug: Slug, first: boolean): readonly Slug[] {
  if (first) return galley.head;
  return slug.between ? [slug.between] : [];
}

/** The height of a strip with those that must stay with it; where no page holds that, those that give way as small as they go. */
function needed(page: FillingPage, strips: readonly Strip[], from: number): number {
  const whole = together(strips, from, ({ height }) => height);
  return whole <= page.roomOnFresh() ? whole : together(strips, from, leastHeight);
}

function leastHeight({ height, smaller = [] }: Slug): number {
  return Math.min(height, ...smaller.map((each) => each.height));
}

function together(strips: readonly Strip[], from: number, heightFor: (slug: Slug) => number): number {
  let height = 0;
  for (let index = from; index < strips.length; index += 1) {
    const strip = strips[index];
    if (!strip) break;
    height += heightFor(strip.slug) + (index > from ? heightOf(above(strip.galley, strip.slug, strip.first)) : 0);
    if (!strip.slug.keepWithNext) break;
  }
  return height;
}
