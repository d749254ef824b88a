import type { Head, Proved, Revolutions, SettingGears } from "../../src/index.ts";
import { countWithoutGears, foulingWords, mixed } from "../../src/words/index.ts";
import type { Block, Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { CountBy } from "./head-counts.ts";
import { type Desk, doneBy } from "./parts.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { countColumns, crankCells, crankColumns, nothing, stepCell, stepColumn, teethColumn } from "./setting-cells.ts";
import type { Cell, Column, Row } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** Counts by differential indexing, in a part of their own so that none is read as simple. */
export function gearedPart(desk: Desk): Part | null {
  const { head } = desk;
  const counts = doneBy(desk, "differential");
  if (counts.length === 0) return null;
  const one = counts.filter(({ setting }) => setting.teethPerMove === 1);
  const several = counts.filter(({ setting }) => setting.teethPerMove !== 1);
  return {
    id: "geared",
    title: "Counts that need gears",
    mark: sectionWords.geared.running,
    rule: footRule(head, { method: "differential" }),
    warning:
      "Every row here needs its gears on and the plate stop pin OUT. Without the gears the same move gives another count, printed in each row; ≈: no count, and the last space comes out false.",
    alone: `${keyTo(["geared"])} Idlers change only the direction. Before cutting, turn the spindle round once: the plate must make the turns printed.`,
    blocks: [
      {
        kind: "paragraph",
        text: "Gears in order: on the spindle; on the stud, first the one the spindle drives, then the one beside it that drives on; on the worm shaft, which turns the plate. Idlers go between and change only the direction. Check, over all moves: the pin’s turns over the plate, and with + or − the turns of the plate, make the crank’s turns seen from the bench. Before cutting, turn the spindle once by the crank and see the plate make its turns, with or against the crank.",
      },
      ...(one.length === 0 ? [] : [gearedTable(head, one, false)]),
      ...(several.length === 0 ? [] : severalTeeth(head, several)),
    ],
  };
}

function severalTeeth(head: Head, counts: readonly CountBy<"differential">[]): readonly Block[] {
  return [
    { kind: "heading", text: "Several teeth a move" },
    {
      kind: "paragraph",
      style: "strong",
      text: "Each move here passes over several divisions: the work goes round as often as there are teeth a move before the last division is cut. Do not stop when it has come round once.",
    },
    gearedTable(head, counts, true),
  ];
}

function gearedTable(head: Head, counts: readonly CountBy<"differential">[], several: boolean): Block {
  return {
    kind: "table",
    headwords: true,
    summary: several ? "Counts by differential indexing, several teeth a move" : "Counts by differential indexing",
    columns: gearedColumns(several),
    rows: counts.map((count) => gearedRow(head, count, several)),
  };
}

function gearedColumns(several: boolean): readonly Column[] {
  return [
    ...countColumns,
    ...(several ? [teethColumn] : []),
    ...crankColumns.slice(0, 2),
    { head: "spindle", group: "GEARS", align: "right", strong: true },
    { head: "stud\ndriven", group: "GEARS", align: "right", strong: true },
    { head: "stud\ndriver", group: "GEARS", align: "right", strong: true },
    { head: "worm", group: "GEARS", align: "right", strong: true },
    { head: "idlers", group: "GEARS", align: "right", strong: true },
    { head: "turns in one\nof the spindle", group: "PLATE", align: "right", aside: "plate turns {}", under: "plate turns {}" },
    { head: "plate\nturns", group: "GEARS", align: "left", under: "{} the crank" },
    ...crankColumns.slice(2),
    { head: "no gears\ngives", align: "right", under: "without the gears {}" },
    stepColumn,
    { head: "pin ± plate = crank", group: "CHECK", align: "right", aside: "check {}" },
  ];
}

function gearedRow(head: Head, { divisions, setting }: CountBy<"differential">, several: boolean): Row {
  const { gears } = setting;
  const crank = crankCells(head, setting);
  return {
    anchor: anchorOf("geared", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.geared.mark, reversed: true },
      ...(several ? [{ text: String(setting.teethPerMove) }] : []),
      ...crank.slice(0, 2),
      ...trainCells(gears),
      { text: mixed(gears.platePerSpindle) },
      { text: gears.direction },
      ...crank.slice(2),
      { text: countWithoutGears(setting) ?? nothing },
      stepCell(divisions),
      { text: sumOfTurns(setting) },
    ],
    ...(gears.mayFoul === null ? {} : { lines: [`may foul: ${foulingWords(gears.mayFoul)}`] }),
  };
}

function trainCells({ drivers, driven, idlers }: SettingGears): readonly Cell[] {
  const stud = drivers.length > 1;
  const shafts = [drivers[0], stud ? driven[0] : undefined, stud ? drivers[1] : undefined, driven.at(-1)];
  return [...shafts.map((teeth) => ({ text: teeth === undefined ? nothing : String(teeth) })), { text: String(idlers) }];
}

/** `42  1/3 − 2  1/3 = 40`: over all moves, the pin's turns over the plate and the plate's own. */
export function sumOfTurns({ proof: { pinTurns, plateTurns, crankTurns } }: Pick<Proved, "proof">): string {
  const said = (turns: Revolutions | null) => (turns === null ? "0" : mixed(turns));
  const sign = plateTurns?.startsWith("-") ? "−" : "+";
  return `${said(pinTurns)} ${sign} ${said(plateTurns)} = ${said(crankTurns)}`;
}
