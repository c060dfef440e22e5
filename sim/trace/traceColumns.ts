import { LINE_END } from "../../shared/lineEnd.ts";
import { MPS_PER_KMH, MPS_PER_MPH } from "../../shared/units.ts";

/** Speed columns a trace may have, each with what one of its units is in metres a second. */
export const speedColumns: Readonly<Record<string, number>> = {
  speed_kmh: MPS_PER_KMH,
  speed_mph: MPS_PER_MPH,
  speed_mps: 1,
};

/** Cells of one line: split at commas, spaces around taken off, and one pair of double quotes, as spreadsheets put them. */
export function cellsOf(line: string): string[] {
  return line.split(",").map((cell) => cell.trim().replace(/^"(.*)"$/, "$1"));
}

/** Lines of a text without its byte order mark, whatever the line ends; blank lines at the end are dropped. */
export function linesOf(text: string): string[] {
  const lines = text.replace(/^\uFEFF/, "").split(LINE_END);
  while (lines.length > 0 && lines[lines.length - 1].trim() === "") lines.pop();
  return lines;
}

/** True for the text of a photograph or another file that is no text: a zero byte, or bytes that are no UTF-8. */
export function isNoText(text: string): boolean {
  return text.includes("\0") || text.includes("\uFFFD");
}

/**
 * True where a text announces itself as a trace: a header of exactly `time_s`, one speed column and perhaps `elevation_m`,
 * in any order. Says nothing of the rows; `readTraceCsv` reads those strictly. Anything else is a log or something else.
 */
export function isTraceCsv(text: string): boolean {
  if (isNoText(text.slice(0, 4096))) return false;
  const header = cellsOf(text.replace(/^\uFEFF/, "").split(LINE_END, 1)[0] ?? "");
  const rest = header.filter((name) => name !== "time_s" && name !== "elevation_m");
  const isOnceEach = new Set(header).size === header.length;
  return isOnceEach && header.includes("time_s") && rest.length === 1 && Object.hasOwn(speedColumns, rest[0]);
}
