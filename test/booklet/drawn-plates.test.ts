import { describe, expect, it } from "vitest";
import type { Book } from "../../booklet/content/blocks.ts";
import { jobOf } from "../../booklet/content/job.ts";
import { forWall } from "../../booklet/content/wall.ts";
import {
  boxOf,
  flattened,
  type GroupMark,
  type Mark,
  type Page,
  type RuleMark,
  type TextMark,
} from "../../booklet/layout/marks.ts";
import { frameOf, type Paper } from "../../booklet/layout/paper.ts";
import { paperNamed, paperNames, wallPaperNamed, wallPaperNames } from "../../booklet/layout/papers.ts";
import { insideFurniture } from "../../booklet/layout/running.ts";
import { defineHead, type Head, indexDivisions, readyHeads } from "../../src/index.ts";
import { eachWithEach, farthest } from "../support/sweep.ts";
import { facesPrinted } from "./plate-named.ts";
import { edition, pagesOn, wholeBook } from "./set-pages.ts";

function bookWith(head: Head, parts: readonly ("reading" | "drawings")[], to = farthest): Book {
  return wholeBook(head, { from: 2, to, degreeTables: [] }, parts);
}

/** The drawings of plates among pages. */
function platesOn(pages: readonly Page[]): readonly GroupMark[] {
  return pages
    .flatMap(({ marks }) => marks)
    .filter((mark): mark is GroupMark => mark.kind === "group" && mark.role === "Figure" && /^Plate /.test(mark.alt ?? ""));
}

type Point = readonly [number, number];

const near = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The circles of a drawing, counted from its dots alone: radius to the number of places where a hole is drawn. */
function circlesDrawn(marks: readonly Mark[], middle: Point): ReadonlyMap<number, number> {
  const places = new Map<number, Set<string>>();
  for (const mark of flattened(marks)) {
    if (mark.kind !== "dots") continue;
    for (const at of mark.at) {
      const from = near(at, middle);
      const radius = [...places.keys()].find((each) => Math.abs(each - from) < 0.1) ?? from;
      places.set(radius, (places.get(radius) ?? new Set()).add(at.map((each) => each.toFixed(3)).join(" ")));
    }
  }
  return new Map([...places].map(([radius, at]) => [radius, at.size]));
}

/** The rim is the largest thing that is as wide as it is high. */
function rimOf(marks: readonly Mark[]): { readonly middle: Point; readonly radius: number } {
  const rounds = [...flattened(marks)].flatMap((mark) => {
    if (mark.kind !== "shape" || mark.stroke?.width !== 1.4) return [];
    const [left, top, right, bottom] = mark.box;
    return Math.abs(right - left - (bottom - top)) < 0.01
      ? [{ middle: [(left + right) / 2, (top + bottom) / 2] as Point, radius: (right - left - 1.4) / 2 }]
      : [];
  });
  const [rim] = rounds.sort((a, b) => b.radius - a.radius);
  return rim ?? expect.fail("there is no rim");
}

/** The circle that a number says it is of: that to which its line leads, or in whose gap it stands. */
function circleNumbered(text: TextMark, marks: readonly Mark[], drawn: ReadonlyMap<number, number>): number | null {
  const { middle, radius: rim } = rimOf(marks);
  const holesAt = (radius: number, within: number) => {
    const [found] = [...drawn]
      .filter(([each]) => Math.abs(each - radius) <= within)
      .sort(([a], [b]) => Math.abs(a - radius) - Math.abs(b - radius));
    return found?.[1] ?? null;
  };
  const [left, top, right, bottom] = boxOf(text) as readonly [number, number, number, number];
  const line = [...flattened(marks)].find(
    (mark): mark is RuleMark =>
      mark.kind === "rule" &&
      mark.width < 0.5 &&
      mark.from[1] > top - 2 &&
      mark.from[1] < bottom + 2 &&
      Math.min(Math.abs(mark.from[0] - right), Math.abs(mark.from[0] - left)) < 4,
  );
  if (line !== undefined) return holesAt(near(line.to, middle), 0.2);
  const radius = near([(left + right) / 2, (top + bottom) / 2], middle);
  return radius < rim ? holesAt(radius, 4) : null;
}

/** What is wrong with the numbers of a drawing that should have these circles. */
function faultsOf({ marks }: GroupMark, circles: readonly number[], least: number) {
  const drawn = circlesDrawn(marks, rimOf(marks).middle);
  const numbers = [...flattened(marks)].filter((mark): mark is TextMark => mark.kind === "text" && /^\d+$/.test(mark.text));
  const rightly = numbers.filter((text) => circleNumbered(text, marks, drawn) === Number(text.text));
  return {
    notDrawn: circles.filter((holes) => ![...drawn.values()].includes(holes)),
    notNumbered: circles.filter((holes) => !rightly.some(({ text }) => text === String(holes))),
    tooSmall: numbers.filter(({ size }) => size < least).map(({ text }) => text),
  };
}

const right = { notDrawn: [], notNumbered: [], tooSmall: [] };

/** The circles of the face that a drawing is of, by what it says in words. */
function circlesIn(head: Head, { alt = "" }: GroupMark): readonly number[] {
  const found = facesPrinted(head).filter(({ printed }) => alt.startsWith(`Plate ${printed} `));
  return found.sort((a, b) => b.printed.length - a.printed.length)[0]?.face.circles ?? expect.fail(`no plate is meant by ${alt}`);
}

const withPlates = readyHeads.filter(({ plates }) => plates.length > 0);

describe("every circle drawn bears its number, no smaller than a note of its paper", () => {
  it.each(eachWithEach(paperNames, withPlates))("%s", (_, name, head) => {
    const paper = paperNamed(name);
    const drawn = platesOn(pagesOn(paper, bookWith(head, ["reading", "drawings"])));
    expect(drawn.length).toBe(1 + head.plates.flatMap(({ faces }) => faces).length);
    for (const plate of drawn) expect(faultsOf(plate, circlesIn(head, plate), paper.note)).toEqual(right);
  });

  it.each(eachWithEach(wallPaperNames, withPlates))("on the wall: %s", (_, name, head) => {
    const paper = wallPaperNamed(name);
    const drawn = platesOn(pagesOn(paper, forWall(bookWith(head, ["reading"]))));
    expect(drawn.length).toBe(1);
    for (const plate of drawn) expect(faultsOf(plate, circlesIn(head, plate), paper.note)).toEqual(right);
  });

  it.each(eachWithEach(paperNames, withPlates))("on the sheets of jobs, wherever the far arm stands: %s", (_, name, head) => {
    const paper = paperNamed(name);
    const inOrder = [7, 9, 13, 27, 33, 36, 43, 49, 51, 62, 66, 96, 127].filter((divisions) => {
      const [setting] = indexDivisions(head, divisions, { limit: 1 }).settings;
      return setting !== undefined && setting.circle !== null && setting.method !== "compound" && setting.method !== "dial";
    });
    const arms = new Set<number>();
    for (const divisions of inOrder) {
      for (const plate of platesOn(pagesOn(paper, jobOf(head, edition, { divisions })))) {
        expect(faultsOf(plate, circlesOfJob(head, divisions), paper.note)).toEqual(right);
        const [setting] = indexDivisions(head, divisions, { limit: 1 }).settings;
        if (setting?.circle) arms.add(Math.floor((4 * setting.spaces) / setting.circle));
      }
    }
    expect(arms.size).toBeGreaterThan(1);
  });

  it("of a plate with sixty circles too, of two holes and of ten thousand", () => {
    const many = defineHead({
      wormRatio: 40,
      plates: [{ name: "many", circles: Array.from({ length: 60 }, (_, index) => index + 7) }],
    });
    const odd = defineHead({ wormRatio: 40, plates: [{ name: "odd", circles: [2, 3, 5, 10_000] }] });
    for (const [, name, head] of eachWithEach(paperNames, [many, odd])) {
      const paper = paperNamed(name);
      const drawn = platesOn(pagesOn(paper, bookWith(head, ["drawings"])));
      expect(drawn.length).toBe(1);
      for (const plate of drawn) expect(faultsOf(plate, circlesIn(head, plate), paper.note)).toEqual(right);
    }
  });
});

function circlesOfJob(head: Head, divisions: number): readonly number[] {
  const [setting] = indexDivisions(head, divisions, { limit: 1 }).settings;
  const face = head.plates.find(({ name }) => name === setting?.plate)?.faces.find(({ name }) => name === setting?.face);
  return face?.circles ?? [];
}

/** How much of each page is below all that stands on it, in parts of its height. */
function whiteAtFoot(pages: readonly Page[], paper: Paper): readonly number[] {
  return pages.map(({ marks }, index) => {
    const { top, bottom } = insideFurniture(frameOf(paper, index + 1), paper);
    const foots = [...flattened(marks)].flatMap((mark) => {
      const box = boxOf(mark);
      return box !== null && box[3] < bottom + 1 ? [box[3]] : [];
    });
    return (bottom - Math.max(top, ...foots)) / (bottom - top);
  });
}

describe("drawings fill their pages", () => {
  it.each(eachWithEach(paperNames, withPlates))("%s: no page of them is more than a third white", (_, name, head) => {
    const paper = paperNamed(name);
    const [, ...pages] = pagesOn(paper, bookWith(head, ["reading", "drawings"]));
    expect(Math.max(...whiteAtFoot(pages.slice(0, -1), paper))).toBeLessThan(1 / 3);
  });

  it("a4: three plates, the head and the trains stand on three pages", () => {
    const [head] = readyHeads;
    expect(pagesOn(paperNamed("a4"), bookWith(head as Head, ["drawings"], 400)).length).toBe(1 + 3);
  });

  it.each(eachWithEach(paperNames, withPlates))(
    "the worked example is drawn larger than anything else on its page is high: %s",
    (_, name, head) => {
      const [, page] = pagesOn(paperNamed(name), bookWith(head, ["reading"]));
      const heights = (page?.marks ?? []).flatMap((mark) => (mark.kind === "group" ? [heightOf(mark)] : []));
      const [plate] = platesOn(page === undefined ? [] : [page]);
      expect(plate === undefined ? 0 : heightOf(plate)).toBe(Math.max(...heights));
    },
  );
});

function heightOf({ marks }: GroupMark): number {
  const boxes = [...flattened(marks)].flatMap((mark) => [boxOf(mark) ?? []].filter((box) => box.length === 4));
  return Math.max(...boxes.map((box) => box[3] ?? 0)) - Math.min(...boxes.map((box) => box[1] ?? 0));
}
