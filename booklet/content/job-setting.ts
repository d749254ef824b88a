import type { Head, Setting, UnprovedSetting } from "../../src/index.ts";
import type { Block } from "./blocks.ts";
import { withoutGears } from "./geared-part.ts";
import { counted, mixed, plateOf } from "./words.ts";

/** What is set large on every page of a job, by its method. */
export const settingMarks: Readonly<Partial<Record<Setting["method"], string>>> = {
  differential: "GEARS",
  compound: "TWO MOVES",
  direct: "DIRECT",
  dial: "DIAL",
};

/** A large figure with what it is. */
export interface PanelItem {
  readonly head: string;
  readonly figure: string;
  readonly under: string;
}

/** The figures that the hand sets, to be read from the machine. */
export function panel(head: Head, setting: UnprovedSetting): readonly PanelItem[] {
  const { turns, spaces, circle, armsEnclose, method, second, teethPerMove } = setting;
  const several =
    teethPerMove > 1 ? [{ head: "TEETH A MOVE", figure: String(teethPerMove), under: `${teethPerMove} times round` }] : [];
  const whole = { head: "TURNS", figure: String(turns), under: "whole turns" };
  if (method === "dial") return [whole, ...dialItems(head, spaces), ...several];
  const items = [
    { head: "CIRCLE", figure: circle === null ? "any" : String(circle), under: `plate ${plateOf(head, setting)}` },
    ...(method === "direct" ? [] : [whole]),
    { head: "SPACES", figure: String(spaces), under: method === "direct" ? "worm out of mesh" : "then on" },
    ...(armsEnclose === null ? [] : [{ head: "ARMS ENCLOSE", figure: String(armsEnclose), under: "holes" }]),
  ];
  if (!second) return [...items, ...several];
  return [
    ...items,
    { head: "REAR CIRCLE", figure: String(second.circle), under: "second move" },
    { head: "SPACES", figure: String(second.spaces), under: `${second.direction} the first` },
    ...several,
  ];
}

function dialItems({ dial }: Head, places: number): readonly PanelItem[] {
  const lines = dial?.vernierLines ?? 1;
  const marks = { head: "MARKS", figure: String(Math.floor(places / lines)), under: `of ${dial?.marksPerTurn}` };
  return lines === 1 ? [marks] : [marks, { head: "VERNIER", figure: String(places % lines), under: `lines of ${lines}` }];
}

/** Stop pin, gears and second move in a sentence. */
export function inWords(setting: UnprovedSetting): Block[] {
  const { gears, second, plateStopPin, method } = setting;
  const pin = plateStopPin === null ? "Worm out of mesh." : `Plate stop pin ${plateStopPin.toUpperCase()}.`;
  if (second) {
    return [
      {
        kind: "paragraph",
        style: "strong",
        text: `${pin} Two moves for each division. First the crank as above, the rear pin holding the plate. Then crank and plate together, ${second.direction} the first move, ${counted(second.spaces, "space")} on the ${second.circle} circle at the rear pin.`,
      },
    ];
  }
  if (!gears)
    return [
      {
        kind: "paragraph",
        style: "strong",
        text: method === "dial" ? "By the dial: read on from the mark you stand on." : `${pin} No gears.`,
      },
    ];
  const [spindle, studDriver] = gears.drivers;
  const stud = studDriver === undefined ? "no stud gears" : `stud ${gears.driven[0]} (driven) and ${studDriver} (driver)`;
  return [
    {
      kind: "paragraph",
      style: "strong",
      text: `${pin} Gears: spindle ${spindle}, ${stud}, worm shaft ${gears.driven.at(-1)}, ${counted(gears.idlers, "idler")}. In one turn of the spindle the plate makes ${mixed(gears.platePerSpindle)} turns ${gears.direction} the crank. Without the gears this move gives ${withoutGears(setting)}.`,
    },
    ...(gears.mayFoul === null
      ? []
      : [
          {
            kind: "paragraph",
            style: "caution",
            text: `May foul: ${gears.mayFoul}. Try the train before you rely on it.`,
          } as const,
        ]),
  ];
}

/** The plate with its arms set, and the train. */
export function drawing(head: Head, { circle, spaces, plate, face, method, gears }: Setting): Block[] {
  const circles = head.plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face)?.circles;
  const plates: Block[] =
    circles === undefined || circle === null || method === "direct"
      ? []
      : [
          {
            kind: "figure",
            share: 0.5,
            figure: { type: "plate", circles, chosen: { circle, spaces } },
            alt: `Plate ${plate} with the arms on the ${circle} circle, ${counted(spaces, "space")}`,
            caption: `The ${circle} circle with the arms set: ${counted(spaces, "space")}, ${spaces + 1} holes.`,
          },
        ];
  if (!gears) return plates;
  return [
    ...plates,
    {
      kind: "figure",
      figure: { type: "train", drivers: gears.drivers, driven: gears.driven, idlers: gears.idlers },
      alt: `Gear train: spindle ${gears.drivers[0]}, worm shaft ${gears.driven.at(-1)}`,
      caption: "The train. Idlers of any size that reach; arrows when the spindle gear turns clockwise as drawn.",
    },
  ];
}
