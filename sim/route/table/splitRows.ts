import Papa from "papaparse";
import type { TableLayout } from "./tableLayout.ts";

/** Cells of one or more lines. A quote left open swallows no more than the lines handed in; then it is taken as text. */
export function splitRows(text: string, delimiter: TableLayout["delimiter"]): readonly (readonly string[])[] {
  const isBlanks = delimiter === "blanks";
  const lines = isBlanks ? text.replace(/^[ \t]+|[ \t]+$/gm, "").replace(/[ \t]+/g, "\t") : text;
  const config = { delimiter: isBlanks ? "\t" : delimiter, newline: "\n" as const };
  const result = Papa.parse<string[]>(lines, config);
  if (result.errors.some((error) => error.type === "Quotes")) {
    return Papa.parse<string[]>(lines.replaceAll('"', ""), config).data;
  }
  return result.data;
}
