import { plainNumber } from "../../shared/plainNumber.ts";
import { InputError, type Problem } from "../../shared/problems.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import { distanceAlong_m } from "./distanceAlong.ts";
import { profileAlong } from "./profileAlong.ts";
import type { Profile, Trace } from "./trace.ts";
import { cellsOf, isNoText, linesOf, speedColumns } from "./traceColumns.ts";

const maxSpeed_kmh = 400; // above any road vehicle; 900 km/h is a slip of the unit or of the hand
const maxDuration_s = 1e7; // 115 days
const lowestRoad_m = -500; // the lowest road on earth lies at about -430 m
const highestRoad_m = 9000;
const listedFaults = 100; // one wrong column makes as many faults as there are rows; the rest is counted

const wanted = "a trace has the columns time_s and one of speed_kmh, speed_mph, speed_mps, and perhaps elevation_m";

/**
 * A trace from CSV text: a header of `time_s`, one of `speed_kmh`, `speed_mph`, `speed_mps`, and perhaps `elevation_m`, in
 * any order; then at least two rows of plain numbers, cells separated by commas. Time rises strictly and is counted from
 * the first row; speed lies between 0 and 400 km/h; height becomes height against distance (trapezoid rule, rows at rest
 * merged). Throws InputError with every fault and its line (a long list is cut, and the rest counted); repairs nothing.
 *
 * @param name what to call the file in faults, `monday.csv`; without its ending it becomes the trace's id and title
 */
export function readTraceCsv(name: string, text: string): Trace {
  if (isNoText(text)) fail(name, "trace-not-text", `found bytes that are no text, as in a photograph; ${wanted}`);
  const lines = linesOf(text);
  if (lines.length === 0) fail(name, "trace-empty", `found nothing in it; ${wanted}`);

  const problems: Problem[] = [];
  const columns = readHeader(name, lines[0], problems);
  if (!columns) throw new InputError(problems);

  const time_s = new Float64Array(lines.length - 1);
  const speed_mps = new Float64Array(lines.length - 1);
  const elevation_m = new Float64Array(lines.length - 1);
  let lastTime_s = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < lines.length; i++) {
    const report = (code: string, message: string) => problems.push({ code, where: `${name} line ${i + 1}`, message });
    const cells = cellsOf(lines[i]);
    if (cells.length !== columns.count) {
      report("trace-cells", `found ${cells.length} cells, the header has ${columns.count}`);
      continue;
    }
    const row_s = readNumber(cells[columns.time], "time_s", report);
    if (row_s <= lastTime_s) report("trace-time", `found ${row_s} s after ${lastTime_s} s, times must rise`);
    if (!Number.isNaN(row_s)) lastTime_s = row_s;
    time_s[i - 1] = row_s;
    speed_mps[i - 1] = readSpeed_mps(cells[columns.speed], columns.speedName, report);
    if (columns.elevation >= 0) elevation_m[i - 1] = readElevation_m(cells[columns.elevation], report);
  }

  if (lines.length === 1)
    problems.push(fault(name, "trace-empty", "found a header and no row, at least two are wanted"));
  if (lines.length === 2) problems.push(fault(name, "trace-one-point", "found one row, at least two are wanted"));
  if (problems.length === 0) checkWhole(name, time_s, speed_mps, problems);
  if (problems.length > 0) throw new InputError(cutList(name, problems));

  const start_s = time_s[0];
  for (let i = 0; i < time_s.length; i++) time_s[i] -= start_s;
  const id = name.replace(/\.csv$/i, "");
  const trace = { id, title: id, time_s, speed_mps };
  if (columns.elevation < 0) return trace;
  const along_m = distanceAlong_m(time_s, speed_mps);
  const profile = profileAlong(along_m, elevation_m);
  if (!profile) return trace;
  checkSlopes(name, profile, along_m);
  return { ...trace, profile };
}

/** A piece of road is longer than it rises or falls: its slope has a sine. */
function checkSlopes(name: string, { distance_m, elevation_m }: Profile, along_m: Float64Array): void {
  const problems: Problem[] = [];
  for (let i = 1; i < distance_m.length; i++) {
    const run_m = distance_m[i] - distance_m[i - 1];
    const rise_m = elevation_m[i] - elevation_m[i - 1];
    if (Math.abs(rise_m) < run_m) continue;
    const found = `found ${Number(rise_m.toPrecision(3))} m of rise in ${Number(run_m.toPrecision(3))} m of road`;
    const where = `${name} line ${along_m.indexOf(distance_m[i]) + 2}`;
    problems.push(fault(where, "trace-steep", `${found}, a road is longer than it rises`));
  }
  if (problems.length > 0) throw new InputError(cutList(name, problems));
}

type Report = (code: string, message: string) => void;

interface Columns {
  readonly count: number;
  readonly time: number;
  readonly speed: number;
  readonly speedName: string;
  /** -1 where there is none. */
  readonly elevation: number;
}

/** Where the columns stand, or undefined where rows could not be read by this header. Faults go to `problems`. */
function readHeader(name: string, line: string, problems: Problem[]): Columns | undefined {
  const report = (code: string, message: string) => problems.push({ code, where: `${name} line 1`, message });
  const header = cellsOf(line);
  header.forEach((column, i) => {
    if (column !== "time_s" && column !== "elevation_m" && !Object.hasOwn(speedColumns, column))
      report("trace-column-unknown", `found the column "${shorten(column)}"; ${wanted}`);
    else if (header.indexOf(column) !== i) report("trace-column-twice", `found the column ${column} twice`);
  });
  const speeds = header.filter((column) => Object.hasOwn(speedColumns, column));
  if (!header.includes("time_s")) report("trace-column-missing", `found no column time_s; ${wanted}`);
  if (speeds.length === 0) report("trace-column-missing", `found no column of speeds; ${wanted}`);
  if (new Set(speeds).size > 1) report("trace-column-speeds", `found ${speeds.join(" and ")}, one of them is wanted`);
  if (speeds.length === 0 || !header.includes("time_s")) return undefined;
  return {
    count: header.length,
    time: header.indexOf("time_s"),
    speed: header.indexOf(speeds[0]),
    speedName: speeds[0],
    elevation: header.indexOf("elevation_m"),
  };
}

/** The number in a cell, or NaN once the fault is said. */
function readNumber(cell: string, column: string, report: Report): number {
  if (cell === "") {
    report("trace-blank", `found nothing in ${column}, a number is wanted`);
    return Number.NaN;
  }
  const number = plainNumber(cell);
  if (!Number.isNaN(number)) return number;
  report("trace-number", `found "${shorten(cell)}" in ${column}, a plain number such as 12.5 is wanted`);
  return Number.NaN;
}

function readSpeed_mps(cell: string, column: string, report: Report): number {
  const written = readNumber(cell, column, report);
  const speed_mps = written * speedColumns[column];
  const unit = { speed_kmh: "km/h", speed_mph: "mph", speed_mps: "m/s" }[column] ?? column;
  if (speed_mps < 0) report("trace-speed", `found ${written} ${unit}, a speed is 0 or more`);
  // A speed of exactly the limit may come out a rounding above it.
  else if (speed_mps > maxSpeed_kmh * MPS_PER_KMH * (1 + 1e-12)) {
    const most = (maxSpeed_kmh * MPS_PER_KMH) / speedColumns[column];
    report("trace-speed", `found ${written} ${unit}, at most ${Math.round(most)} ${unit} is allowed`);
  }
  return speed_mps;
}

function readElevation_m(cell: string, report: Report): number {
  const elevation_m = readNumber(cell, "elevation_m", report);
  if (elevation_m < lowestRoad_m || elevation_m > highestRoad_m)
    report("trace-elevation", `found ${elevation_m} m, ${lowestRoad_m} to ${highestRoad_m} m is allowed`);
  return elevation_m;
}

/** Faults that only show once every row is sound. */
function checkWhole(name: string, time_s: Float64Array, speed_mps: Float64Array, problems: Problem[]): void {
  const duration_s = time_s[time_s.length - 1] - time_s[0];
  if (duration_s > maxDuration_s)
    problems.push(
      fault(name, "trace-long", `found ${duration_s} s from first to last row, at most ${maxDuration_s} s is allowed`),
    );
  if (speed_mps.every((speed) => speed === 0))
    problems.push(fault(name, "trace-still", "found a speed of 0 in every row, there is no road to drive"));
}

function cutList(name: string, problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= listedFaults) return problems;
  const more = problems.length - listedFaults;
  return [...problems.slice(0, listedFaults), fault(name, "trace-more", `found ${more} more faults of these kinds`)];
}

function fault(where: string, code: string, message: string): Problem {
  return { code, where, message };
}

function fail(where: string, code: string, message: string): never {
  throw new InputError([fault(where, code, message)]);
}

function shorten(found: string): string {
  return found.length > 40 ? `${found.slice(0, 40)}...` : found;
}
