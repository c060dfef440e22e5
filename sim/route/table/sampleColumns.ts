import { unitNamed } from "../log/columnUnits.ts";
import type { ColumnRole } from "../log/logFile.ts";
import { columnByName } from "./columnByName.ts";
import { readNumber, unitInCell } from "./readNumber.ts";
import { sampleRows, type TableLayout } from "./tableLayout.ts";

/** One column of a table's first rows, looked at once. */
export interface SampleColumn {
  readonly index: number;
  readonly header: string;
  readonly unit: string;
  /** The role its header names. */
  readonly named: ColumnRole | "none";
  readonly cells: readonly string[];
  /** The numbers among the cells. */
  readonly numbers: readonly number[];
}

/** A broken file can have a header of thousands of letters, which nobody wants to read back. */
const LONGEST_HEADER = 80;

/** The columns of a table, in order, with what their headers and units name. */
export function sampleColumns(layout: TableLayout): readonly SampleColumn[] {
  const sample = sampleRows(layout);
  return Array.from({ length: layout.fieldCount }, (_, index) => {
    const header = (layout.headers[index] ?? "").trim();
    const byName = header === "" ? { role: "none" as const, unit: "" } : columnByName(header);
    const cells = sample.map((row) => row[index] ?? "");
    const numbers = cells.map((cell) => readNumber(cell, layout.decimal)).filter((value) => !Number.isNaN(value));
    const unit = unitOfCells(cells) || unitNamed(layout.units[index] ?? "") || byName.unit;
    return { index, header: header.slice(0, LONGEST_HEADER), unit, named: byName.role, cells, numbers };
  });
}

/** The unit that most cells state themselves, or "". */
function unitOfCells(cells: readonly string[]): string {
  const filled = cells.filter((cell) => cell.trim() !== "");
  const unit = filled.map(unitInCell).find((each) => each !== "") ?? "";
  return unit !== "" && 2 * filled.filter((cell) => unitInCell(cell) === unit).length > filled.length ? unit : "";
}
