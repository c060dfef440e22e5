import type { ColumnGuess, ColumnRole } from "../log/logFile.ts";
import { guessByName } from "./guessByName.ts";
import { guessByValue } from "./guessByValue.ts";
import { type SampleColumn, sampleColumns } from "./sampleColumns.ts";
import type { TableLayout } from "./tableLayout.ts";
import { TakenRoles } from "./takenRoles.ts";

/**
 * What each column of a table holds: first by its header's words and unit, then, for what is still missing, by its
 * values. Every guess carries its evidence. A choice made by a person wins over both.
 */
export function guessColumns(
  layout: TableLayout,
  chosen: Partial<Record<ColumnRole, number | "none">> = {},
  isPackWanted = false,
): readonly ColumnGuess[] {
  const columns = sampleColumns(layout);
  const roles = new TakenRoles(columns, chosen);
  guessByName(layout, roles, isPackWanted);
  guessByValue(layout, columns, roles);
  return columns.map((column) => {
    const { index, header, unit } = column;
    const { role, evidence } = roles.of(column) ?? {
      role: "none",
      evidence: roles.whyLeft(column) ?? notTaken(column),
    };
    const sample = column.cells.find((cell) => cell.trim() !== "") ?? "";
    return { index, header, role, unit, evidence, sample: sample.trim().slice(0, 40) };
  });
}

function notTaken({ header }: SampleColumn): string {
  return header === "" ? "values like none looked for" : "header like none looked for";
}
