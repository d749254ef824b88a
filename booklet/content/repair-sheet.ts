import { type Head, type RepairOnHead, type SpurGear, toothThicknessAt } from "../../src/index.ts";
import { cutterItems } from "../../src/words/gear/cutter-items.ts";
import { gearInShort } from "../../src/words/gear/gear-items.ts";
import { noteWords } from "../../src/words/gear/note-words.ts";
import { checksInWords, conditionItems } from "../../src/words/gear/rebuilt-check-words.ts";
import { cuttingCautions, heatCautions } from "../../src/words/gear/repair-cautions.ts";
import { blankItems, centringItems, errorAtPitch, sawItems, teethInRuns, thinItems } from "../../src/words/gear/repair-items.ts";
import type { Item } from "../../src/words/item.ts";
import { type LengthWords, lengthsIn } from "../../src/words/lengths.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book, GearFigure } from "./blocks.ts";
import { runningOf } from "./book.ts";
import { inWords, type PanelItem, panel, settingMarks } from "./job-setting.ts";
import { repairMoves } from "./repair-moves.ts";
import { ratioInWords } from "./words.ts";

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

/** Writes the sheet of a repair: what is set and moved first, then what is made and measured. */
export function repairBookOf({ job, head, inches, sawGiven }: RepairSheet, edition: Edition): Book {
  const length = lengthsIn(inches ? "in" : "mm");
  const mark = markOf(job);
  return {
    title: head.name,
    subject: `Repair of ${teethInRuns(job.repair.plan.damaged)} of ${gearInShort(job.gear)} on a worm ratio of ${ratioInWords(head.wormRatio)}`,
    digest: edition.digest,
    running: runningOf(head, edition),
    sheetsStandAlone: false,
    parts: [
      {
        id: "repair",
        title: `Repair: ${teethInRuns(job.repair.plan.damaged)} of ${job.gear.teeth}`,
        ...(mark === null ? {} : { mark }),
        blocks: [
          ...settingBlocks(job, head, length),
          ...moveBlocks(job, head),
          ...makingBlocks(job, length, sawGiven),
          { kind: "ruled", text: "Notes: machine, material, filler, cutter, date", lines: 5, least: 2 },
        ],
      },
    ],
  };
}

function markOf({ setting }: RepairOnHead): string | null {
  return setting === null ? "NOT EXACT" : (settingMarks[setting.method] ?? null);
}

function settingBlocks(job: RepairOnHead, head: Head, length: LengthWords): Block[] {
  const { gear, setting, near } = job;
  const [best] = near;
  return [
    {
      kind: "paragraph",
      text: `Gear of ${gearInShort(gear)}. Outside ${length(gear.tipDiameter)}, depth ${length(gear.wholeDepth)}.`,
    },
    { kind: "panel", items: panelOf(job, head) },
    ...(setting === null ? [] : inWords(setting)),
    ...(best === undefined
      ? []
      : [
          ...(best.by === "moves"
            ? inWords(best.setting)
            : [
                strong(
                  `Set every space by itself, counted from START; no error adds to the next.${best.circle === null ? "" : " Plate stop pin IN. No gears."}`,
                ),
              ]),
          strong(
            `Not exact: no space to be cut is off by over ${errorAtPitch(best.worstArcSeconds, gear, length)}.${best.by === "moves" ? " Count from START only, and no further than PROVE: the error grows with every move." : ""}`,
          ),
        ]),
  ];
}

function strong(text: string): Block {
  return { kind: "paragraph", style: "strong", text };
}

function panelOf({ setting, near: [near] }: RepairOnHead, head: Head): readonly PanelItem[] {
  if (setting !== null) return panel(head, setting);
  if (near?.by === "moves") return panel(head, near.setting);
  if (near?.circle) {
    const face = near.circle.face === null ? "" : ` ${near.circle.face}`;
    return [{ head: "CIRCLE", figure: String(near.circle.holes), under: `plate ${near.circle.plate}${face}: nearest holes` }];
  }
  return [{ head: "SET BY", figure: near?.by === "ring" ? "ring" : "dial", under: "from one zero, at START" }];
}

function moveBlocks(job: RepairOnHead, head: Head): Block[] {
  const {
    gear,
    repair,
    setting,
    near: [near],
  } = job;
  const { plan } = repair;
  const byScale = setting === null ? near?.by === "dial" || near?.by === "ring" : setting.method === "dial";
  return [
    {
      kind: "figure",
      figure: figureOf(gear, plan),
      alt: `The gear from the side where its numbers run clockwise: ${teethInRuns(plan.damaged)} hatched, the start space ${plan.startSpace} marked with an arrow`,
      caption: `Seen from the side where the numbers run clockwise; the work turns as the arrow in the wheel shows, so that teeth and spaces come to the cutter in order. Hatched or black: built up. Space n follows tooth n.`,
    },
    repairMoves(job, head),
    { kind: "heading", text: "At the machine" },
    list([
      { term: "START", text: `A sound space: set the cutter in it${scalesToSet(head)}. Mark tooth 1.` },
      {
        term: "PROVE",
        text: "Sound too. Go there first, cutter stopped: it must drop in. Then back past START, and up to it again.",
      },
      {
        term: "Each cut",
        text: `Unlock, move${byScale ? "" : ", pin home"}, lock, cut, tick. One way only: past the ${byScale ? "mark" : "hole"}, back half a turn and come up again. A sound flank guides: do not cut it.`,
      },
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
    list(heatCautions),
    { kind: "heading", text: "Blank, saw and cutter" },
    list([
      ...blankItems(repair, length),
      ...sawItems(repair, length, sawGiven),
      ...cutterItems(gear),
      ...centringItems(job, length),
    ]),
    { kind: "heading", text: "Check each rebuilt tooth before calling it done" },
    ...blankBlocks(job, length),
    list([
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

function list(items: readonly Item[]): Block {
  return { kind: "list", items: items.map(({ term, text }) => ({ term, text: sentence(text) })) };
}

function sentence(text: string): string {
  return `${text[0]?.toUpperCase()}${text.slice(1)}${/[.:]$/.test(text) ? "" : "."}`;
}
