import { visibleLine } from "./visible.ts";

/** A column of a table for people: its heading, lines of it one below the other, and numbers to the right. */
interface Column {
  readonly heading: string;
  readonly isNumber?: boolean;
}

/** Rows of cells as lines with aligned columns, two spaces apart, headings above; no line ends in spaces. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const headings = columns.map(({ heading }) => heading.split("\n"));
  const depth = Math.max(...headings.map((lines) => lines.length));
  const above = Array.from({ length: depth }, (_, line) => headings.map((lines) => lines[line] ?? ""));
  const cells = [...above, ...rows.map((row) => row.map(visibleLine))];
  const widths = columns.map((_, k) => Math.max(...cells.map((row) => row[k]?.length ?? 0)));
  return cells
    .map((row) =>
      columns
        .map(({ isNumber }, k) => (isNumber ? (row[k] ?? "").padStart(widths[k]) : (row[k] ?? "").padEnd(widths[k])))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
