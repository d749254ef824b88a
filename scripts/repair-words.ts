import type { Head, PlannedJob, RepairOnHead } from "../src/index.ts";
import {
  betweenWords,
  blankItems,
  cautionItems,
  centringItems,
  checkItems,
  cutterItems,
  cuttingCautions,
  errorAtPitch,
  gearInShort,
  gearItems,
  headLine,
  heatCautions,
  type Item,
  type LengthWords,
  noteWords,
  numbering,
  proofShort,
  provingWords,
  purposeWords,
  sawItems,
  startWords,
  teethInRuns,
  thinItems,
  wayItems,
  wayShort,
  wayTitle,
  withTheMate,
} from "../src/words/index.ts";
import { noteLines } from "./gear-words.ts";
import { type LeadColumn, placeTable } from "./place-table.ts";
import { apart, itemLines, line, paragraph } from "./words.ts";

/** Everything for a repair, in the order of the work. */
export function repairLines(repaired: RepairOnHead, head: Head, length: LengthWords, sawGiven: boolean): string[] {
  const { gear, repair } = repaired;
  return [
    `REPAIR OF A GEAR: ${gearInShort(gear)}`,
    headLine(head),
    "",
    line("Damaged", teethInRuns(repair.plan.damaged)),
    ...part("THE GEAR", gearItems(gear, length)),
    ...part("BEFORE ANY HEAT", heatCautions),
    ...part("BEFORE CUTTING", [{ term: "Number", text: numbering }, ...blankItems(repair, length)]),
    ...settingPart(repaired, head, length),
    ...part("AT THE CUTTER", [...wayCautions(repaired), ...cuttingCautions]),
    ...part("SAW OUT", sawItems(repair, length, sawGiven)),
    ...part("CUT", [...cutterItems(gear), ...centringItems(repaired, length)]),
    ...part("CHECK EACH REBUILT TOOTH", checkingItems(repaired, length)),
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

function settingPart(repaired: RepairOnHead, head: Head, length: LengthWords): string[] {
  const { gear, job } = repaired;
  if (!job.planned) {
    return [
      "",
      "  NOT POSSIBLE, not even nearly, with what this head has",
      "",
      paragraph(`Ask for the count by itself, turns-and-holes ${gear.teeth}, to see what would help.`),
    ];
  }
  const { way, exact } = job;
  return [
    "",
    `  SET UP: ${exact ? `${wayTitle(way)}: exact` : `NEAR ONLY, NOT EXACT: ${wayTitle(way)}`}`,
    "",
    ...itemLines(wayItems(way, head)),
    ...(way.setting.exact ? [line("Proof", proofShort(way.setting))] : offByLines(job, repaired, length)),
    "",
    paragraph(startWords(way)),
    "",
    ...placeTable(job, head, leadColumns(repaired)),
    ...apart([paragraph(provingWords)]),
  ];
}

const mostOthers = 3;

/** How far off the way is at the spaces that are cut, and what others would be. */
function offByLines({ way, others, worstArcSeconds }: PlannedJob, { gear }: RepairOnHead, length: LengthWords): string[] {
  const grows = way.by === "moves" ? "; count from START only, and no further than PROVE: the error grows with every move" : "";
  const worst = worstArcSeconds === 0 ? "nothing" : `no space to cut over ${errorAtPitch(worstArcSeconds, gear, length)}`;
  return [
    line("Off by", `${worst}${grows}`),
    ...others
      // Ways of several teeth per move are long for a few teeth; --json has them.
      .filter((other) => other.by !== "moves" || other.setting.teethPerMove === 1)
      .slice(0, mostOthers)
      .map((other, index) =>
        line(index === 0 ? "Or" : "", `~ ${wayShort(other)}: ${errorAtPitch(other.worstArcSeconds, gear, length)}`),
      ),
  ];
}

/** The number of a space is that of the tooth before it. */
function leadColumns({ moves, repair: { plan } }: RepairOnHead): readonly LeadColumn[] {
  return [
    { head: "space", cells: moves.map(({ toothSpace }) => String(toothSpace)), isSpare: true },
    { head: "do", cells: moves.map(({ purpose }) => purposeWords[purpose]) },
    { head: "between", cells: moves.map(({ toothSpace }) => betweenWords(toothSpace, plan)) },
  ];
}

function checkingItems({ gear, repair }: RepairOnHead, length: LengthWords): readonly Item[] {
  return [
    ...checkItems(gear, repair, length),
    ...thinItems(repair, length).map((item) =>
      repair.check === null ? { ...item, text: `${item.text}; give it with --backlash` } : item,
    ),
    withTheMate,
  ];
}
