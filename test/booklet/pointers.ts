import { flattened, type Page } from "../../booklet/layout/marks.ts";
import { linesIn } from "./set-pages.ts";

/** A number of a page that is printed somewhere, and what a reader expects to find there. */
export interface Pointer {
  /** Where it stands: its page from 1, and its line. */
  readonly on: number;
  readonly line: string;
  readonly page: number;
  /** How a line of the page named must begin; null where it cannot be told what is promised. */
  readonly promised: RegExp | null;
}

type Lines = readonly (readonly string[])[];
type Promised = Pick<Pointer, "page" | "promised">;

const mark = "[SGCDH×]";

const elsewhere = String.raw`: page \d|not in this print`;

/** The row of a count, and no row that points elsewhere. */
function rowOf(count: string | number, letter: string): RegExp {
  return new RegExp(String.raw`(?:^|\|)${count}\|${letter}\|(?!.*(?:${elsewhere}))`);
}

/** The lines of a page, and for a row that tells the same of several counts one of each. */
function rowByRow(page: readonly string[]): readonly string[] {
  const several = new RegExp(String.raw`(?:^|\|)(\d+)–(\d+)\|(${mark})(?=\|)(?!.*(?:${elsewhere}))`, "g");
  const rows = page.flatMap((line) =>
    [...line.matchAll(several)].flatMap(([, first, last, letter]) =>
      Array.from({ length: Number(last) - Number(first) + 1 }, (_, step) => `${Number(first) + step}|${letter}|`),
    ),
  );
  return [...page, ...rows];
}

/** The row of a count among readings, where several stand side by side: turns, dial, ring, error. */
function readingsOf(count: string): RegExp {
  return new RegExp(String.raw`(?:^|\|)${count}\|\d+\|\d+° \d\d′ \d\d″\|\d+°\|(?:exact|\d+\.\d[″′°])\|`);
}

/** Everything on the pages that names a page, but for their own numbers. */
export function pointersOn(lines: Lines): readonly Pointer[] {
  return lines.flatMap((page, index) => {
    const inIndex = isOfIndex(lines, index);
    return page.flatMap((line) => promisedBy(line, inIndex).map((each) => ({ on: index + 1, line, ...each })));
  });
}

/** Whether a page has counts with their methods and pages: from the heading of those to the next. */
function isOfIndex(lines: Lines, index: number): boolean {
  const pageWith = (start: string) => lines.findIndex((page) => page.some((line) => line.startsWith(start)));
  const [first, last] = [pageWith("By count: method and page"), pageWith("By circle: counts")];
  return first >= 0 && index >= first && (last < 0 || index <= last);
}

function promisedBy(line: string, inIndex: boolean): readonly Promised[] {
  // What stands close together is read from a file as one piece.
  const index = inIndex ? [...line.matchAll(new RegExp(String.raw`(?<=^|[| ])(\d+)[| ](${mark})[| ](\d+)(?=[| ]|$)`, "g"))] : [];
  if (index.length > 0)
    return index.map(([, count = "", letter = "", page]) => ({ page: Number(page), promised: rowOf(count, letter) }));
  const row = new RegExp(String.raw`^(\d+)(?:–(\d+))?\|(${mark})\|.*: page (\d+)$`).exec(line);
  if (row) {
    const [first, last] = [Number(row[1]), Number(row[2] ?? row[1])];
    return Array.from({ length: last - first + 1 }, (_, step) => ({
      page: Number(row[4]),
      promised: rowOf(first + step, row[3] ?? ""),
    }));
  }
  const [, divisions] = /^(\d+)\|×\|/.exec(line) ?? [];
  return [...line.matchAll(/\bpage (\d+)\b(?! of \d)(?:\|(\w+))?/g)].map(([, page, title]) => {
    if (divisions !== undefined)
      return { page: Number(page), promised: new RegExp(String.raw`(?:^|\|)${divisions} divisions\b`) };
    // In the contents the title follows.
    return { page: Number(page), promised: title === undefined ? null : new RegExp(`^${title}`) };
  });
}

/** The pointers whose page has not what they promise. */
export function astray(lines: Lines): readonly string[] {
  const rows = lines.map(rowByRow);
  return pointersOn(lines).flatMap(({ on, line, page, promised }) => {
    const isThere = promised !== null && (rows[page - 1] ?? []).some((each) => promised.test(each));
    return isThere ? [] : [`page ${on}, "${line}": on page ${page} there is no ${promised}`];
  });
}

/** The count whose row an anchor names. */
export function countNamed(anchor: string): string | undefined {
  return /^(?:simple|direct|dial|readings|geared|compound|impossible)0*(\d+)$/.exec(anchor)?.[1];
}

/** Whether a page has the row of a count. */
export function hasRow(page: readonly string[], count: string): boolean {
  return rowByRow(page).some((line) => rowOf(count, mark).test(line) || readingsOf(count).test(line));
}

/** The links that lead nowhere, or to a page without the row of the count that they name. */
export function linksAstray(pages: readonly Page[]): readonly string[] {
  const marks = pages.map((page) => [...flattened(page.marks)]);
  const places = new Map(
    marks.flatMap((all, index) => all.flatMap((each) => (each.kind === "anchor" ? [[each.name, index]] : []))),
  );
  const lines = pages.map(linesIn);
  return marks.flatMap((all, index) =>
    all.flatMap((each) => {
      if (each.kind !== "link") return [];
      const there = lines[places.get(each.to) ?? -1];
      const count = countNamed(each.to);
      const isRight = there !== undefined && (count === undefined || hasRow(there, count));
      return isRight ? [] : [`page ${index + 1}: "${each.says}" to ${each.to}`];
    }),
  );
}
