import {
  type Crank,
  type Head,
  type OnHoles,
  type Ratio,
  ratio,
  revolutions,
  type SettingGears,
  type UnprovedSetting,
} from "../../src/index.ts";
import { canBeSetUp, closesOnBench } from "../support/mechanism.ts";
import { plateNamed } from "./plate-named.ts";
import type { Piece } from "./read-pdf.ts";
import { rowLines } from "./row-lines.ts";

/** How a printed count is done: the mark that stands beside it. */
export type Mark = "D" | "H" | "S" | "G" | "C" | "×";

/** A count as the book prints it, read from the page alone. */
export interface PrintedRow {
  readonly divisions: number;
  readonly mark: Mark;
  /** The setting that the printed figures make, on a head of the ratio printed; null where none is printed. */
  readonly setting: UnprovedSetting | null;
  /** What is printed after the crank's move: the step, the checks. */
  readonly rest: string;
}

type Found = Record<string, string | undefined>;

const fraction = String.raw`\d+\s+\d+/\d+|\d+/\d+|\d+`;
const setUp = String.raw`(?<plate>[^|]+)\|(?<circle>\d+|any|none)`;
const crank = String.raw`(?<turns>\d+)\|(?<spaces>\d+)\|(?<arms>\d+|–)`;
const train = String.raw`(?<spindle>\d+)\|(?<studDriven>\d+|–)\|(?<studDriver>\d+|–)\|(?<worm>\d+)\|(?<idlers>\d+)(?:\|(?<direction>with|against))?`;
const second = String.raw`(?<direction>with|against)[|\s](?<secondSpaces>\d+)\|(?<secondCircle>\d+)`;

const bodies: Readonly<Record<Mark, string>> = {
  S: `${setUp}\\|${crank}`,
  G: `${setUp}\\|${train}\\|${crank}`,
  C: `${setUp}\\|${crank}\\|${second}`,
  D: String.raw`(?<plate>[^|]+)\|(?<circle>\d+)\|(?<spaces>\d+)`,
  H: String.raw`(?<turns>\d+)\|(?<marks>\d+)\|(?<lines>\d+)\|(?<marksPerTurn>\d+)\|(?<linesPerMark>\d+)`,
  "×": "",
};

const plateUnder = new RegExp(
  String.raw`plate turns (?<plateTurns>${fraction})(?:[|\s]|·)+(?:(?<direction>with|against) the crank)?`,
);

/** Reads every row of counts from the text of a book for a head, whose plates alone are known by their names. */
export function printedRows(pages: readonly (readonly Piece[])[], wormRatio: Ratio, head: Head): readonly PrintedRow[] {
  const rows: PrintedRow[] = [];
  let several = false;
  for (const line of pages.flatMap((page) => rowLines(page, head))) {
    if (line.startsWith("Count|")) several = line.includes("|a move|");
    const row = readRow(line, several, wormRatio, head);
    if (row) rows.push(row);
    else if (line.startsWith("spaces also ")) rows.push(...otherCircles(line, rows.at(-1), head));
  }
  return rows;
}

/** A part that goes back is made first, and stands first. */
const backFirst = /(against[|\s]\d+\|\d+)\|(\d+\|\d+\|\d+)/;

function readRow(line: string, several: boolean, wormRatio: Ratio, head: Head): PrintedRow | null {
  const start = /^(?<count>\d+)\|(?<mark>[DHSGC×])\|/.exec(line)?.groups;
  if (!start) return null;
  const mark = start.mark as Mark;
  const divisions = Number(start.count);
  if (mark === "×") return /cannot be done/.test(line) ? null : { divisions, mark, setting: null, rest: "" };
  const teeth = several ? String.raw`(?<teeth>\d+)\|` : "";
  const found: Found | undefined = new RegExp(String.raw`^\d+\|.\|${teeth}${bodies[mark]}(?:\||$)(?<rest>.*)`).exec(
    line.replace(backFirst, "$2|$1"),
  )?.groups;
  if (!found) return null;
  return { divisions, mark, setting: settingFrom(mark, found, divisions, wormRatio, head), rest: found.rest ?? "" };
}

function settingFrom(mark: Exclude<Mark, "×">, found: Found, divisions: number, wormRatio: Ratio, head: Head): UnprovedSetting {
  const teethPerMove = Number(found.teeth ?? 1);
  const ofMove = { teethPerMove, wormRatio, spindlePerMove: revolutions(teethPerMove, divisions) };
  switch (mark) {
    case "S":
      return { ...ofMove, method: "simple", plateStopPin: "in", ...crankFrom(found, head) };
    case "G":
      return {
        ...ofMove,
        method: "differential",
        plateStopPin: "out",
        ...crankFrom(found, head),
        gears: gearsFrom(found),
      };
    case "C": {
      const direction = found.direction === "with" ? "with" : "against";
      const second = { spaces: Number(found.secondSpaces), circle: Number(found.secondCircle), direction } as const;
      return { ...ofMove, method: "compound", plateStopPin: "out", ...onHoles(found, head), turns: Number(found.turns), second };
    }
    case "D": {
      const [spaces, circle, plate] = [Number(found.spaces), Number(found.circle), found.plate ?? ""];
      const fixed = { turns: 0, face: null, armsEnclose: null, plateStopPin: null } as const;
      return { ...ofMove, method: "direct", spaces, circle, plate, ...fixed };
    }
    case "H": {
      const lines = Number(found.linesPerMark);
      const spaces = Number(found.marks) * lines + Number(found.lines);
      const fixed = { plate: null, face: null, armsEnclose: null, plateStopPin: null } as const;
      return {
        ...ofMove,
        method: "dial",
        turns: Number(found.turns),
        spaces,
        circle: Number(found.marksPerTurn) * lines,
        ...fixed,
      };
    }
  }
}

function crankFrom(found: Found, head: Head): Crank {
  const turns = Number(found.turns);
  if (/^\d+$/.test(found.circle ?? "")) return { turns, ...onHoles(found, head) };
  return { turns, circle: null, plate: null, face: null, spaces: 0, armsEnclose: null };
}

/** An arm that is not printed encloses nothing. */
function onHoles(found: Found, head: Head): OnHoles {
  const armsEnclose = Number(found.arms ?? 0);
  return { circle: Number(found.circle), spaces: Number(found.spaces), armsEnclose, ...plateNamed(found.plate ?? "", head) };
}

function gearsFrom(found: Found): SettingGears {
  const plate: Found = plateUnder.exec(found.rest ?? "")?.groups ?? {};
  const direction = (found.direction ?? plate.direction) === "with" ? "with" : "against";
  const stud = found.studDriven !== "–";
  const [numerator, denominator] = mixedFrom(plate.plateTurns ?? "");
  return {
    drivers: stud ? [Number(found.spindle), Number(found.studDriver)] : [Number(found.spindle)],
    driven: stud ? [Number(found.studDriven), Number(found.worm)] : [Number(found.worm)],
    idlers: Number(found.idlers),
    direction,
    platePerSpindle: ratio((direction === "with" ? 1 : -1) * numerator, denominator),
    mayFoul: null,
  };
}

/** `2 1/3`. */
function mixedFrom(text: string): readonly [numerator: number, denominator: number] {
  const pieces = text.trim().split(/\s+/);
  const [n = 0, d = 1] = (pieces.at(-1) ?? "").split("/").map(Number);
  return [(pieces.length === 2 ? Number(pieces[0]) : 0) * d + n, d];
}

/** `spaces also 6 of 18 on plate 1; 7 of 21, 9 of 27 on plate 2`. */
function otherCircles(line: string, row: PrintedRow | undefined, head: Head): readonly PrintedRow[] {
  const { setting } = row ?? {};
  if (row === undefined || setting?.method !== "simple") return [];
  return line.split("; ").flatMap((onPlate) => {
    const [moves = "", plate = ""] = onPlate.split(" on plate ");
    return [...moves.matchAll(/(\d+) of (\d+)/g)].map(([, spaces = "", circle = ""]): PrintedRow => {
      const found = { spaces, circle, plate, turns: String(setting.turns) };
      return { ...row, setting: { ...setting, ...crankFrom(found, head) } as UnprovedSetting };
    });
  });
}

/** Whether the printed figures, set on a second mechanism with what the head has, reach every division. */
export function closes({ setting }: PrintedRow, head: Head): boolean {
  return setting !== null && canBeSetUp(setting, head) && closesOnBench(setting, head);
}
