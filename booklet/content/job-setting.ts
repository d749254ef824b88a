import { type Head, kindOf, type NearMove, type SecondMove, type Setting, type SettingBy, type Way } from "../../src/index.ts";
import { counted, kindWords } from "../../src/words/index.ts";
import type { Block } from "./blocks.ts";
import { sectionWords } from "./sections.ts";
import { plateOf } from "./words.ts";

/** What is set large on every page of a job, so that its moves are not read as others. */
export function markOf(way: Way): string | null {
  const running = way.by === "moves" ? sectionWords[kindWords[kindOf(way.setting)].section].running : null;
  if (way.setting.exact) return running;
  return running === null ? "NOT EXACT" : `${running}, NOT EXACT`;
}

/** A large figure with what it is. */
export interface PanelItem {
  readonly head: string;
  readonly figure: string;
  readonly under: string;
}

/** The figures that the hand sets, to be read from the machine, in the order of work. */
export function panel(way: Way, head: Head): readonly PanelItem[] {
  switch (way.by) {
    case "moves":
      return [...moveFigures(way.setting, head), ...severalTeeth(way.setting)];
    case "nearest-hole":
      return [{ ...circle(way.setting, head), under: `plate ${plateOf(head, way.setting)}: nearest holes` }];
    case "dial":
    case "ring":
      return [{ head: "SET BY", figure: way.by, under: "from one zero" }];
  }
}

function severalTeeth({ teethPerMove }: Setting | NearMove): readonly PanelItem[] {
  return teethPerMove === 1 ? [] : [{ head: "TEETH A MOVE", figure: String(teethPerMove), under: `${teethPerMove} times round` }];
}

function moveFigures(setting: Setting | NearMove, head: Head): readonly PanelItem[] {
  switch (setting.method) {
    case "direct":
      return [circle(setting, head), { head: "SPACES", figure: String(setting.spaces), under: "worm out of mesh" }];
    case "dial":
      return dialFigures(setting, head);
    case "simple":
    case "differential":
      return [...(setting.circle === null && head.plates.length === 0 ? [] : [circle(setting, head)]), ...crank(setting, "")];
    case "compound":
      return setting.second.direction === "against"
        ? [circle(setting, head), ...both(setting.second, "FIRST BOTH BACK"), ...crank(setting, "THEN ")]
        : [circle(setting, head), ...crank(setting, ""), ...both(setting.second, "THEN BOTH ON")];
  }
}

function circle({ circle, ...on }: Pick<Setting, "circle" | "plate" | "face">, head: Head): PanelItem {
  return { head: "CIRCLE", figure: circle === null ? "any" : String(circle), under: `plate ${plateOf(head, on)}` };
}

function crank(
  { turns, spaces, armsEnclose }: SettingBy<"simple" | "compound" | "differential">,
  then: "" | "THEN ",
): readonly PanelItem[] {
  return [
    { head: `${then}TURNS`, figure: String(turns), under: "whole turns" },
    ...(armsEnclose === null
      ? []
      : [
          { head: "SPACES", figure: String(spaces), under: "then on" },
          { head: "ARMS ENCLOSE", figure: String(armsEnclose), under: "holes" },
        ]),
  ];
}

/** Crank and plate together, counted at the rear pin. */
function both({ spaces, circle }: SecondMove, head: string): readonly PanelItem[] {
  return [{ head, figure: String(spaces), under: `spaces of ${circle}` }];
}

function dialFigures({ turns, spaces }: SettingBy<"dial">, { dial }: Head): readonly PanelItem[] {
  const lines = dial?.vernierLines ?? 1;
  const marks: PanelItem = {
    head: "MARKS",
    figure: String(Math.floor(spaces / lines)),
    under: `of ${dial?.marksPerTurn}`,
  };
  const vernier: PanelItem = { head: "VERNIER", figure: String(spaces % lines), under: `lines of ${lines}` };
  return [{ head: "TURNS", figure: String(turns), under: "whole turns" }, marks, ...(lines === 1 ? [] : [vernier])];
}

/** The plate with its arms set, and the train; nothing where the moves differ. */
export function drawings(way: Way, head: Head): readonly Block[] {
  if (way.by !== "moves") return [];
  const { setting } = way;
  switch (setting.method) {
    case "direct":
    case "dial":
      return [];
    case "simple":
    case "compound":
      return plate(setting, head);
    case "differential":
      return [...plate(setting, head), train(setting)];
  }
}

function plate(
  { circle, spaces, plate, face }: SettingBy<"simple" | "compound" | "differential">,
  { plates }: Head,
): readonly Block[] {
  const circles = plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face)?.circles;
  if (circles === undefined || circle === null) return [];
  return [
    {
      kind: "figure",
      share: 0.5,
      figure: { type: "plate", circles, chosen: { circle, spaces } },
      alt: `Plate ${plate} with the arms on the ${circle} circle, ${counted(spaces, "space")}`,
      caption: `The ${circle} circle with the arms set: ${counted(spaces, "space")}, ${spaces + 1} holes.`,
    },
  ];
}

function train({ gears: { drivers, driven, idlers } }: SettingBy<"differential">): Block {
  return {
    kind: "figure",
    figure: { type: "train", drivers, driven, idlers },
    alt: `Gear train: spindle ${drivers[0]}, worm shaft ${driven.at(-1)}`,
    caption: "The train. Idlers of any size that reach; arrows when the spindle gear turns clockwise as drawn.",
  };
}
