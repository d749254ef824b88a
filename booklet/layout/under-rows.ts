import type { Column, Row, TableBlock } from "../content/table-block.ts";
import { betweenParts } from "./measure.ts";

/** What is said under a row of a column that is not there, as large as the figures or small. */
interface Under {
  readonly text: string;
  readonly large: boolean;
}

/** Said as large as the figures; nothing where there is nothing to say. */
export function large(text: string | undefined): Under | undefined {
  return text === undefined ? undefined : { text, large: true };
}

/** Said in small type. */
export function small(text: string | undefined): Under | undefined {
  return text === undefined ? undefined : { text, large: false };
}

/** The table with the columns that have something to be said under the rows said there. */
export function withUnder(block: TableBlock, underOf: (column: Column) => Under | undefined): TableBlock {
  const unders = block.columns.map(underOf);
  const said = ({ cells }: Row, asLarge: boolean) => {
    const found = cells.flatMap(({ text }, index) => {
      const under = unders[index];
      return under?.large === asLarge ? [under.text.replace("{}", text)] : [];
    });
    return found.length === 0 ? [] : [found.join(betweenParts)];
  };
  const rows = block.rows.map(
    (row): Row => ({
      ...row,
      cells: row.cells.filter((_, index) => unders[index] === undefined),
      lines: [...said(row, true), ...(row.lines ?? [])],
      notes: [...said(row, false), ...(row.notes ?? [])],
    }),
  );
  return { ...block, columns: block.columns.filter((_, index) => unders[index] === undefined), rows };
}
