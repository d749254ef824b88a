import {
  type Crank,
  type Head,
  type OfCrankMove,
  type OfMove,
  type OnHoles,
  ratio,
  type SettingGears,
  type UnprovedSetting,
  wormRatioOf,
} from "../../src/index.ts";
import { plateNamed } from "./plate-named.ts";
import { type PrintedSheet, said } from "./printed-sheet.ts";

/** How a sheet says that its places are set. */
export type PrintedWay =
  | { readonly by: "moves"; readonly setting: UnprovedSetting }
  | { readonly by: "nearest-hole"; readonly circle: number; readonly plate: string; readonly face: string | null }
  | { readonly by: "dial" | "ring" };

/** What one move is to do: a job's own, which its sheet prints in its title and in `Each move`. */
type Wanted = Pick<OfMove, "spindlePerMove">;

/** Reads what is to be set up from the large figures and the words of a sheet, as the machinist does. */
export function wayOn(sheet: PrintedSheet, head: Head, wanted: Wanted): PrintedWay {
  const figure = (name: string) => sheet.figures.find(({ head: above }) => above === name || above === `THEN ${name}`);
  const number = (name: string) => Number(figure(name)?.figure);
  const setBy = figure("SET BY")?.figure;
  if (setBy === "dial" || setBy === "ring") return { by: setBy };
  const [, name = "", nearest] = /^plate (.+?)(: nearest holes)?$/.exec(figure("CIRCLE")?.under ?? "") ?? [];
  const on = plateNamed(name, head);
  if (nearest !== undefined) return { by: "nearest-hole", circle: number("CIRCLE"), ...on };
  const ofMove = { ...wanted, wormRatio: wormRatioOf(head), teethPerMove: figure("TEETH A MOVE") ? number("TEETH A MOVE") : 1 };
  const noPlate = { plate: null, face: null, armsEnclose: null, plateStopPin: null } as const;
  if (figure("MARKS")) {
    const lines = Number(/\d+$/.exec(figure("VERNIER")?.under ?? "1")?.[0]);
    const spaces = number("MARKS") * lines + (figure("VERNIER") ? number("VERNIER") : 0);
    const circle = Number(/\d+$/.exec(figure("MARKS")?.under ?? "")?.[0]) * lines;
    return { by: "moves", setting: { ...ofMove, ...noPlate, method: "dial", turns: number("TURNS"), spaces, circle } };
  }
  if (figure("SPACES")?.under === "worm out of mesh") {
    const direct = { method: "direct", turns: 0, spaces: number("SPACES"), circle: number("CIRCLE") } as const;
    return { by: "moves", setting: { ...ofMove, ...noPlate, ...direct, plate: name } };
  }
  const crank = { turns: number("TURNS"), ...(figure("SPACES") ? holesOn(sheet, on) : wholeTurns) } as Crank;
  return { by: "moves", setting: byCrank(sheet, { ...ofMove, ...crank }) };
}

const wholeTurns = { circle: null, plate: null, face: null, spaces: 0, armsEnclose: null } as const;

function holesOn({ figures }: PrintedSheet, on: Pick<OnHoles, "plate" | "face">): OnHoles {
  const of = (name: string) => Number(figures.find(({ head }) => head === name)?.figure);
  return { circle: of("CIRCLE"), spaces: of("SPACES"), armsEnclose: of("ARMS ENCLOSE"), ...on };
}

/** What holds or turns the plate is told in words; the second move of two in figures as well. */
function byCrank(sheet: PrintedSheet, crank: OfCrankMove & Crank): UnprovedSetting {
  const second = sheet.figures.find(({ head }) => /^(?:FIRST BOTH BACK|THEN BOTH ON)$/.test(head));
  if (second !== undefined) {
    const direction = second.head.endsWith("ON") ? "with" : "against";
    const circle = Number(/^spaces of (\d+)$/.exec(second.under)?.[1]);
    const both = { spaces: Number(second.figure), circle, direction } as const;
    return { ...(crank as OfCrankMove & Crank & OnHoles), method: "compound", plateStopPin: "out", second: both };
  }
  const gears = gearsOn(sheet);
  if (gears !== null) return { ...crank, method: "differential", plateStopPin: "out", gears };
  return { ...crank, method: "simple", plateStopPin: "in" };
}

/** `56 teeth`, `24 teeth, fast with 48 teeth, which drives`, `32 teeth; 1 idler between: …`, `AGAINST the crank, 2 1/3 for one turn …`. */
function gearsOn(sheet: PrintedSheet): SettingGears | null {
  const teeth = (term: string) => [...said(sheet, term).matchAll(/(\d+) teeth/g)].map(([, each]) => Number(each));
  const [spindle] = teeth("Gear on spindle");
  const [worm = 0] = teeth("Gear on worm");
  if (spindle === undefined) return null;
  const [studDriven, studDriver] = teeth("Gears on stud");
  const [, way = "", whole = "0", n = "0", d = "1"] =
    /^(WITH|AGAINST) the crank, (?:(\d+)(?: |$))?(?:(\d+)\/(\d+) )?for one turn/.exec(said(sheet, "Plate turns")) ?? [];
  const sign = way === "WITH" ? 1 : -1;
  return {
    drivers: studDriver === undefined ? [spindle] : [spindle, studDriver],
    driven: studDriven === undefined ? [worm] : [studDriven, worm],
    idlers: Number(/(\d+) idlers? between/.exec(said(sheet, "Gear on worm"))?.[1] ?? 0),
    direction: way === "WITH" ? "with" : "against",
    platePerSpindle: ratio(sign * (Number(whole) * Number(d) + Number(n)), Number(d)),
    mayFoul: null,
  };
}
