import type { Head } from "../head/head.ts";
import type { Crank, OfMove, SettingBy } from "../setting/setting.ts";
import { type OnPlate, plateShort } from "./plates.ts";
import { rowFigure } from "./row-words.ts";

/** A figure that the hand sets, to be read from the machine: what it is above, of what it is under. */
export interface Figure {
  readonly head: string;
  readonly figure: string;
  readonly under: string;
}

/** The circle with its plate. */
export function circleFigure(on: OnPlate & { readonly circle: number | null }): Figure {
  return { head: "CIRCLE", figure: on.circle === null ? "any" : String(on.circle), under: `plate ${plateShort(on)}` };
}

/** A move of the crank over a plate; on a head without plates there is none to name. */
export function crankFigures(setting: Crank, { plates }: Pick<Head, "plates">): readonly Figure[] {
  return [...(setting.circle === null && plates.length === 0 ? [] : [circleFigure(setting)]), ...moveFigures(setting, "")];
}

/** What is counted of a move on its circle. */
export function moveFigures({ turns, spaces, armsEnclose }: Crank, then: "" | "THEN "): readonly Figure[] {
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

/** Two parts to a move: crank and plate together are counted at the rear pin, and come first where they go back. */
export function compoundFigures(setting: SettingBy<"compound">): readonly Figure[] {
  const { direction, spaces, circle } = setting.second;
  const both = { figure: String(spaces), under: `spaces of ${circle}` };
  return direction === "against"
    ? [circleFigure(setting), { head: "FIRST BOTH BACK", ...both }, ...moveFigures(setting, "THEN ")]
    : [circleFigure(setting), ...moveFigures(setting, ""), { head: "THEN BOTH ON", ...both }];
}

/** The spindle by its own plate. */
export function directFigures(setting: SettingBy<"direct">, { wormRatio }: Pick<Head, "wormRatio">): readonly Figure[] {
  const { circle, spaces, vernierHoles = 1 } = setting;
  const of = wormRatio === null ? `of ${circle / vernierHoles}` : "worm out of mesh";
  return [
    circleFigure({ ...setting, circle: circle / vernierHoles }),
    { head: "SPACES", figure: String(Math.floor(spaces / vernierHoles)), under: of },
    ...(vernierHoles === 1 ? [] : [rowFigure(setting)]),
  ];
}

/** The handwheel by its marks, and the lines of the vernier where there is one. */
export function dialFigures({ turns, spaces }: SettingBy<"dial">, { dial }: Pick<Head, "dial">): readonly Figure[] {
  const { marksPerTurn, vernierLines: lines } = dial ?? { marksPerTurn: 1, vernierLines: 1 };
  const vernier = { head: "VERNIER", figure: String(spaces % lines), under: `lines of ${lines}` };
  return [
    { head: "TURNS", figure: String(turns), under: "whole turns" },
    { head: "MARKS", figure: String(Math.floor(spaces / lines)), under: `of ${marksPerTurn}` },
    ...(lines === 1 ? [] : [vernier]),
  ];
}

/** How many teeth each move passes over, where it is more than one. */
export function teethFigures({ teethPerMove }: OfMove): readonly Figure[] {
  if (teethPerMove === 1) return [];
  return [{ head: "TEETH A MOVE", figure: String(teethPerMove), under: `${teethPerMove} times round` }];
}
