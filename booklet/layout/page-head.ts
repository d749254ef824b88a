import type { Part, Running } from "../content/blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { type Frame, isForWall, type Paper } from "./paper.ts";

/** What the head of a page says of this page. */
export interface PageHead {
  readonly part: Pick<Part, "title" | "mark">;
  /** The owner's name for the head. */
  readonly title: string;
  /** First and last row of the page, or nothing. */
  readonly headwords: string;
}

/** 16 minutes of arc at 2 m, figures being 0.7 of their size: the sheet for a head and its counts is found from across the shop. */
const fromAcross = 38;
const apart = 14;

/** The height that the head of a page takes, the same on every page. */
export function pageHeadHeight(paper: Paper): number {
  return lineAt(paper) + 8;
}

/** Where the line under it stands. */
function lineAt(paper: Paper): number {
  return isForWall(paper) ? fromAcross * 0.98 + paper.note * 1.7 : paper.text * 1.9;
}

/** Sets the head of a page: the ratio, the counts on it, what warns, and whose head it is. */
export function pageHead(running: Running, head: PageHead, frame: Frame, paper: Paper, measure: Measure): Mark[] {
  const y = frame.top + lineAt(paper);
  const rule: Mark = { kind: "rule", from: [frame.left, y], to: [frame.right, y], width: 1.2 };
  const marks = isForWall(paper) ? twoLines(running, head, frame, paper, measure) : oneLine(running, head, frame, paper, measure);
  return [...marks, rule];
}

function oneLine(running: Running, head: PageHead, frame: Frame, paper: Paper, measure: Measure): Mark[] {
  const large: Style = { weight: "bold", size: paper.text * 1.35 };
  const base = frame.top + large.size;
  const ratio = setText(measure, `${running.ratio}   ${running.turn}`, large, frame.left, base);
  const { marks, left } = atRight(head, large, large, frame.right, base, measure);
  const small = quiet(paper);
  const room = left - ratio.x - ratio.width - apart;
  const name = [head.title, ...running.gears].find((text) => measure(text, small) <= room) ?? "";
  return [ratio, ...marks, setText(measure, name, small, left, base, "right")];
}

/** Ratio and counts to be read from across the shop; under them the name, and the gears in full where there is room. */
function twoLines(running: Running, head: PageHead, frame: Frame, paper: Paper, measure: Measure): Mark[] {
  const middle: Style = { weight: "bold", size: paper.text * 1.35 };
  const { large, turn } = largest(running, head, middle, frame.right - frame.left, measure);
  const base = frame.top + fromAcross * 0.75;
  const ratio = setText(measure, running.ratio, large, frame.left, base);
  const { marks } = atRight(head, large, middle, frame.right, base, measure);
  const name = turn === "" ? `${running.turn}   ${head.title}` : head.title;
  const under = frame.top + fromAcross * 0.98 + paper.note;
  return [
    ratio,
    ...(turn === "" ? [] : [setText(measure, turn, middle, ratio.x + ratio.width + apart, base)]),
    ...marks,
    ...underRatio(name, running.gears, frame, under, quiet(paper), measure),
  ];
}

/** As large as leaves room for what stands beside it; what a turn comes to goes under it before that. */
function largest({ ratio, turn }: Running, { part, headwords }: PageHead, middle: Style, width: number, measure: Measure) {
  const large: Style = { weight: "bold", size: fromAcross };
  const needed = measure(ratio, large) + measure(headwords, large);
  const room = width - (part.mark ? measure(part.mark, middle) + apart + 10 : 0) - 2 * apart;
  const fits = needed + measure(turn, middle) <= room;
  return { large: { ...large, size: fromAcross * Math.min(1, room / needed) }, turn: fits ? turn : "" };
}

function underRatio(
  name: string,
  gears: Running["gears"],
  { left, right }: Frame,
  y: number,
  style: Style,
  measure: Measure,
): readonly Mark[] {
  const fitting = gears.find((text) => measure(name, style) + apart + measure(text, style) <= right - left);
  const atLeft = fitting === undefined ? [] : [setText(measure, name, style, left, y)];
  return [...atLeft, setText(measure, fitting ?? gears.at(-1) ?? "", style, right, y, "right")];
}

/** The mark that warns, and before it the counts; tells where they begin. */
function atRight({ part, headwords }: PageHead, large: Style, middle: Style, right: number, base: number, measure: Measure) {
  const marks: Mark[] = [];
  let left = right;
  if (part.mark) {
    const mark = setText(measure, part.mark, { ...middle, grey: 1 }, left - 5, base, "right");
    const [y, height] = [base - middle.size * 0.95, middle.size * 1.3];
    marks.push({ kind: "band", x: mark.x - 5, y, width: mark.width + 10, height, grey: 0 }, mark);
    left = mark.x - apart;
  }
  if (headwords !== "") {
    const words = setText(measure, headwords, large, left, base, "right");
    marks.push(words);
    left = words.x - apart;
  }
  return { marks, left };
}

function quiet(paper: Paper): Style {
  return { weight: "regular", size: paper.note, grey: 0.25 };
}
