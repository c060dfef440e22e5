import { inputError } from "../../../shared/problems.ts";
import { longColumns, namedAxes } from "./mapAxes.ts";
import { type MapCells, settleAxes } from "./mapCells.ts";
import { cellNumber, type Row, shownCell, splitRows, wordsOf } from "./mapRows.ts";

/**
 * The entries of a motor map as CSV, in any of its usual shapes: speed down and torque across, the other way round, or a long table with
 * a column for each. Empty cells are gaps and give no entry. Commas, semicolons, tabs; a decimal comma where the
 * columns are not parted by commas; lines of remarks above.
 *
 * Which axis is speed comes from the words beside them; without words the axis with the larger numbers is. Where the
 * words would have a motor with more newton metres than turns a minute, they are taken as changed over, and that is said.
 */
export function readMotorMapCells(name: string, text: string): MapCells {
  const rows = splitRows(text);
  if (rows.length === 0)
    throw inputError("map-empty", name, "found no line, wanted a table of speed, torque and efficiency or loss");
  const longAt = rows.findIndex((row) => longColumns(row.texts) !== undefined);
  return longAt >= 0 ? readLong(name, rows, longAt) : readMatrix(name, rows);
}

function readLong(name: string, rows: readonly Row[], at: number): MapCells {
  const header = rows[at];
  const columns = longColumns(header.texts);
  if (columns === undefined) throw new Error(`${name}: long header lost`);
  const raw = rows.slice(at + 1).flatMap(({ texts, line }) => {
    const [down, across, value] = [columns.speed, columns.torque, columns.value].map((column) =>
      cellNumber(texts[column] ?? ""),
    );
    if (down === undefined || across === undefined) {
      throw inputError(
        "map-cell",
        `${name} line ${line}`,
        `found ${shownCell(texts.join(" "))}, wanted a speed and a torque in numbers`,
      );
    }
    return value === undefined ? [] : [{ down, across, value, line }];
  });
  checkSize(name, raw);
  const heading = wordsOf(rows.slice(0, at));
  const valueWords = header.texts[columns.value];
  const axes = { downIs: "speed", down: header.texts[columns.speed], across: header.texts[columns.torque] } as const;
  return settleAxes(raw, axes, `${heading} ${valueWords}`, rows);
}

function readMatrix(name: string, rows: readonly Row[]): MapCells {
  const count = (row: Row | undefined) => row?.texts.filter((cell) => cellNumber(cell) !== undefined).length ?? 0;
  const twoAt = rows.findIndex((row) => count(row) >= 2);
  // a map with a single column has but one number in its first line, beside the corner's words
  const before = rows[twoAt - 1];
  const isNarrow =
    count(rows[twoAt]) === 2 && count(before) === 1 && /rpm|rad|speed|nm|torque/i.test(before?.texts[0] ?? "");
  const headAt = isNarrow ? twoAt - 1 : twoAt;
  const head = rows[headAt];
  const body = rows.slice(headAt + 1).filter((row) => row.texts.some((cell) => cellNumber(cell) !== undefined));
  if (head === undefined || body.length === 0) {
    const message = "found no table: wanted a line of speeds or torques and below it lines that begin with the other";
    throw inputError("map-shape", name, message);
  }
  // columns of words may stand before the axis: the name of the axis, written once beside it
  const first = body.reduce(
    (least, row) =>
      Math.min(
        least,
        row.texts.findIndex((cell) => cellNumber(cell) !== undefined),
      ),
    Number.POSITIVE_INFINITY,
  );
  const axis = head.texts.map((cell, column) => (column > first ? cellNumber(cell) : undefined));
  const raw = body.flatMap(({ texts, line }) => {
    const down = cellNumber(texts[first] ?? "");
    if (down === undefined)
      throw inputError(
        "map-cell",
        `${name} line ${line}`,
        `found ${shownCell(texts[first] ?? "") || "nothing"} at the head of the line, wanted a number`,
      );
    return axis.flatMap((across, column) => {
      const cell = texts[column] ?? "";
      if (across === undefined || /^(-+|n\/?a|nan|nil|x)?$/i.test(cell)) return [];
      const value = cellNumber(cell);
      if (value === undefined)
        throw inputError("map-cell", `${name} line ${line}`, `found ${shownCell(cell)}, wanted a number or nothing`);
      return [{ down, across, value, line }];
    });
  });
  checkSize(name, raw);
  const corner = head.texts.slice(0, first + 1).join(" ");
  const besideDown = body.map((row) => row.texts.slice(0, first).join(" ")).join(" ");
  const above = wordsOf(rows.slice(0, headAt));
  const axes = namedAxes(corner, besideDown, above, head.texts.slice(first + 1).join(" "));
  return settleAxes(raw, axes, `${above} ${corner}`, rows);
}

const LARGEST = 1e9; // of any figure in a motor map, in any of its units

/** Refuses figures so large that changing their unit leaves the range of numbers. */
function checkSize(name: string, raw: readonly { down: number; across: number; value: number; line: number }[]): void {
  for (const { down, across, value, line } of raw) {
    const wild = [down, across, value].find((figure) => Math.abs(figure) > LARGEST);
    if (wild !== undefined)
      throw inputError(
        "map-cell",
        `${name} line ${line}`,
        `found ${wild}, at most ${LARGEST.toExponential()} is possible in a motor map`,
      );
  }
}
