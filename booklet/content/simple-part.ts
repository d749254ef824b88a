import { type Head, ownedCircles } from "../../src/index.ts";
import type { Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { HeadCount, ProvedBy } from "./head-counts.ts";
import type { Desk } from "./parts.ts";
import { isReadHead } from "./readings.ts";
import { keyTo, sectionWords } from "./sections.ts";
import {
  anyBlock,
  countColumns,
  crankCells,
  crankColumns,
  startHoleCells,
  startHoleColumns,
  stepCell,
  stepColumn,
  teethColumn,
} from "./setting-cells.ts";
import type { Row, TableBlock } from "./table-block.ts";
import { anchorOf, plateOf } from "./words.ts";

const overPlate =
  "Crank over a still plate: stop pin in, no gears. Move the turns, then the spaces; the arms enclose one hole more than the spaces, the pin’s own among them.";
/** On a head without a plate there is no pin, no arms and no hole to speak of. */
const wholeTurns = "Whole turns of the handwheel: after each move its dial stands at the same mark again.";

/**
 * The main table: each count in order. Those that simple indexing does have their setting; the
 * others stand in their place and point to the part that has them.
 */
export function simplePart({ head, counts, included }: Desk): Part | null {
  // There every count has its readings, whole turns of the handwheel among them.
  if (isReadHead(head) || head.wormRatio === null) return null;
  return {
    id: "simple",
    title: "Counts by simple indexing",
    rule: footRule(head, { method: "simple", several: anyBlock(counts.flatMap(({ simple }) => simple[0] ?? [])) }),
    alone: aloneOf(head, counts),
    blocks: [
      {
        kind: "paragraph",
        text: `${head.plates.length === 0 ? wholeTurns : overPlate} Counts with a black mark are not done this way: turn to the page named.`,
      },
      simpleTable(head, counts, included),
    ],
  };
}

/** The marks on a sheet, and what is counted; on a head without a plate S means whole turns. */
function aloneOf({ plates }: Head, counts: readonly HeadCount[]): string {
  const isSimple = ({ simple }: HeadCount) => simple.length > 0;
  const others = keyTo(counts.filter((count) => !isSimple(count)).map(({ section }) => section));
  if (plates.length === 0) return `${sectionWords.simple.mark}: whole turns of the handwheel. ${others}`.trim();
  return `${keyTo(counts.some(isSimple) ? ["simple"] : [])} ${others} The arms enclose the pin’s own hole, too.`.trim();
}

function simpleTable(head: Head, counts: readonly HeadCount[], included: ReadonlySet<string>): TableBlock {
  const block = anyBlock(counts.flatMap(({ simple }) => simple[0] ?? []));
  const rows = counts.map((count) => {
    const [best] = count.simple;
    return best ? simpleRow(head, count, best, block) : pointerRow(count, included);
  });
  return {
    kind: "table",
    headwords: true,
    summary: "Counts by simple indexing",
    columns: [...countColumns, ...(block ? [teethColumn] : []), ...crankColumns, stepColumn, ...startHoleColumns(head)],
    rows,
  };
}

function simpleRow(head: Head, { divisions, simple }: HeadCount, best: ProvedBy<"simple">, block: boolean): Row {
  const others = otherCircles(head, simple.slice(1));
  return {
    anchor: anchorOf("simple", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.simple.mark },
      ...(block ? [{ text: String(best.teethPerMove) }] : []),
      ...crankCells(head, best),
      stepCell(divisions),
      ...startHoleCells(head, best),
    ],
    ...(others === "" ? {} : { notes: [others] }),
  };
}

/** Every other owned circle that closes: `or 6 of 18 on plate 1; 7 of 21, 9 of 27 on plate 2`. */
function otherCircles(head: Head, settings: readonly ProvedBy<"simple">[]): string {
  const byPlate = new Map<string, string[]>();
  for (const setting of settings) {
    const plate = plateOf(head, setting);
    byPlate.set(plate, [...(byPlate.get(plate) ?? []), `${setting.spaces} of ${setting.circle}`]);
  }
  const onPlates = [...byPlate].sort(byPlateOrder(head)).map(([plate, moves]) => `${moves.join(", ")} on plate ${plate}`);
  return onPlates.length === 0 ? "" : `spaces also ${onPlates.join("; ")}`;
}

function byPlateOrder(head: Head) {
  const order = ownedCircles(head).map((circle) => plateOf(head, circle));
  return ([a]: [string, unknown], [b]: [string, unknown]) => order.indexOf(a) - order.indexOf(b);
}

/** Points to the row of the count; neighbours on one page are joined when the pages are set. */
function pointerRow({ divisions, section }: HeadCount, included: ReadonlySet<string>): Row {
  const { mark, pointer } = sectionWords[section];
  const anchor = anchorOf(section, divisions);
  return {
    joins: true,
    cells: [{ text: String(divisions) }, { text: mark, reversed: true }],
    rest: included.has(section)
      ? { text: `${pointer}: page {page:${anchor}}`, link: anchor }
      : { text: `${pointer}; not in this print` },
  };
}
