import { type Head, kindOf, type NearMove, type PlannedJob, type Setting, type SettingGears, type Way } from "../../src/index.ts";
import { checkFromZero, counted, goesBy, kindWords, wayFigures, wayItems } from "../../src/words/index.ts";
import { armsInWords } from "./arms.ts";
import type { Block } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import { itemList } from "./item-list.ts";
import { keyedHead, plateInFull } from "./plate-keys.ts";
import { sectionWords } from "./sections.ts";
import { trainFigure, trainInWords } from "./train-blocks.ts";
import { circlesAndDiameters } from "./words.ts";

/** What is set large on every page of a job, so that its moves are not read as others. */
export function markOf(way: Way): string | null {
  const running = way.by === "moves" ? sectionWords[kindWords[kindOf(way.setting)].section].running : null;
  if (way.setting.exact) return running;
  return running === null ? "NOT EXACT" : `${running}, NOT EXACT`;
}

/** The rule at the foot of a job: what is true of the way it is done, or of the places that it comes near to. */
export function ruleOf({ target, way: { setting }, exact }: Pick<PlannedJob, "target" | "way" | "exact">, head: Head): string {
  return footRule(head, {
    method: setting.method === "ring" ? "dial" : setting.method,
    several: setting.teethPerMove > 1,
    angle: "angle" in target,
    near: !exact,
  });
}

/**
 * What the hand sets, in large figures, and in words what these leave out: a plate that has a letter for
 * a name has its own name there.
 */
export function setUp(way: Way, head: Head): readonly Block[] {
  const { head: short, keys } = keyedHead(head);
  const keyed = onPlates(way, head, short);
  const isKeyed = keys.some(({ key }) => key === keyed.setting.plate);
  const named = isKeyed ? withPlate(keyed, plateInFull(keys, keyed.setting.plate ?? "")) : way;
  const saysPlate = (term: string) => isKeyed && (term === "Plate" || term === "Direct plate");
  return [
    { kind: "panel", items: wayFigures(keyed, short) },
    itemList(wayItems(named, head).filter(({ term, inFigures }) => !inFigures || saysPlate(term))),
  ];
}

/** What to look at on the way, of places that are numbered from 0. */
export function checksFromZero({ checks, way }: Pick<PlannedJob, "checks" | "way">, head: Head, noun: string): readonly Block[] {
  return checks.length === 0 ? [] : [itemList(checks.map((check) => checkFromZero(check, way, { head, noun })))];
}

/** A way on a head as the same on another, which has the same plates by other names. */
function onPlates(way: Way, from: Head, to: Head): Way {
  const { setting } = way;
  if (setting.method === "direct") {
    const at = from.directPlates.findIndex(({ name }) => name === setting.plate);
    return withPlate(way, to.directPlates[at]?.name ?? setting.plate);
  }
  const at = from.plates.findIndex(({ name }) => name === setting.plate);
  const face = from.plates[at]?.faces.findIndex(({ name }) => name === setting.face) ?? -1;
  const plate = to.plates[at];
  return plate === undefined ? way : withPlate(way, plate.name, plate.faces[face]?.name ?? null);
}

function withPlate(way: Way, plate: string, face = way.setting.face): Way {
  return { ...way, setting: { ...way.setting, plate, face } } as Way;
}

/** Of the height of a page, what a plate may take, and one that has a train under it. */
const plateShare = 0.5;
const shareOverTrain = 0.36;

/**
 * The plate with its arms set, and the train; nothing where the moves differ or no index plate is used.
 *
 * @param share - Of the height of a page that the plate may take.
 */
export function drawings(
  way: Way,
  head: Head,
  share: number = "gears" in way.setting ? shareOverTrain : plateShare,
): readonly Block[] {
  if (way.by !== "moves" || goesBy(way) !== "index-holes") return [];
  const { setting } = way;
  return [...plate(setting, head, share), ...("gears" in setting ? [train(setting.gears)] : [])];
}

function plate({ circle, spaces, plate, face }: Setting | NearMove, { plates }: Head, share: number): readonly Block[] {
  const on = plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face);
  if (on === undefined || circle === null) return [];
  return [
    {
      kind: "figure",
      share,
      figure: { type: "plate", ...circlesAndDiameters(on), chosen: { circle, spaces } },
      alt: `Plate ${plate} with the arms on the ${circle} circle, ${counted(spaces, "space")}`,
      caption: `The ${circle} circle with the arms set: ${counted(spaces, "space")}; ${armsInWords({ circle, spaces })}.`,
    },
  ];
}

function train(gears: SettingGears): Block {
  const fromSide = gears.drivers.length > 1 ? " Below from the side: wheels that mesh stand in one plane." : "";
  return {
    kind: "figure",
    figure: trainFigure(gears),
    alt: `Gear train: ${trainInWords(gears)}`,
    caption: `The train. ${gears.idlers > 0 ? "Idlers of any size that reach; arrows" : "Arrows"} when the spindle gear turns clockwise as drawn.${fromSide}`,
  };
}
