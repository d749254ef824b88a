/** One column of a table. */
export interface Column {
  readonly head: string;
  readonly cells: readonly string[];
}

/** Lines up columns, figures to the right. */
export function table(columns: readonly Column[]): string[] {
  const widths = columns.map(({ head, cells }) => cells.reduce((most, cell) => Math.max(most, cell.length), head.length));
  const row = (cells: readonly string[]) => `  ${cells.map((cell, index) => cell.padStart(widths[index] ?? 0)).join("  ")}`;
  const rows = (columns[0]?.cells ?? []).map((_, index) => row(columns.map(({ cells }) => cells[index] ?? "")));
  // A gap after every fifth line carries the eye along the row.
  return [
    row(columns.map(({ head }) => head)),
    ...rows.flatMap((line, index) => (index > 0 && index % 5 === 0 ? ["", line] : [line])),
  ];
}
