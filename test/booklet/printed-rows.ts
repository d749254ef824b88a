import { prove, type SettingGears, type UnprovedSetting } from "../../src/index.ts";
import { linesOf, type Piece } from "./read-pdf.ts";

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
const train = String.raw`(?<spindle>\d+)\|(?<studDriven>\d+|–)\|(?<studDriver>\d+|–)\|(?<worm>\d+)\|(?<idlers>\d+)`;
const second = String.raw`(?<direction>with|against)[|\s](?<secondSpaces>\d+)\|(?<secondCircle>\d+)`;

const bodies: Readonly<Record<Mark, string>> = {
  S: `${setUp}\\|${crank}`,
  G: `${setUp}\\|${train}\\|${crank}`,
  C: `${setUp}\\|${crank}\\|${second}`,
  D: String.raw`(?<plate>[^|]+)\|(?<circle>\d+)\|(?<spaces>\d+)`,
  H: String.raw`(?<turns>\d+)\|(?<marks>\d+)\|(?<lines>\d+)\|(?<marksPerTurn>\d+)\|(?<linesPerMark>\d+)`,
  "×": "",
};

const turnsAndDirection = new RegExp(
  String.raw`(?:^|plate turns )(?<plateTurns>${fraction})(?:[|\s]|·)+(?<direction>with|against)`,
);

/** Reads every row of counts from the text of a book. */
export function printedRows(pages: readonly (readonly Piece[])[], wormRatio: string): readonly PrintedRow[] {
  const rows: PrintedRow[] = [];
  let several = false;
  for (const line of pages.flatMap((page) => withLineUnder(linesOf(page)))) {
    if (line.startsWith("Count|")) several = line.includes("|a move|");
    const row = readRow(line, several, wormRatio);
    if (row) rows.push(row);
    else if (line.startsWith("spaces also ")) rows.push(...otherCircles(line, rows.at(-1)));
  }
  return rows;
}

/** Puts the small line under a row at its end. */
function withLineUnder(lines: readonly string[]): readonly string[] {
  const found: string[] = [];
  for (const line of lines) {
    if (/^(?:gears none|one division|plate turns) /.test(line)) found.push(`${found.pop()}|${line.replace(/\s+·\s+/g, " · ")}`);
    else found.push(line);
  }
  return found;
}

function readRow(line: string, several: boolean, wormRatio: string): PrintedRow | null {
  const start = /^(?<count>\d+)\|(?<mark>[DHSGC×])\|/.exec(line)?.groups;
  if (!start) return null;
  const mark = start.mark as Mark;
  const divisions = Number(start.count);
  if (mark === "×") return /cannot be done/.test(line) ? null : { divisions, mark, setting: null, rest: "" };
  const teeth = several ? String.raw`(?<teeth>\d+)\|` : "";
  const found: Found | undefined = new RegExp(String.raw`^\d+\|.\|${teeth}${bodies[mark]}(?:\||$)(?<rest>.*)`).exec(line)?.groups;
  if (!found) return null;
  return { divisions, mark, setting: { ...shared(found, divisions, wormRatio), ...own(mark, found) }, rest: found.rest ?? "" };
}

function shared(found: Found, divisions: number, wormRatio: string) {
  const teeth = Number(found.teeth ?? 1);
  const circle = /^\d+$/.test(found.circle ?? "") ? Number(found.circle) : null;
  return {
    teethPerMove: teeth,
    wormRatio,
    spindlePerMove: divisions === 1 ? String(teeth) : `${teeth}/${divisions}`,
    turns: Number(found.turns ?? 0),
    spaces: Number(found.spaces),
    circle,
    plate: circle === null ? null : (found.plate ?? null),
    face: null,
    armsEnclose: found.arms === undefined || found.arms === "–" ? null : Number(found.arms),
  };
}

function own(
  mark: Exclude<Mark, "×">,
  found: Found,
): Pick<UnprovedSetting, "method" | "plateStopPin"> & Partial<UnprovedSetting> {
  if (mark === "S") return { method: "simple", plateStopPin: "in" };
  if (mark === "D") return { method: "direct", plateStopPin: null };
  if (mark === "H") {
    const lines = Number(found.linesPerMark);
    return {
      method: "dial",
      plateStopPin: null,
      spaces: Number(found.marks) * lines + Number(found.lines),
      circle: Number(found.marksPerTurn) * lines,
    };
  }
  if (mark === "G") return { method: "differential", plateStopPin: "out", gears: gearsFrom(found) };
  const direction = found.direction === "with" ? "with" : "against";
  return {
    method: "compound",
    plateStopPin: "out",
    second: { spaces: Number(found.secondSpaces), circle: Number(found.secondCircle), direction },
  };
}

function gearsFrom(found: Found): SettingGears {
  const plate: Found = turnsAndDirection.exec(found.rest ?? "")?.groups ?? {};
  const direction = plate.direction === "with" ? "with" : "against";
  const stud = found.studDriven !== "–";
  return {
    drivers: stud ? [Number(found.spindle), Number(found.studDriver)] : [Number(found.spindle)],
    driven: stud ? [Number(found.studDriven), Number(found.worm)] : [Number(found.worm)],
    idlers: Number(found.idlers),
    direction,
    platePerSpindle: `${direction === "with" ? "" : "-"}${improper(plate.plateTurns ?? "")}`,
    mayFoul: null,
  };
}

/** `2 1/3` as `7/3`. */
function improper(text: string): string {
  const pieces = text.trim().split(/\s+/);
  const [n = 0, d = 1] = (pieces.at(-1) ?? "").split("/").map(Number);
  return `${(pieces.length === 2 ? Number(pieces[0]) : 0) * d + n}/${d}`;
}

function otherCircles(line: string, row: PrintedRow | undefined): readonly PrintedRow[] {
  return [...line.matchAll(/(\d+) of (\d+)/g)].flatMap(([, spaces, circle]) =>
    row?.setting
      ? [{ ...row, setting: { ...row.setting, spaces: Number(spaces), circle: Number(circle), armsEnclose: null } }]
      : [],
  );
}

/** Whether the printed figures, set on the model of the mechanism, reach every division. */
export function closes({ setting }: PrintedRow): boolean {
  return setting !== null && prove(setting, { walk: true }).closes;
}
