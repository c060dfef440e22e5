import { unitNamed } from "../log/columnUnits.ts";
import { readIsoMoment } from "../log/readTime.ts";
import { type DecimalSign, unitInCell } from "./readNumber.ts";
import { splitRows } from "./splitRows.ts";

/** How a table is laid out. Lines are counted from 0 within the sample. */
export interface TableLayout {
  readonly delimiter: "," | ";" | "\t" | "|" | "blanks";
  readonly decimal: DecimalSign;
  readonly headers: readonly string[];
  /** A row of units under the header, or empty. */
  readonly units: readonly string[];
  readonly firstDataLine: number;
  readonly fieldCount: number;
  /** Rows of the sample from the first data line on. */
  readonly rows: readonly (readonly string[])[];
  readonly words: readonly string[];
}

/** Rows looked at to guess what the columns hold. */
const SAMPLE_ROWS = 300;

/** The first rows of a table, by which its columns are guessed. */
export function sampleRows(layout: TableLayout): TableLayout["rows"] {
  return layout.rows.slice(0, SAMPLE_ROWS);
}

/** Letters of the longest value: a date with its clock and zone, an angle in words. */
const LONGEST_VALUE = 100;
const delimiters = ["\t", ";", "|", ",", "blanks"] as const;
/** Rows needed below a line before it counts as the first of the data. */
const RUN = 3;

/**
 * Delimiter, decimal sign, header, units row and first data line of a table, from its first lines. The delimiter is
 * the one that cuts most lines into the same number of cells with values in them; ahead of it may stand any lines of
 * preamble. Undefined where no delimiter finds a table in the sample.
 */
export function tableLayout(lines: readonly string[]): TableLayout | undefined {
  let best: { layout: TableLayout; score: number } | undefined;
  for (const delimiter of delimiters) {
    const rows = lines.map((line) => splitRows(line, delimiter)[0] ?? []);
    const found = dataStart(rows);
    if (!found) {
      continue;
    }
    const data = rows.slice(found.first).filter((row) => row.length > 1 || (row[0] ?? "").trim() !== "");
    const fitting = data.filter((row) => Math.abs(row.length - found.width) <= 1).length / data.length;
    // More columns are better up to a few; a comma that is really the decimal sign makes cells that do not line up.
    const score = fitting * Math.min(found.width, 4) * valueShare(data) * (delimiter === "blanks" ? 0.6 : 1);
    if (!best || score > best.score * 1.05) {
      const layout = layoutFrom(delimiter, rows, found.first, found.width, data);
      best = { layout, score };
    }
  }
  return best?.layout;
}

/** True where a cell holds a number, a time or an angle rather than words. */
export function looksLikeValue(cell: string): boolean {
  const text = cell.trim();
  if (!/\d/.test(text) || text.length > LONGEST_VALUE) {
    return false;
  }
  const isNumeric = /^[NSEW]?\s*[+-]?[\d.,:;/\sT°º'"’′″+-]+(?:e[+-]?\d+)?\s*(?:Z|UTC|GMT|[NSEW]|am|pm)?$/i.test(text);
  return isNumeric || unitInCell(text) !== "" || (/\d:\d\d/.test(text) && readIsoMoment(text) !== undefined); // months with names
}

function dataStart(rows: readonly (readonly string[])[]): { first: number; width: number } | undefined {
  const widths = new Map<number, number>();
  for (const row of rows) {
    if (isDataRow(row)) {
      widths.set(row.length, (widths.get(row.length) ?? 0) + 1);
    }
  }
  let width = 0;
  let most = 0;
  for (const [length, count] of widths) {
    if (count > most) {
      width = length;
      most = count;
    }
  }
  if (most === 0) {
    return undefined;
  }
  const fits = (row: readonly string[] | undefined) =>
    row !== undefined && isDataRow(row) && Math.abs(row.length - width) <= 1;
  for (let first = 0; first < rows.length; first++) {
    if (!fits(rows[first])) {
      continue;
    }
    const after = rows.slice(first, first + RUN + 1);
    if (after.filter(fits).length >= Math.min(RUN, after.length)) {
      return { first, width };
    }
  }
  return undefined;
}

/** A row with at least two values, or one where it has only one cell, and no fewer values than words. */
function isDataRow(row: readonly string[]): boolean {
  const filled = row.filter((cell) => cell.trim() !== "");
  const values = filled.filter(looksLikeValue).length;
  return values >= Math.min(2, row.length) && 2 * values >= filled.length;
}

function valueShare(rows: readonly (readonly string[])[]): number {
  let values = 0;
  let filled = 0;
  for (const row of rows) {
    for (const cell of row) {
      filled += cell.trim() === "" ? 0 : 1;
      values += looksLikeValue(cell) ? 1 : 0;
    }
  }
  return filled === 0 ? 0 : values / filled;
}

function layoutFrom(
  delimiter: TableLayout["delimiter"],
  rows: readonly (readonly string[])[],
  first: number,
  width: number,
  data: readonly (readonly string[])[],
): TableLayout {
  const above = (n: number): readonly string[] => {
    const row = rows[first - n] ?? [];
    return row.length >= Math.max(1, width - 1) && row.some((cell) => cell.trim() !== "") ? row : [];
  };
  const isUnits = (row: readonly string[]) => {
    const filled = row.filter((cell) => cell.trim() !== "");
    return filled.length > 0 && 2 * filled.filter((cell) => unitNamed(cell) !== "").length > filled.length;
  };
  let headers = above(1);
  let units: readonly string[] = [];
  if (isUnits(headers) && above(2).length > 0) {
    units = headers;
    headers = above(2);
  }
  const decimal = decimalSign(delimiter, data);
  const words = [
    `columns divided by ${nameOf(delimiter)}`,
    `decimal ${decimal === "," ? "comma" : "point"}`,
    headers.length > 0 ? `header in line ${first - (units.length > 0 ? 1 : 0)}` : "no header: columns by their values",
    ...(units.length > 0 ? [`units in line ${first}`] : []),
    `data from line ${first + 1}`,
  ];
  return { delimiter, decimal, headers, units, firstDataLine: first, fieldCount: width, rows: data, words };
}

function decimalSign(delimiter: TableLayout["delimiter"], rows: readonly (readonly string[])[]): DecimalSign {
  if (delimiter === ",") {
    // Cells with a comma inside can only come from quotes.
    return rows.some((row) => row.some((cell) => /^[+-]?\d+,\d+$/.test(cell.trim()))) ? "," : ".";
  }
  let commas = 0;
  let points = 0;
  for (const row of rows) {
    for (const cell of row) {
      commas += /^[+-]?\d*,\d+\s*[^\d.,]{0,20}$/.test(cell.trim()) ? 1 : 0;
      points += /^[+-]?\d*\.\d+\s*[^\d.,]{0,20}$/.test(cell.trim()) ? 1 : 0;
    }
  }
  return commas > points ? "," : ".";
}

function nameOf(delimiter: TableLayout["delimiter"]): string {
  const names = { ",": "commas", ";": "semicolons", "\t": "tabs", "|": "bars", blanks: "blanks" };
  return names[delimiter];
}
