/** A column of a table for people: its heading with the unit in brackets, and numbers to the right. */
export interface Column {
  readonly heading: string;
  readonly isNumber?: boolean;
}

/** Rows of cells as lines with aligned columns, two spaces apart, headings above; no line ends in spaces. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map(({ heading }, k) => Math.max(heading.length, ...rows.map((row) => row[k]?.length ?? 0)));
  const line = (cells: readonly string[]) =>
    columns
      .map(({ isNumber }, k) => (isNumber ? (cells[k] ?? "").padStart(widths[k]) : (cells[k] ?? "").padEnd(widths[k])))
      .join("  ")
      .trimEnd();
  return [line(columns.map(({ heading }) => heading)), ...rows.map(line)].join("\n");
}
