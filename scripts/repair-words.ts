import type { Head, PlannedJob, RepairOnHead, SpurGear } from "../src/index.ts";
import { cutterItems } from "../src/words/gear/cutter-items.ts";
import { gearInShort, gearItems } from "../src/words/gear/gear-items.ts";
import { noteWords } from "../src/words/gear/note-words.ts";
import { checkItems } from "../src/words/gear/rebuilt-check-words.ts";
import { cuttingCautions, heatCautions } from "../src/words/gear/repair-cautions.ts";
import {
  blankItems,
  centringItems,
  errorAtPitch,
  numbering,
  sawItems,
  teethInRuns,
  thinItems,
  withTheMate,
} from "../src/words/gear/repair-items.ts";
import { cautionItems, headLine, proofShort, wayItems, wayShort, wayTitle } from "../src/words/index.ts";
import type { Item } from "../src/words/item.ts";
import type { LengthWords } from "../src/words/lengths.ts";
import { noteLines } from "./gear-words.ts";
import { placeLines } from "./repair-places.ts";
import { itemLines, line, paragraph } from "./words.ts";

/** Everything for a repair, in the order of the work. */
export function repairLines(job: RepairOnHead, head: Head, length: LengthWords, sawGiven: boolean): string[] {
  const { gear, repair } = job;
  return [
    `REPAIR OF A GEAR: ${gearInShort(gear)}`,
    headLine(head),
    "",
    line("Damaged", teethInRuns(repair.plan.damaged)),
    ...part("THE GEAR", gearItems(gear, length)),
    ...part("BEFORE ANY HEAT", heatCautions),
    ...part("BEFORE CUTTING", [{ term: "Number", text: numbering }, ...blankItems(repair, length)]),
    ...settingPart(job, head, length),
    ...part("AT THE CUTTER", [...wayCautions(job), ...cuttingCautions]),
    ...part("SAW OUT", sawItems(repair, length, sawGiven)),
    ...part("CUT", [...cutterItems(gear), ...centringItems(job, length)]),
    ...part("CHECK EACH REBUILT TOOTH", checkingItems(job, length)),
    ...noteLines(repair.warnings.map((note) => noteWords(note, length))),
  ];
}

/** What to mind on the way taken, before the cutter itself; nothing where the head can do none of it. */
function wayCautions({ job }: RepairOnHead): readonly Item[] {
  return job.planned ? cautionItems(job.cautions.filter(({ code }) => code === "one-way")) : [];
}

function part(title: string, items: readonly Item[]): string[] {
  return ["", `  ${title}`, "", ...itemLines(items)];
}

function settingPart(repair: RepairOnHead, head: Head, length: LengthWords): readonly string[] {
  const { job, gear } = repair;
  if (!job.planned) {
    return [
      "",
      "  NOT POSSIBLE, not even nearly, with what this head has",
      "",
      paragraph(`Ask for the count by itself, turns-and-holes ${gear.teeth}, to see what would help.`),
    ];
  }
  const { way } = job;
  return [
    "",
    `  SET UP: ${job.exact ? `${wayTitle(way)}: exact` : `NEAR ONLY, NOT EXACT: ${wayTitle(way)}`}`,
    "",
    ...itemLines(wayItems(way, head)),
    ...(way.setting.exact ? [line("Proof", proofShort(way.setting))] : itemLines(nearItems(job, gear, length))),
    "",
    ...placeLines(repair, job, head),
  ];
}

/** How far off the way taken is over the spaces to be cut, and the other ways. */
function nearItems({ worstArcSeconds, others, way }: PlannedJob, gear: SpurGear, length: LengthWords): readonly Item[] {
  const off = (arcSeconds: number) => errorAtPitch(arcSeconds, gear, length);
  const grows = way.by === "moves" ? "; count from START only, and no further than PROVE: the error grows with every move" : "";
  return [
    { term: "Off by", text: `${worstArcSeconds === 0 ? "nothing" : `no space to cut over ${off(worstArcSeconds)}`}${grows}` },
    // Ways of several teeth per move are long for a few teeth; --json has them.
    ...others
      .filter(({ setting }) => setting.teethPerMove === 1)
      .slice(0, mostOthers)
      .map((other, index) => ({ term: index === 0 ? "Or" : "", text: `~ ${wayShort(other)}: ${off(other.worstArcSeconds)}` })),
  ];
}

const mostOthers = 3;

function checkingItems({ gear, repair }: RepairOnHead, length: LengthWords): readonly Item[] {
  return [
    ...checkItems(gear, repair, length),
    ...thinItems(repair, length).map((item) =>
      repair.check === null ? { ...item, text: `${item.text}; give it with --backlash` } : item,
    ),
    withTheMate,
  ];
}
