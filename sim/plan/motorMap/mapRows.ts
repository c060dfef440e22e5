import Papa from "papaparse";
import { plainNumber } from "../../../shared/plainNumber.ts";

/** A line of a map file that is not empty, its cells trimmed. */
export interface Row {
  readonly line: number;
  readonly texts: readonly string[];
}

/** The lines of a table in text: commas, semicolons, tabs; a decimal comma where the columns are not parted by commas. */
export function splitRows(text: string): Row[] {
  const { data, meta } = Papa.parse<string[]>(text.replace(/^\ufeff/, ""), {
    delimitersToGuess: [",", ";", "\t", "|"],
    skipEmptyLines: false,
  });
  const commas =
    meta.delimiter !== "," &&
    data.some((row) => row.some((cell) => /^\s*-?\d+,(\d{1,2}|\d{4,})\s*%?\s*$|^\s*-?0,\d+\s*%?\s*$/.test(cell)));
  return data.flatMap((cells, i) => {
    const texts = cells.map((cell) => cell.trim()).map((cell) => (commas ? cell.replace(",", ".") : cell));
    return texts.some((cell) => cell !== "") ? [{ line: i + 1, texts }] : [];
  });
}

/** A cell's number: thousands marked by a comma or a space are taken out, a percent sign is left aside. */
export function cellNumber(text: string): number | undefined {
  const plain = text
    .replace(/[−–]/g, "-")
    .replace(/ ?%$/, "")
    .replace(/(\d)[, \u00a0\u202f](?=\d{3}(\D|$))/g, "$1");
  const value = plainNumber(plain);
  return Number.isNaN(value) ? undefined : value;
}

/** A cell as a message shows it: whole if short, else its beginning and how long it is. */
export function shownCell(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 30)}… (${text.length} characters)`;
}

/** All the words of some lines, for what they say of the table below. */
export function wordsOf(rows: readonly Row[]): string {
  return rows.map((row) => row.texts.join(" ")).join(" ");
}
