import type { SettingBy } from "../../src/index.ts";
import { largeCrankStays } from "../../src/words/index.ts";
import type { Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { CountBy } from "./head-counts.ts";
import { type Desk, doneBy } from "./parts.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { anyBlock, countColumns, nothing, stepCell, stepColumn, teethColumn } from "./setting-cells.ts";
import type { Cell, Row } from "./table-block.ts";
import { anchorOf, plateOf } from "./words.ts";

/** Counts that take both cranks of a wide range head. */
export function wideRangePart(desk: Desk): Part | null {
  const { head } = desk;
  const counts = doneBy(desk, "wide-range");
  if (counts.length === 0) return null;
  const block = anyBlock(counts.map(({ setting }) => setting));
  return {
    id: "wide-range",
    title: "Counts by both cranks",
    mark: sectionWords["wide-range"].running,
    rule: footRule(head, { method: "wide-range", several: block }),
    alone: `${keyTo(["wide-range"])} Each move has two parts: the large crank until its pin is home, then the small one.`,
    blocks: [
      {
        kind: "paragraph",
        text: "Each move has two parts, always in the same order: the large crank by its turns and spaces until its pin is home, then the small crank by its own. Neither ever goes back. Where the large crank has no turns and no spaces its pin stays where it is. Set the arms of both plates.",
      },
      {
        kind: "table",
        headwords: true,
        summary: "Counts by both cranks",
        columns: [
          ...countColumns,
          ...(block ? [teethColumn] : []),
          { head: "plate", group: "LARGE CRANK", align: "left", strong: true, wraps: true },
          { head: "circle", group: "LARGE CRANK", align: "right", strong: true },
          { head: "turns", group: "LARGE CRANK", align: "right", strong: true },
          { head: "spaces", group: "LARGE CRANK", align: "right", strong: true },
          { head: "circle", group: "SMALL CRANK", align: "right", strong: true },
          { head: "turns", group: "SMALL CRANK", align: "right", strong: true },
          { head: "spaces", group: "SMALL CRANK", align: "right", strong: true },
          stepColumn,
        ],
        rows: counts.map((count) => wideRangeRow(desk, count, block)),
      },
    ],
  };
}

function wideRangeRow({ head }: Desk, { divisions, setting }: CountBy<"wide-range">, block: boolean): Row {
  const { small } = setting;
  return {
    anchor: anchorOf("wide-range", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords["wide-range"].mark, reversed: true },
      ...(block ? [{ text: String(setting.teethPerMove) }] : []),
      { text: largeCrankStays(setting) ? nothing : plateOf(head, setting) },
      ...largeCells(setting),
      { text: String(small.circle) },
      { text: String(small.turns) },
      { text: String(small.spaces) },
      stepCell(divisions),
    ],
  };
}

function largeCells(setting: SettingBy<"wide-range">): readonly Cell[] {
  if (largeCrankStays(setting)) return [{ text: nothing }, { text: nothing }, { text: nothing }];
  const { circle, turns, spaces } = setting;
  return [{ text: circle === null ? "any" : String(circle) }, { text: String(turns) }, { text: String(spaces) }];
}
