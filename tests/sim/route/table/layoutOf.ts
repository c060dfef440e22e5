import { sampleColumns } from "../../../../sim/route/table/sampleColumns.ts";
import { type TableLayout, tableLayout } from "../../../../sim/route/table/tableLayout.ts";
import { TakenRoles } from "../../../../sim/route/table/takenRoles.ts";

/** The layout of a table written line by line. */
export function layoutOf(...lines: readonly string[]): TableLayout {
  const found = tableLayout(lines);
  if (found === undefined) throw new Error(`no table in ${lines.join(" / ")}`);
  return found;
}

/** A table's layout and columns, none of which has a role yet. */
export function columnsOf(...lines: readonly string[]) {
  const layout = layoutOf(...lines);
  const columns = sampleColumns(layout);
  return { layout, columns, roles: new TakenRoles(columns, {}) };
}

/** Ten rows by their number. */
export const tenRows = (row: (i: number) => string): readonly string[] => Array.from({ length: 10 }, (_, i) => row(i));
