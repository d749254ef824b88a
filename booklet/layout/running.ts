import type { Running } from "../content/blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import { type PageHead, pageHead, pageHeadHeight } from "./page-head.ts";
import type { Frame, Paper } from "./paper.ts";

const quiet = 0.25;

/** The space that head and foot take, the same on every page. */
export function insideFurniture(frame: Frame, paper: Paper): Frame {
  return { ...frame, top: frame.top + pageHeadHeight(paper), bottom: frame.bottom - paper.note * 2.7 - 6 };
}

/** Sets head and foot of a page. */
export function furniture(running: Running, head: PageHead, page: string, frame: Frame, paper: Paper, measure: Measure): Mark[] {
  return [...pageHead(running, head, frame, paper, measure), ...footOf(running, page, frame, paper, measure)];
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
