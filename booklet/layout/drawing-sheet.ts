import type { DrawingSheet, PlateFigure, TemplateFigure } from "../content/figure-blocks.ts";
import type { Mark, Page, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import { mm } from "./paper.ts";
import { plateMarks } from "./plate-drawing.ts";
import { plateOfRim, rimAround } from "./plate-place.ts";
import { scaleMarks, scalesHeight, templateMarks, templateSize } from "./template-drawing.ts";

const margin = mm(8);
const least = 9;
const titleStyle: Style = { weight: "bold", size: 14 };
const lineStyle: Style = { weight: "regular", size: least };
const leading = 1.35;
/** Wide enough for words to be read beside a small plate. */
const leastWidth = mm(90);

/** Sets a drawing on a sheet of its own size. */
export function drawingPage({ title, lines, figure }: DrawingSheet, measure: Measure): Page {
  const drawn = figure.type === "template" ? template(figure, measure) : armsSet(figure, measure);
  const width = Math.max(leastWidth, drawn.width);
  const broken = (text: string, style: Style) => brokenIntoLines(measure, text, style, width).map((line) => ({ line, style }));
  let y = margin;
  const words = [...broken(title, titleStyle), ...lines.flatMap((line) => broken(line, lineStyle))].map(({ line, style }) => {
    y += style.size * leading;
    return setText(measure, line, style, margin, y - style.size * (leading - 1));
  });
  const top = y + 8;
  return {
    width: width + 2 * margin,
    height: top + drawn.height + margin,
    label: title,
    headwords: "",
    marks: [...words, ...drawn.marks(margin, top, width)],
  };
}

interface Drawn {
  readonly width: number;
  readonly height: number;
  marks(left: number, top: number, width: number): readonly Mark[];
}

function template(figure: TemplateFigure, measure: Measure): Drawn {
  return {
    ...templateSize(figure, least, measure),
    marks: (left, top, width) => templateMarks(figure, { left, top, width, least }, measure),
  };
}

function armsSet(figure: PlateFigure & { readonly diameters: readonly number[] }, measure: Measure): Drawn {
  const rim = rimAround(mm(Math.max(...figure.diameters)));
  const placed = (left: number, top: number, width: number) =>
    plateOfRim(figure, { left, top, width, least, counted: true }, rim, measure);
  const { width: wide, top, bottom } = placed(0, 0, 0);
  return {
    width: wide,
    height: bottom - top + scalesHeight,
    marks: (left, at, width) => {
      const plate = placed(left, at, width);
      return [...plateMarks(figure, plate, measure), ...scaleMarks({ left, top: plate.bottom + 10, width, least }, measure)];
    },
  };
}
