import { type Caution, type Head, type PlannedJob, type RepairOnHead, type SpurGear, toothThicknessAt } from "../../src/index.ts";
import {
  blankItems,
  cautionItemsBesides,
  centringItems,
  checksInWords,
  conditionItems,
  cutterItems,
  cuttingCautions,
  eachPlaceItem,
  errorAtPitch,
  gearInShort,
  heatCautions,
  type LengthWords,
  lengthsIn,
  noteWords,
  offByItems,
  sawItems,
  teethInRuns,
  thinItems,
} from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book } from "./blocks.ts";
import { runningOf } from "./book.ts";
import type { GearFigure } from "./figure-blocks.ts";
import { itemList } from "./item-list.ts";
import { drawings, markOf, ruleOf, setUp } from "./job-setting.ts";
import { keyedHead } from "./plate-keys.ts";
import { plannedOn } from "./repair-head.ts";
import { repairMoves } from "./repair-moves.ts";
import { ratioOrNone } from "./words.ts";

/** What the sheet of a repair is made from. */
export interface RepairSheet {
  readonly job: RepairOnHead;
  /** The head that the job is for. */
  readonly head: Head;
  /** Whether lengths stand in inches, as the person works. */
  readonly inches: boolean;
  /** Whether the saw reckoned with is one at hand. */
  readonly sawGiven: boolean;
}

/**
 * Writes the sheet of a repair: what is set and moved first, then what is made and measured.
 *
 * @throws {@link InputError} when the head is not the one that the job was worked out for.
 */
export function repairBookOf({ job, head, inches, sawGiven }: RepairSheet, edition: Edition): Book {
  const length = lengthsIn(inches ? "in" : "mm");
  const plan = plannedOn(job, head);
  return {
    title: head.name,
    fileTitle: `Repair of ${teethInRuns(job.repair.plan.damaged)} of ${job.gear.teeth}: ${head.name}`,
    subject: `Repair of ${teethInRuns(job.repair.plan.damaged)} of ${gearInShort(job.gear)} on ${ratioOrNone(head)}`,
    digest: edition.digest,
    running: runningOf(keyedHead(head), edition),
    sheetsStandAlone: false,
    parts: [
      {
        id: "repair",
        title: `Repair: ${teethInRuns(job.repair.plan.damaged)} of ${job.gear.teeth}`,
        mark: markOf(plan.way),
        rule: ruleOf(plan, head),
        blocks: [
          ...settingBlocks(job, plan, head, length),
          ...moveBlocks(job, plan, head),
          ...makingBlocks(job, length, sawGiven),
          { kind: "ruled", text: "Notes: machine, material, filler, cutter, date", lines: 5, least: 2 },
        ],
      },
    ],
  };
}

/** Of the height of a page, for the plate of a geared repair. */
const smallShare = 0.4;

function settingBlocks(
  { gear }: RepairOnHead,
  { way, exact, worstArcSeconds }: PlannedJob,
  head: Head,
  length: LengthWords,
): Block[] {
  return [
    {
      kind: "paragraph",
      text: `Gear of ${gearInShort(gear)}. Outside ${length(gear.tipDiameter)}, depth ${length(gear.wholeDepth)}.`,
    },
    ...setUp(way, head),
    ...(way.by === "moves" && "gears" in way.setting ? drawings(way, head, smallShare) : []),
    ...(exact
      ? []
      : [
          {
            kind: "paragraph",
            style: "strong",
            text: `Not exact: no space to be cut is off by over ${errorAtPitch(worstArcSeconds, gear, length)}.${way.by === "moves" ? " Go no further than PROVE." : ""}`,
          } as const,
        ]),
  ];
}

/** What the cautions of every repair say already. */
const saidOfEveryRepair: ReadonlySet<Caution["code"]> = new Set(["lock-spindle", "stop-cutter", "manual-first"]);

function moveBlocks({ gear, repair: { plan }, moves }: RepairOnHead, job: PlannedJob, head: Head): Block[] {
  const eachPlace = eachPlaceItem(job.way, head);
  return [
    {
      kind: "figure",
      figure: figureOf(gear, plan),
      alt: `The gear from the side where its numbers run clockwise: ${teethInRuns(plan.damaged)} hatched, the start space ${plan.startSpace} marked with an arrow`,
      caption: `Seen from the side where the numbers run clockwise; the work turns as the arrow in the wheel shows, so that teeth and spaces come to the cutter in order. Hatched or black: built up. Space n follows tooth n.`,
    },
    repairMoves(job, moves, plan, head),
    { kind: "heading", text: "At the machine" },
    itemList([
      { term: "START", text: `A sound space: set the cutter in it${scalesToSet(head)}. Mark tooth 1.` },
      {
        term: "PROVE",
        text: "Sound too. Go there first, cutter stopped: it must drop in. Then back past START, and up to it again.",
      },
      { ...eachPlace, text: `${eachPlace.text} A sound flank guides: do not cut it.` },
      ...cautionItemsBesides(job.cautions.filter(({ code }) => !saidOfEveryRepair.has(code))),
      ...offByItems(job),
      ...cuttingCautions,
    ]),
  ];
}

/** The scales that the head has, to be set to the first line of the table. */
function scalesToSet({ ring, dial }: Head): string {
  const names = [...(ring ? ["ring"] : []), ...(dial ? ["dial"] : [])];
  return names.length === 0 ? "" : `, ${names.join(" and ")} to its line in the table`;
}

/** Diameters of the flank at which the drawn tooth has its points. */
const flankPoints = 4;

function figureOf(gear: SpurGear, plan: RepairOnHead["repair"]["plan"]): GearFigure {
  const start = Math.max(gear.baseDiameter, gear.rootDiameter);
  const flank = Array.from({ length: flankPoints + 1 }, (_, index) => start + ((gear.tipDiameter - start) * index) / flankPoints);
  const half = (diameter: number) => toothThicknessAt(gear, Math.min(diameter, gear.tipDiameter)) / diameter / (2 * Math.PI);
  return {
    type: "gear",
    teeth: gear.teeth,
    damaged: plan.damaged,
    startSpace: plan.startSpace,
    cuts: plan.spaces.map(({ toothSpace }) => toothSpace),
    proofSpace: plan.proofSpace.toothSpace,
    profile: [
      { radius: gear.rootDiameter / gear.tipDiameter, half: half(start) },
      ...flank.map((diameter) => ({ radius: diameter / gear.tipDiameter, half: half(diameter) })),
    ],
  };
}

function makingBlocks(job: RepairOnHead, length: LengthWords, sawGiven: boolean): Block[] {
  const { gear, repair } = job;
  return [
    { kind: "heading", text: "Before any heat" },
    itemList(heatCautions),
    { kind: "heading", text: "Blank, saw and cutter" },
    itemList([
      ...blankItems(repair, length),
      ...sawItems(repair, length, sawGiven),
      ...cutterItems(gear),
      ...centringItems(job, length),
    ]),
    { kind: "heading", text: "Check each rebuilt tooth before calling it done" },
    ...blankBlocks(job, length),
    itemList([
      ...conditionItems(repair),
      ...thinItems(repair, length),
      ...repair.warnings.map((note) => ({ term: "Take care", text: noteWords(note, length) })),
    ]),
  ];
}

function blankBlocks({ gear, repair }: RepairOnHead, length: LengthWords): Block[] {
  return checksInWords(gear, repair, length).map(({ what, limits, places }) => ({
    kind: "blanks",
    text: `${what}:`,
    limits,
    labels: places,
  }));
}
