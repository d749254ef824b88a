import type { Block } from "../content/blocks.ts";
import { type Run, runsOf } from "../content/runs.ts";
import type { Row } from "../content/table-block.ts";

/** A block whose rows that say the same are joined, once the pages that they name are known. */
export function withRowsJoined(block: Block): Block {
  if (block.kind !== "table" || !block.rows.some(({ joins }) => joins)) return block;
  return { ...block, rows: runsOf(block.rows, ([first], row) => sayTheSame(first, row)).map(joined) };
}

/** Whether rows say the same but for their first cell. */
function sayTheSame(one: Row, other: Row): boolean {
  if (!one.joins || !other.joins || one.rest?.text !== other.rest?.text || one.cells.length !== other.cells.length) return false;
  return one.cells.every(({ text }, index) => index === 0 || text === other.cells[index]?.text);
}

/** The first row, which leads to the first of what they point to, named from first to last. */
function joined(run: Run<Row>): Row {
  const [first, last] = [run[0], run.at(-1)];
  const [key, ...cells] = first.cells;
  if (key === undefined || last === first) return first;
  return { ...first, cells: [{ ...key, text: `${key.text}–${last?.cells[0]?.text}` }, ...cells] };
}
