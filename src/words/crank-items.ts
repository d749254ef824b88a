import type { Head } from "../head/head.ts";
import type { Proof } from "../setting/proof.ts";
import type { Crank } from "../setting/setting.ts";
import type { Item } from "./item.ts";
import { counted, mixed } from "./numbers.ts";
import { plateName } from "./plates.ts";

/** The plate held still; where there are gears, none may be on. */
export function stopPinIn({ gears }: Pick<Head, "gears">): Item {
  return { term: "Plate stop pin", text: gears.length === 0 ? "IN" : "IN, and no gears on" };
}

/** A move of the crank in few words: `1 + 5 of 15`. */
export function crankShort({ turns, circle, spaces }: Crank): string {
  return circle === null ? `${counted(turns, "turn")} + 0` : `${turns} + ${spaces} of ${circle}`;
}

/** Plate, crank and arms. */
export function crankItems(setting: Crank): readonly Item[] {
  const { turns, spaces, circle } = setting;
  const move = `${counted(turns, "turn")} + ${counted(spaces, "space")}`;
  if (circle === null) {
    return [
      { term: "Plate", text: "any, any circle: the pin comes back to the same hole" },
      { term: "Crank", text: move, inFigures: true },
    ];
  }
  return [
    { term: "Plate", text: `${plateName(setting)}, circle of ${circle} holes`, inFigures: true },
    { term: "Crank", text: move, inFigures: true },
    { term: "Sector arms", text: `enclose ${setting.armsEnclose} holes, the pin's own among them`, inFigures: true },
  ];
}

/** Turns in all, in words. */
export function turnsOf(turns: Proof["crankTurns"]): string {
  const shown = turns === null ? "0" : mixed(turns, " ");
  return `${shown} turn${shown === "1" ? "" : "s"}`;
}
