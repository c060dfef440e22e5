import Papa from "papaparse";
import { inputError } from "../../shared/problems.ts";
import { NM_PER_LBFT, RADPS_PER_RPM } from "../../shared/units.ts";

/** What a map's words say its values are; nothing if they do not say. */
export type MapValues = "efficiency" | "percent" | "W" | "kW" | undefined;

/** One entry of a motor map, wherever it stood in the file. */
export interface MapCell {
  readonly speed_rpm: number;
  readonly torque_Nm: number;
  readonly value: number;
  readonly line: number;
}

export interface MapCells {
  readonly cells: readonly MapCell[];
  readonly values: MapValues;
  readonly notes: readonly string[];
}

interface Row {
  readonly line: number;
  readonly texts: readonly string[];
}

/** Either axis before it is settled which of them is speed. */
interface Axes {
  readonly down: AxisWords;
  readonly across: AxisWords;
}
type AxisWords = "speed" | "torque" | undefined;

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
      number(texts[column] ?? ""),
    );
    if (down === undefined || across === undefined) {
      throw inputError(
        "map-cell",
        `${name} line ${line}`,
        `found ${texts.join(" ")}, wanted a speed and a torque in numbers`,
      );
    }
    return value === undefined ? [] : [{ down, across, value, line }];
  });
  const heading = words(rows.slice(0, at));
  const valueWords = header.texts[columns.value] ?? "";
  const axes = { down: "speed", across: "torque" } as const;
  return settle(
    raw,
    axes,
    header.texts[columns.speed] ?? "",
    header.texts[columns.torque] ?? "",
    `${heading} ${valueWords}`,
    rows,
  );
}

function readMatrix(name: string, rows: readonly Row[]): MapCells {
  const count = (row: Row | undefined) => row?.texts.filter((cell) => number(cell) !== undefined).length ?? 0;
  const twoAt = rows.findIndex((row) => count(row) >= 2);
  // a map with a single column has but one number in its first line, beside the corner's words
  const before = rows[twoAt - 1];
  const isNarrow =
    count(rows[twoAt]) === 2 && count(before) === 1 && /rpm|rad|speed|nm|torque/i.test(before?.texts[0] ?? "");
  const headAt = isNarrow ? twoAt - 1 : twoAt;
  const head = rows[headAt];
  const body = rows.slice(headAt + 1).filter((row) => row.texts.some((cell) => number(cell) !== undefined));
  if (head === undefined || body.length === 0) {
    const message = "found no table: wanted a line of speeds or torques and below it lines that begin with the other";
    throw inputError("map-shape", name, message);
  }
  // columns of words may stand before the axis: the name of the axis, written once beside it
  const first = Math.min(...body.map((row) => row.texts.findIndex((cell) => number(cell) !== undefined)));
  const axis = head.texts.map((cell, column) => (column > first ? number(cell) : undefined));
  const raw = body.flatMap(({ texts, line }) => {
    const down = number(texts[first] ?? "");
    if (down === undefined)
      throw inputError(
        "map-cell",
        `${name} line ${line}`,
        `found ${texts[first] || "nothing"} at the head of the line, wanted a number`,
      );
    return axis.flatMap((across, column) => {
      const cell = texts[column] ?? "";
      if (across === undefined || /^(-+|n\/?a|nan|nil|x)?$/i.test(cell)) return [];
      const value = number(cell);
      if (value === undefined)
        throw inputError("map-cell", `${name} line ${line}`, `found ${cell}, wanted a number or nothing`);
      return [{ down, across, value, line }];
    });
  });
  const corner = head.texts.slice(0, first + 1).join(" ");
  const besideDown = body.map((row) => row.texts.slice(0, first).join(" ")).join(" ");
  const above = words(rows.slice(0, headAt));
  const axes = namedAxes(corner, besideDown, above, head.texts.slice(first + 1).join(" "));
  return settle(raw, axes.axes, axes.down, axes.across, `${above} ${corner}`, rows);
}

/** The words for each axis: a corner such as `rpm \ Nm`, a remark such as `rpm down`, a line above, a column beside. */
function namedAxes(
  corner: string,
  beside: string,
  above: string,
  headWords: string,
): { axes: Axes; down: string; across: string } {
  const parts = plainUnits(corner).split(/[\\/|]/);
  const isPair = parts.length === 2 && parts.every((part) => axisOf(part) !== undefined);
  const said = /([a-z]+)[^a-z]+(?:goes |going )?down/i.exec(plainUnits(above))?.[1] ?? "";
  const down = isPair ? (parts[0] ?? "") : (axisOf(said) ?? axisOf(beside)) ? `${said} ${beside}` : corner;
  const across = isPair ? (parts[1] ?? "") : axisOf(headWords) ? headWords : above;
  const downIs = axisOf(down);
  const acrossIs = axisOf(across);
  if (downIs !== undefined)
    return { axes: { down: downIs, across: downIs === "speed" ? "torque" : "speed" }, down, across };
  if (acrossIs !== undefined)
    return { axes: { down: acrossIs === "speed" ? "torque" : "speed", across: acrossIs }, down, across };
  return { axes: { down: undefined, across: undefined }, down, across };
}

function settle(
  raw: readonly { down: number; across: number; value: number; line: number }[],
  axes: Axes,
  downWords: string,
  acrossWords: string,
  valueWords: string,
  rows: readonly Row[],
): MapCells {
  const notes: string[] = [];
  const downMost = largest(raw.map((cell) => cell.down));
  const acrossMost = largest(raw.map((cell) => cell.across));
  let isDownSpeed = axes.down === undefined ? downMost >= acrossMost : axes.down === "speed";
  const speedWords = isDownSpeed ? downWords : acrossWords;
  const torqueWords = isDownSpeed ? acrossWords : downWords;
  const perRadian = /rad/i.test(speedWords) ? 1 / RADPS_PER_RPM : 1;
  const perPoundFoot = /lb|ft/i.test(torqueWords) ? NM_PER_LBFT : 1;
  if (axes.down === undefined)
    notes.push(
      `no words say which axis is speed: taken as the one ${isDownSpeed ? "down" : "across"}, with the larger numbers`,
    );
  const speedMost_rpm = perRadian * (isDownSpeed ? downMost : acrossMost);
  const torqueMost_Nm = perPoundFoot * (isDownSpeed ? acrossMost : downMost);
  if (axes.down !== undefined && speedMost_rpm < torqueMost_Nm) {
    isDownSpeed = !isDownSpeed;
    notes.push(
      `speed and torque stood in each other's place (${short(torqueMost_Nm)} as a torque in Nm, ${short(speedMost_rpm)} as a top speed in rpm): changed over`,
    );
  }
  if (perRadian !== 1) notes.push("speeds read in rad/s");
  if (perPoundFoot !== 1) notes.push("torques read in lb ft");
  const cells = raw.map(({ down, across, value, line }) => ({
    speed_rpm: (isDownSpeed ? down : across) * perRadian,
    torque_Nm: (isDownSpeed ? across : down) * perPoundFoot,
    value,
    line,
  }));
  return { cells, values: valuesOf(valueWords, rows), notes };
}

function valuesOf(text: string, rows: readonly Row[]): MapValues {
  if (/loss|heat/i.test(text)) return /kw/i.test(text) ? "kW" : "W";
  if (rows.some((row) => row.texts.some((cell) => /^[\d.,]+ ?%$/.test(cell)))) return "percent";
  if (/%|percent|per cent/i.test(text)) return "percent";
  return /eff|\beta\b|η/i.test(text) ? "efficiency" : undefined;
}

/** The columns of a long table's header; nothing if the line is no such header. */
function longColumns(texts: readonly string[]): { speed: number; torque: number; value: number } | undefined {
  if (texts.some((cell) => number(cell) !== undefined)) return undefined;
  const speed = texts.findIndex((cell) => axisOf(cell) === "speed");
  const torque = texts.findIndex((cell) => axisOf(cell) === "torque");
  const value = texts.findIndex((cell, i) => i !== speed && i !== torque && /eff|eta|η|loss|%/i.test(cell));
  return speed >= 0 && torque >= 0 && value >= 0 ? { speed, torque, value } : undefined;
}

function axisOf(text: string): AxisWords {
  const plain = plainUnits(text);
  const isSpeed = /rpm|radps|speed|turns/i.test(plain);
  const isTorque = /nm\b|torque|lb ?f? ?ft|ft ?lb/i.test(plain);
  return isSpeed === isTorque ? undefined : isSpeed ? "speed" : "torque";
}

/** Slashes within a unit taken out, so that the others part two axes. */
function plainUnits(text: string): string {
  return text
    .replace(/rad ?\/ ?s(ec)?/gi, "radps")
    .replace(/rev(s|olutions)? ?\/ ?min|r ?\/ ?min|1 ?\/ ?min|min\^?[-−]1/gi, "rpm")
    .replace(/n ?[.·]? ?m\b/gi, "Nm");
}

function splitRows(text: string): Row[] {
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
function number(text: string): number | undefined {
  const plain = text
    .replace(/[−–]/g, "-")
    .replace(/ ?%$/, "")
    .replace(/(\d)[, \u00a0\u202f](?=\d{3}(\D|$))/g, "$1");
  const value = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
  return Number.isFinite(value) ? value : undefined;
}

function words(rows: readonly Row[]): string {
  return rows.map((row) => row.texts.join(" ")).join(" ");
}

function largest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

function short(value: number): string {
  return String(Number(value.toPrecision(3)));
}
