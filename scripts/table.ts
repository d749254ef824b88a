/** One column of a table. */
export interface Column {
  readonly head: string;
  readonly cells: readonly string[];
}

/** Lines up columns, figures to the right. */
export function table(columns: readonly Column[]): string[] {
  const widths = columns.map(columnWidth);
  const row = (cells: readonly string[]) => `  ${cells.map((cell, index) => cell.padStart(widths[index] ?? 0)).join("  ")}`;
  const rows = (columns[0]?.cells ?? []).map((_, index) => row(columns.map(({ cells }) => cells[index] ?? "")));
  // A gap after every fifth line carries the eye along the row.
  return [
    row(columns.map(({ head }) => head)),
    ...rows.flatMap((line, index) => (index > 0 && index % 5 === 0 ? ["", line] : [line])),
  ];
}

/** How wide a table of these columns is. */
export function tableWidth(columns: readonly Column[]): number {
  return columns.reduce((sum, column) => sum + 2 + columnWidth(column), 0);
}

function columnWidth({ head, cells }: Column): number {
  return cells.reduce((most, cell) => Math.max(most, cell.length), head.length);
}
