import type { UnprovedSetting } from "../../src/index.ts";
import { turnsOf } from "./bench.ts";
import type { HandWorked } from "./hand-worked.ts";
import { wrong } from "./wrong.ts";

/** A setting with one thing wrong in how it moves, on circles that stay owned. */
export interface WrongMove {
  readonly name: string;
  readonly setting: UnprovedSetting;
}

type Change = readonly [what: string, wrongly: object];

/**
 * Everything that a hand may set wrongly in a setting worked by hand: one space, one turn, the circle,
 * the count, the teeth per move, the worm ratio, the second part, the gears and their direction.
 */
export function wrongMoves({ name, setting }: Pick<HandWorked, "name" | "setting">): readonly WrongMove[] {
  return [...ofCrank(setting), ...ofTarget(setting), ...ofSecond(setting), ...ofGears(setting)].map(([what, wrongly]) => ({
    name: `${name}: ${what}`,
    setting: wrong<UnprovedSetting>({ ...setting, ...wrongly }),
  }));
}

function ofCrank({ turns, spaces, circle, plate }: UnprovedSetting): readonly Change[] {
  const another = circle === null ? { circle: 21, plate: plate ?? "1", spaces: 1 } : { spaces: spaces + 1 };
  return [
    ["one space more", another],
    ...(spaces > 1 ? [["one space less", { spaces: spaces - 1 }] as const] : []),
    ["one turn more", { turns: turns + 1 }],
    ...(turns > 1 ? [["one turn less", { turns: turns - 1 }] as const] : []),
    ...(circle === null ? [] : [["on a circle of one hole more", { circle: circle + 1 }] as const]),
  ];
}

function ofTarget({ method, spindlePerMove, teethPerMove }: UnprovedSetting): readonly Change[] {
  const { n, d } = turnsOf(spindlePerMove);
  return [
    ["for one division more", { spindlePerMove: `${n}/${d + 1n}` }],
    ["for one tooth more a move", { spindlePerMove: `${n + 1n}/${d}`, teethPerMove: teethPerMove + 1 }],
    ...(method === "direct" ? [] : [["by a worm of 60", { wormRatio: "60" }] as const]),
  ];
}

function ofSecond(setting: UnprovedSetting): readonly Change[] {
  if (setting.method !== "compound") return [];
  const { second } = setting;
  return [
    ["the second part the other way", { second: { ...second, direction: otherWay(second.direction) } }],
    ["the second part one space more", { second: { ...second, spaces: second.spaces + 1 } }],
    ["the second part left out", { method: "simple", second: undefined }],
  ];
}

function ofGears(setting: UnprovedSetting): readonly Change[] {
  if (setting.method !== "differential") return [];
  const { gears } = setting;
  return [
    ["the plate turning the other way", { gears: { ...gears, direction: otherWay(gears.direction) } }],
    ["the train the other way round", { gears: { ...gears, drivers: gears.driven, driven: gears.drivers } }],
    ["without its gears", { method: "simple", gears: undefined }],
  ];
}

function otherWay(direction: "with" | "against"): "with" | "against" {
  return direction === "with" ? "against" : "with";
}
