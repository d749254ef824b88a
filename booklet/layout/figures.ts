import type { FigureBlock, PlateFigure, TemplateFigure, TrainFigure } from "../content/figure-blocks.ts";
import { boltCircleHeight, boltCircleMarks } from "./bolt-circle-drawing.ts";
import { flatsHeight, flatsMarks } from "./flats-drawing.ts";
import { gearHeight, gearMarks } from "./gear-drawing.ts";
import { headHeight, headMarks, headSide } from "./head-drawing.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import { frameOf, mm, type Paper } from "./paper.ts";
import { plateMarks } from "./plate-drawing.ts";
import { leastHeight, placedPlate } from "./plate-place.ts";
import { insideFurniture } from "./running.ts";
import { scaleHeight, scaleMarks } from "./scale-drawing.ts";
import { type Galley, type Slug, space } from "./slugs.ts";
import { templateMarks, templateSize } from "./template-drawing.ts";
import { trainHeight, trainMarks } from "./train-drawing.ts";

/** Heights of drawings before they grow to fill their page: of the head's plate in points, of a train's largest gear in parts of the width. */
const leastHead = 190;
const leastTrain = 0.13;
/** Beside a template on its page: a caption of a few lines, in lines of text. */
const roomForWords = 6;
/** Of the height of a page, at most, of a plate that has the page to itself. */
const ofPage = 0.62;

/**
 * Sets a drawing with its caption; both stay on one page.
 *
 * @param grown - By how much it is larger than it need be, where its page has the room.
 */
export function figureGalley(block: FigureBlock, width: number, paper: Paper, measure: Measure, grown = 1): Galley {
  const style: Style = { weight: "regular", size: paper.note, grey: 0.25 };
  const height = style.size * 1.3;
  const drawn = drawing(block, width, paper, measure, grown);
  const caption = brokenIntoLines(measure, drawn.instead ?? block.caption, style, width).map(
    (line, index, all): Slug => ({
      height,
      keepWithNext: index < all.length - 1,
      marks: (left, top) => [setText(measure, line, style, left, top + height * 0.74)],
    }),
  );
  return {
    role: "Figure",
    alt: block.alt,
    head: [],
    slugs: [
      { height: drawn.height, keepWithNext: caption.length > 0, marks: drawn.marks },
      ...caption,
      space(paper.text * 0.6 * paper.closeness.gap),
    ],
  };
}

interface Drawn {
  readonly height: number;
  /** What is said in place of the caption, where it cannot be drawn on this paper. */
  readonly instead?: string;
  marks(left: number, top: number): readonly Mark[];
}

function drawing({ figure, share = 1 }: FigureBlock, width: number, paper: Paper, measure: Measure, grown: number): Drawn {
  const larger = paper.closeness.drawing * grown;
  const room = { width, tallest: paper.height * share * ofPage * larger, least: paper.note };
  switch (figure.type) {
    case "gear": {
      const height = gearHeight(figure, width, paper);
      return { height, marks: (left, top) => gearMarks(figure, { left, top, width, height }, measure) };
    }
    case "train":
      return trainsDrawn([figure], width, width * leastTrain * larger, paper, measure);
    case "trains":
      return trainsDrawn(figure.trains, width, width * leastTrain * larger, paper, measure);
    case "head": {
      const side = headSide(width, leastHead * larger);
      return {
        height: headHeight(side),
        marks: (left, top) => headMarks(figure, { left, top, width, side, least: paper.note }, measure),
      };
    }
    case "template":
      return templateDrawn(figure, width, paper, measure);
    case "flats": {
      const height = flatsHeight(figure, room, measure);
      return { height, marks: (left, top) => flatsMarks(figure, { ...room, left, top }, measure) };
    }
    case "bolt-circle": {
      const height = boltCircleHeight(figure, room);
      return { height, marks: (left, top) => boltCircleMarks(figure, { ...room, left, top }, measure) };
    }
    case "scale": {
      const height = scaleHeight(figure, room, measure);
      return { height, marks: (left, top) => scaleMarks(figure, { ...room, left, top }, measure) };
    }
    case "plate":
      return plateDrawn(figure, Math.min(leastHeight(figure), paper.height * share * ofPage) * larger, width, paper, measure);
  }
}

function plateDrawn(figure: PlateFigure, height: number, width: number, paper: Paper, measure: Measure): Drawn {
  const placed = (left: number, top: number) =>
    placedPlate(figure, { left, top, width, height, least: paper.note, counted: true }, measure);
  const { top, bottom } = placed(0, 0);
  return {
    height: bottom - top,
    marks: (left, top) => plateMarks(figure, placed(left, top), measure),
  };
}

/** Between two trains that stand side by side, in points. */
const besideTrain = 14;

/** Trains side by side, each in as much of the width. */
function trainsDrawn(
  trains: readonly TrainFigure[],
  whole: number,
  tallest: number,
  { note: least }: Paper,
  measure: Measure,
): Drawn {
  const width = (whole - besideTrain * (trains.length - 1)) / trains.length;
  return {
    height: Math.max(...trains.map((train) => trainHeight(train, { width, tallest, least }, measure))),
    marks: (left, top) =>
      trains.flatMap((train, index) =>
        trainMarks(train, { left: left + index * (width + besideTrain), top, width, tallest, least }, measure),
      ),
  };
}

/** A template at true size, or where the paper is too small for it, where else it can be had. */
function templateDrawn(figure: TemplateFigure, width: number, paper: Paper, measure: Measure): Drawn {
  const size = templateSize(figure, paper.note, measure);
  const { top, bottom } = insideFurniture(frameOf(paper, 1), paper);
  if (size.width <= width && size.height + roomForWords * paper.text <= bottom - top)
    return {
      height: size.height,
      marks: (left, at) => templateMarks(figure, { left, top: at, width, least: paper.note }, measure),
    };
  const wide = Math.ceil(size.width / mm(1));
  return {
    height: 0,
    instead: `At true size this face is drawn ${wide} mm wide, too large for this paper: take a larger one${figure.onlyHere ? "" : ", or the drawing as a file"}.`,
    marks: () => [],
  };
}
