import type { Head, NearRecut, RepairOnHead } from "../src/index.ts";
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
import type { Item } from "../src/words/item.ts";
import type { LengthWords } from "../src/words/lengths.ts";
import { itemLines, noteLines } from "./gear-words.ts";
import { placeLines } from "./repair-places.ts";
import { nearMoveLines, settingLines, settingTitle } from "./setting-words.ts";
import { headLine, line, paragraph, plateName } from "./words.ts";

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
    ...part("AT THE CUTTER", [oneWay, ...cuttingCautions]),
    ...part("SAW OUT", sawItems(repair, length, sawGiven)),
    ...part("CUT", [...cutterItems(gear), ...centringItems(job, length)]),
    ...part("CHECK EACH REBUILT TOOTH", checkingItems(job, length)),
    ...noteLines(repair.warnings.map((note) => noteWords(note, length))),
  ];
}

const oneWay: Item = {
  term: "One way",
  text: "Turn one way only. Past the hole or mark: go back half a turn or more and come up to it again.",
};

function part(title: string, items: readonly Item[]): string[] {
  return ["", `  ${title}`, "", ...itemLines(items)];
}

function settingPart(job: RepairOnHead, head: Head, length: LengthWords): string[] {
  const { setting, near, gear } = job;
  const [best, ...others] = near;
  if (setting !== null) {
    return ["", `  SET UP: ${settingTitle(setting)}: exact`, "", ...settingLines(setting, head), "", ...placeLines(job, head)];
  }
  if (best === undefined)
    return [
      "",
      "  NOT POSSIBLE, not even nearly, with what this head has",
      "",
      paragraph(`Ask for the count by itself, turns-and-holes ${gear.teeth}, to see what would help.`),
    ];
  return [
    "",
    `  SET UP: NEAR ONLY, NOT EXACT: ${nearTitle(best)}`,
    "",
    ...nearSetting(best, head),
    line(
      "Off by",
      `${best.worstArcSeconds === 0 ? "nothing" : `no space to cut over ${errorAtPitch(best.worstArcSeconds, gear, length)}`}${best.by === "moves" ? "; count from START only, and no further than PROVE: the error grows with every move" : ""}`,
    ),
    ...others
      .filter(isPlain)
      .slice(0, mostOthers)
      .map((way, index) =>
        line(index === 0 ? "Or" : "", `~ ${nearTitle(way).toLowerCase()}: ${errorAtPitch(way.worstArcSeconds, gear, length)}`),
      ),
    "",
    ...placeLines(job, head),
  ];
}

const mostOthers = 3;

/** Ways of several teeth per move are long for a few teeth; --json has them. */
function isPlain(way: NearRecut): boolean {
  return way.by !== "moves" || way.setting.teethPerMove === 1;
}

function nearTitle(way: NearRecut): string {
  if (way.by === "moves") return settingTitle(way.setting);
  return { "nearest-hole": "THE NEAREST HOLES", dial: "BY THE DIAL", ring: "BY THE RING" }[way.by];
}

function nearSetting(way: NearRecut, head: Head): string[] {
  if (way.by === "moves") return nearMoveLines(way.setting, head);
  if (way.circle === null) return [line("Set", `every space by the ${way.by} from the start space; no error adds to the next`)];
  return [
    line("Plate", `${plateName(way.circle).replace("plate ", "")}, circle of ${way.circle.holes} holes`),
    line("Set", "every space by itself, counted in crank turns and holes from the start space; no error adds to the next"),
    line("Plate stop pin", "in"),
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
