import {
  type Flats,
  formatAngle,
  type Head,
  InputError,
  type LengthUnit,
  type PlannedJob,
  revolutions,
} from "../../src/index.ts";
import {
  arcUpTo,
  asNearAsRead,
  cautionItemsBesides,
  eachPlaceItem,
  flatMeasures,
  flatsCautions,
  flatsHeading,
  flatsHow,
  flatsItems,
  type LengthWords,
  lengthsIn,
  offByItems,
  shortAngle,
  withoutHeadCautions,
} from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book, PanelBlock, Part } from "./blocks.ts";
import { runningOf, runningWithoutHead } from "./book.ts";
import type { FigureBlock } from "./figure-blocks.ts";
import { itemList } from "./item-list.ts";
import { titleOf } from "./job.ts";
import { drawings, markOf, ruleOf, setUp } from "./job-setting.ts";
import { positionsTable } from "./place-table.ts";
import { keyedHead } from "./plate-keys.ts";
import { startAt } from "./start-at.ts";
import { ratioOrNone } from "./words.ts";

/** What the sheet of flats is made from. */
export interface FlatsSheet {
  readonly flats: Flats;
  /** The head that turns the work, and its plan of as many divisions as there are flats; null where each flat is set by its degrees. */
  readonly on: { readonly head: Head; readonly plan: PlannedJob } | null;
  /** Whether lengths stand in inches, as the person works. */
  readonly inches: boolean;
}

/** Writes the sheet of flats: the cut and the measures on a drawing, the move on the head, every flat with a box to tick. */
export function flatsBookOf({ flats, on, inches }: FlatsSheet, edition: Edition): Book {
  checkPlan(flats, on?.plan);
  const unit = inches ? "in" : "mm";
  const title = flatsHeading(flats, unit);
  const turnedBy = on === null ? "by degrees" : on.head.name;
  return {
    title: turnedBy,
    fileTitle: `${title}: ${turnedBy}`,
    subject: on === null ? `${title}, by degrees` : `${title}, on ${ratioOrNone(on.head)}`,
    digest: edition.digest,
    running:
      on === null
        ? runningWithoutHead(
            [`${flats.sides} flats`, `${shortAngle(revolutions(1, flats.sides))} apart`],
            { by: title, rule: byDegreesRule },
            edition,
          )
        : runningOf(keyedHead(on.head), edition),
    sheetsStandAlone: false,
    parts: [on === null ? byDegrees(flats, title, unit) : onHead(flats, title, unit, on)],
  };
}

/** A plan of another count would be followed without a sign that it is wrong. */
function checkPlan({ sides }: Flats, plan: PlannedJob | undefined): void {
  if (plan === undefined || ("divisions" in plan.target && plan.target.divisions === sides)) return;
  const problem = `is of ${titleOf(plan.target)}, but there are ${sides} flats; plan the head for ${sides} divisions`;
  throw new InputError([{ code: "conflict", place: "plan", problem }]);
}

/** How far the flat is off that is furthest. */
function worstOf({ way, worstArcSeconds }: PlannedJob): string {
  return worstArcSeconds === 0 && way.by === "ring" ? asNearAsRead : `no flat over ${arcUpTo(worstArcSeconds)} off`;
}

const byDegreesRule = "Each flat by its own angle from the first";

function onHead(flats: Flats, title: string, unit: LengthUnit, { head, plan }: NonNullable<FlatsSheet["on"]>): Part {
  const { way, exact, cautions } = plan;
  return {
    id: "flats",
    title: `${title}${exact ? "" : ", not exact"}`,
    mark: markOf(way),
    rule: ruleOf(plan, head),
    ...(exact ? {} : { warning: `Not exact: ${worstOf(plan)}.` }),
    blocks: [
      ...work(flats, unit),
      ...setUp(way, head),
      // The large figures say what a plate shows; a train is to be seen.
      ...("gears" in way.setting ? drawings(way, head) : []),
      itemList([
        startAt("flat 1", plan, head),
        eachPlaceItem(way, head),
        ...flatsCautions,
        ...cautionItemsBesides(cautions),
        ...offByItems(plan),
      ]),
      positionsTable(plan, head, "flat"),
      ...toMeasure(flats, unit),
    ],
  };
}

function byDegrees(flats: Flats, title: string, unit: LengthUnit): Part {
  return {
    id: "flats",
    title,
    rule: byDegreesRule,
    blocks: [
      ...work(flats, unit),
      itemList([...flatsCautions, ...withoutHeadCautions]),
      {
        kind: "table",
        title: { text: "Positions", anchor: "positions" },
        folds: true,
        summary: "Flats by their degrees",
        columns: [
          { head: "", align: "center" },
          { head: "flat", align: "right", strong: true },
          { head: "set at", align: "right", strong: true },
        ],
        rows: Array.from({ length: flats.sides }, (_, index) => ({
          cells: [{ text: "", box: true }, { text: String(index + 1) }, { text: angleAt(flats, index) }],
        })),
      },
      ...toMeasure(flats, unit),
    ],
  };
}

/** How far round from the first so many flats on lie. */
function angleAt({ sides }: Flats, flats: number): string {
  return formatAngle(revolutions(flats, sides), 1);
}

/** What is cut: large figures, the drawing with every measure, and what these leave out. */
function work(flats: Flats, unit: LengthUnit): readonly Block[] {
  const length = lengthsIn(unit);
  return [
    figures(flats, length),
    drawing(flats, length),
    itemList(flatsItems(flats, unit).filter(({ inFigures }) => !inFigures)),
  ];
}

function figures({ sides, blank, depth, acrossFlats }: Flats, { bare, unit }: LengthWords): PanelBlock {
  return {
    kind: "panel",
    items: [
      { head: "BLANK", figure: bare(blank), under: `${unit}, diameter` },
      { head: "DEPTH OF CUT", figure: bare(depth), under: `${unit}, from the round` },
      sides % 2 === 0
        ? { head: "ACROSS FLATS", figure: bare(acrossFlats), under: `${unit}, flat to flat` }
        : { head: "FLAT FROM AXIS", figure: bare(acrossFlats / 2), under: unit },
      { head: "FLATS", figure: String(sides), under: "all alike" },
    ],
  };
}

/** Of the height of a page, so that all stands on one. */
const drawingShare = 0.4;

function drawing(flats: Flats, { bare }: LengthWords): FigureBlock {
  const { sides, acrossFlats, blank, depth, flatWidth, flatToRound, flatToCorner } = flats;
  const opposite = flatToCorner ?? acrossFlats;
  return {
    kind: "figure",
    share: drawingShare,
    figure: {
      type: "flats",
      sides,
      acrossFlats,
      blank,
      flatWidth,
      opposite,
      says: {
        blank: bare(blank),
        depth: bare(depth),
        flatWidth: bare(flatWidth),
        flatToRound: bare(flatToRound),
        opposite: bare(opposite),
      },
    },
    alt: `The work from its end: ${sides} flats on round stock of ${bare(blank)}, each ${bare(flatWidth)} wide and ${bare(depth)} deep`,
    caption:
      "Seen from the side where the numbers run clockwise, flat 1 at the cutter; the work turns as the arrow shows. Grey is cut away.",
  };
}

function toMeasure(flats: Flats, unit: LengthUnit): readonly Block[] {
  return [
    {
      kind: "blanks",
      text: `${flatsHow} True and as measured:`,
      limits: unit === "in" ? "inches" : "millimetres",
      labels: flatMeasures(flats, unit),
    },
    { kind: "ruled", text: "Notes: part, material, cutter, date", lines: 3, least: 1 },
  ];
}
