import type { Part, Running } from "../content/blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Frame, Paper } from "./paper.ts";

const quiet = 0.25;

/** What stands at the head and foot of every page, and the frame that it leaves. */
export interface Furniture {
  readonly marks: readonly Mark[];
  readonly frame: Frame;
}

/** The space that head and foot take, the same on every page. */
export function insideFurniture(frame: Frame, paper: Paper): Frame {
  return { ...frame, top: frame.top + paper.text * 1.9 + 8, bottom: frame.bottom - paper.note * 2.7 - 6 };
}

/** What the head of a page says of this page. */
export interface SheetHead {
  readonly part: Pick<Part, "title" | "mark">;
  /** The owner's name for the head. */
  readonly title: string;
  /** First and last row of the page, or nothing. */
  readonly headwords: string;
}

/** Sets head and foot of a page. */
export function furniture(
  running: Running,
  sheet: SheetHead,
  page: string,
  frame: Frame,
  paper: Paper,
  measure: Measure,
): Mark[] {
  return [...headOf(running, sheet, frame, paper, measure), ...footOf(running, page, frame, paper, measure)];
}

function headOf(running: Running, { part, title, headwords }: SheetHead, frame: Frame, paper: Paper, measure: Measure): Mark[] {
  const large: Style = { weight: "bold", size: paper.text * 1.35 };
  const small: Style = { weight: "regular", size: paper.note, grey: quiet };
  const base = frame.top + large.size;
  const ratio = setText(measure, running.ratio, large, frame.left, base);
  const marks: Mark[] = [ratio];
  let right = frame.right;
  if (part.mark) {
    const mark = setText(measure, part.mark, { ...large, grey: 1 }, right - 5, base, "right");
    marks.push(
      { kind: "band", x: mark.x - 5, y: base - large.size * 0.95, width: mark.width + 10, height: large.size * 1.3, grey: 0 },
      mark,
    );
    right = mark.x - 14;
  }
  if (headwords !== "") {
    const words = setText(measure, headwords, large, right, base, "right");
    marks.push(words);
    right = words.x - 14;
  }
  const name = shortened(measure, title, small, right - ratio.x - ratio.width - 14);
  marks.push(setText(measure, name, small, right, base, "right"));
  const y = frame.top + paper.text * 1.9;
  marks.push({ kind: "rule", from: [frame.left, y], to: [frame.right, y], width: 1.2 });
  return marks;
}

function footOf(running: Running, page: string, frame: Frame, paper: Paper, measure: Measure): Mark[] {
  const style: Style = { weight: "regular", size: paper.note, grey: quiet };
  const first = frame.bottom - paper.note * 1.45;
  const second = frame.bottom - paper.note * 0.2;
  const width = frame.right - frame.left;
  const folio = setText(measure, page, { weight: "bold", size: paper.note + 1 }, frame.right, second, "right");
  const rule = setText(measure, running.rule, { ...style, weight: "semibold" }, frame.left, second);
  const room = width - folio.width - rule.width - 28;
  const edition = measure(running.edition, style) <= room ? running.edition : running.editionInShort;
  const plates = measure(running.plates, style) <= width ? running.plates : running.platesInShort;
  return [
    { kind: "rule", from: [frame.left, first - paper.note * 1.15], to: [frame.right, first - paper.note * 1.15], width: 0.5 },
    setText(measure, shortened(measure, plates, style, width), style, frame.left, first),
    rule,
    setText(measure, shortened(measure, edition, style, room), style, folio.x - 14, second, "right"),
    folio,
  ];
}

/** Cuts a line to the width given, with a mark that it was cut. */
function shortened(measure: Measure, text: string, style: Style, width: number): string {
  if (measure(text, style) <= width) return text;
  const room = width - measure("…", style);
  if (room < style.size * 2) return "";
  const [line = ""] = brokenIntoLines(measure, text, style, room);
  return `${line}…`;
}
