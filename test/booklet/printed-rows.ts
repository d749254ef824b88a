import { type Head, prove, type SettingGears, type UnprovedSetting } from "../../src/index.ts";
import { linesOf, type Piece } from "./read-pdf.ts";

/** A count as the book prints it, read from the page alone. */
export interface PrintedRow {
  readonly divisions: number;
  readonly mark: "D" | "S" | "G" | "C" | "×";
  /** The setting that the printed figures make, on a head of the ratio printed; null where none is printed. */
  readonly setting: UnprovedSetting | null;
}

const angle = String.raw`(?:≈ )?\d+° \d\d′ \d\d″`;
const fraction = String.raw`\d+(?:\s+\d+/\d+)?|\d+/\d+`;
const gap = String.raw`[|\s]+`;
const setUp = String.raw`(?<plate>[^|]+)\|(?<circle>\d+|any|none)`;
const crank = String.raw`(?<turns>\d+)\|(?<spaces>\d+)\|(?<arms>\d+|–)`;
const train = String.raw`(?<spindle>\d+)\|(?<studDriven>\d+|–)\|(?<studDriver>\d+|–)\|(?<worm>\d+)\|(?<idlers>\d+)`;
const sum = `(?<sum>(?:${fraction}) [+−] (?:${fraction}) = (?:${fraction}))`;
const teeth = String.raw`(?:(?<teeth>\d+)\|)?`;

// What stands beside the setting: in columns, or where the paper is narrow in a line under it.
const tails = {
  simple: [
    String.raw`none\|${angle}\|(?<moves>\d+)\|(?<checkTurns>\d+)\|(?<ring>[^|]+)`,
    String.raw`gears none · one division ${angle} · start hole again: moves (?<moves2>\d+) · turns (?<checkTurns2>\d+) · ring [^|]+`,
  ],
  geared: [
    String.raw`${angle}\|${sum}\|(?<without>${fraction})`,
    `one division ${angle} · check (?:${fraction}) [+−] (?:${fraction}) = (?:${fraction}) · without the gears (?<without2>${fraction})`,
  ],
  compound: [
    String.raw`none\|${angle}\|${sum}`,
    `gears none · one division ${angle} · check (?:${fraction}) [+−] (?:${fraction}) = (?:${fraction})`,
  ],
};
const ending = (tail: readonly string[]) => String.raw`[|\s]+(?:${tail.join("|")})$`;

const simple = new RegExp(String.raw`^(?<count>\d+)\|S\|${teeth}${setUp}\|${crank}${ending(tails.simple)}`);
const geared = new RegExp(
  String.raw`^(?<count>\d+)\|G\|${teeth}${setUp}\|${train}\|${crank}\|(?<plateTurns>${fraction})${gap}(?<direction>with|against)${ending(tails.geared)}`,
);
const compound = new RegExp(
  String.raw`^(?<count>\d+)\|C\|${teeth}${setUp}\|${crank}\|(?<direction>with|against)\|(?<secondSpaces>\d+)\|(?<secondCircle>\d+)${ending(tails.compound)}`,
);
const direct = /^(?<count>\d+)\|D\|(?<plate>[^|]+)\|(?<circle>\d+)\|(?<spaces>\d+)\|none\|/;
const impossible = new RegExp(String.raw`^(?<count>\d+)\|×\|${angle}\|`);
const other = /(\d+) of (\d+)/g;

/** Reads every row of counts from the text of a book. */
export function printedRows(pages: readonly (readonly Piece[])[], head: Pick<Head, "wormRatio">): readonly PrintedRow[] {
  const rows: PrintedRow[] = [];
  let last: UnprovedSetting | null = null;
  for (const line of pages.flatMap((page) => withLineUnder(linesOf(page)))) {
    const row = readRow(line, head.wormRatio);
    if (row) {
      rows.push(row);
      last = row.setting;
    } else if (last?.method === "simple" && line.startsWith("spaces also ")) {
      for (const [, spaces, circle] of line.matchAll(other)) {
        rows.push({
          divisions: rows.at(-1)?.divisions ?? 0,
          mark: "S",
          setting: { ...last, spaces: Number(spaces), circle: Number(circle), armsEnclose: null },
        });
      }
    }
  }
  return rows;
}

/** Puts the small line under a row at its end. */
function withLineUnder(lines: readonly string[]): readonly string[] {
  const found: string[] = [];
  for (const line of lines) {
    if (/^(?:gears none|one division) /.test(line)) found.push(`${found.pop()}|${line.replace(/\s+·\s+/g, " · ")}`);
    else found.push(line);
  }
  return found;
}

type Found = Record<string, string | undefined>;

function readRow(line: string, wormRatio: string): PrintedRow | null {
  const readers = [
    ["S", simple],
    ["G", geared],
    ["C", compound],
    ["D", direct],
    ["×", impossible],
  ] as const;
  for (const [mark, pattern] of readers) {
    const found: Found | undefined = pattern.exec(line)?.groups;
    if (!found) continue;
    const divisions = Number(found.count);
    return { divisions, mark, setting: mark === "×" ? null : { ...shared(found, divisions, wormRatio), ...own(mark, found) } };
  }
  return null;
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

function own(mark: "S" | "G" | "C" | "D", found: Found) {
  if (mark === "S") return { method: "simple" as const, plateStopPin: "in" as const };
  if (mark === "D") return { method: "direct" as const, plateStopPin: null };
  const direction = found.direction === "with" ? ("with" as const) : ("against" as const);
  if (mark === "C") {
    const second = { spaces: Number(found.secondSpaces), circle: Number(found.secondCircle), direction };
    return { method: "compound" as const, plateStopPin: "out" as const, second };
  }
  return { method: "differential" as const, plateStopPin: "out" as const, gears: gearsFrom(found, direction) };
}

function gearsFrom(found: Found, direction: "with" | "against"): SettingGears {
  const stud = found.studDriven !== "–";
  const turns = (found.plateTurns ?? "").trim().split(/\s+/);
  const whole = turns.length === 2 ? Number(turns[0]) : 0;
  const [n = 0, d = 1] = (turns.at(-1) ?? "").split("/").map(Number);
  return {
    drivers: stud ? [Number(found.spindle), Number(found.studDriver)] : [Number(found.spindle)],
    driven: stud ? [Number(found.studDriven), Number(found.worm)] : [Number(found.worm)],
    idlers: Number(found.idlers),
    direction,
    platePerSpindle: `${direction === "with" ? "" : "-"}${whole * d + n}/${d}`,
    mayFoul: null,
  };
}

/** Whether the printed figures, set on the model of the mechanism, reach every division. */
export function closes({ setting }: PrintedRow): boolean {
  return setting !== null && prove(setting, { walk: true }).closes;
}
