// Longer than most files: it holds the order of the steps and joins their results; the steps have their own files.
import { inputError } from "../../shared/problems.ts";
import {
  type CleanedLog,
  type CleanedSeries,
  type CleanInput,
  type CleanOptions,
  type LongGap,
  Mended,
  type Track,
} from "./cleanedLog.ts";
import { cleanHeights } from "./cleanHeights.ts";
import { type CleanedStretch, cleanStretch, type StretchSetting } from "./cleanStretch.ts";
import { dropUnreachable, dropZeroFixes } from "./dropWild.ts";
import { dropZeroHeights } from "./dropZeroHeights.ts";
import { findGaps, type GapFindings } from "./findGaps.ts";
import { findJumps, type JumpFindings } from "./findJumps.ts";
import { fitSpeedNoise, usualSpeedNoise } from "./fitSpeedNoise.ts";
import { hasValues } from "./fixes.ts";
import { notDriven } from "./notDriven.ts";
import { orderInTime } from "./orderInTime.ts";
import { fitPositionNoise } from "./positionNoise.ts";
import { qualityOf } from "./quality.ts";
import { rawSeries } from "./rawSeries.ts";
import { RepairList } from "./repairList.ts";
import { type RowColumns, rowColumns } from "./rowColumns.ts";
import { speedScale } from "./speedScale.ts";
import { speedsAgree } from "./speedsAgree.ts";
import { runSteps, type Steps } from "./steps.ts";

/** A log that moves less than this in all is standing, whatever its wander. */
const STILL_m = 50;
const LONGEST_s = 4e6;

/**
 * A log turned into a drive at one row a second that can be trusted, with every repair said. In this order:
 *
 *  1. rows put in order of time, clock changes undone, repeats dropped;
 *  2. positions at 0,0 and positions out of reach dropped;
 *  3. sideways steps of the positions put back;
 *  4. gaps classed as parked, tunnel or lost signal; the log cut where no drive can be made up;
 *  5. every stretch resampled to 1 s by a smoother that weighs positions and recorded speeds by their noise;
 *     stands held still, gaps bridged, speeds held to what a car can do;
 *  6. heights freed of steps, smoothed along distance, slopes held to what roads have.
 *
 * Throws `InputError` where the log has no times, fewer than two fixes, or neither speed nor any position.
 */
export function cleanLog(
  log: CleanInput,
  options: CleanOptions = {},
  progress?: (fraction_frac: number) => void,
  isCancelled?: () => boolean,
): CleanedLog {
  return runSteps(cleanLogInSteps(log, options), progress, isCancelled);
}

/** The same in slices, for a worker that must stay open to a cancel. */
export function* cleanLogInSteps(log: CleanInput, options: CleanOptions = {}): Steps<CleanedLog> {
  if (!hasValues(log.fixes.time_s)) {
    throw inputError(
      "noTimes",
      log.file,
      "found positions without times: a planned route; type the speeds to drive it at",
    );
  }
  const utcOffset_s = options.utcOffset_s ?? 0;
  const repairs = new RepairList(options.off);
  const rows = rowColumns(log.fixes, orderInTime(log, repairs, utcOffset_s));
  yield 0.02;
  const raw = rawSeries(rows);
  yield 0.06;
  dropZeroFixes(rows, repairs);
  dropUnreachable(rows, repairs, utcOffset_s);
  dropZeroHeights(rows, repairs);
  checkUsable(log, rows);
  yield 0.12;
  const jumps = findJumps(rows, repairs, utcOffset_s);
  yield 0.2;
  if (!speedsAgree(rows) && repairs.does("speedScale")) {
    rows.speed_mps.fill(Number.NaN);
    const [from_s, to_s] = [rows.time_s[0], rows.time_s[rows.count - 1]];
    repairs.add("speedScale", 1, from_s, to_s, "recorded speeds have nothing to do with the positions; left out");
  }
  const found = findGaps(rows, repairs, utcOffset_s);
  checkLength(log, rows, found);
  const noise = fitPositionNoise(rows, found.stretches, found.interval_s);
  const hasSpeeds = speedCoverage_frac(rows) > 0.5;
  const setting: StretchSetting = {
    noise,
    speedNoise: hasSpeeds ? fitSpeedNoise(...speedRows(rows)) : usualSpeedNoise,
    speedScale: hasSpeeds ? speedScale(rows, repairs) : 1,
    hasSpeeds,
    offsets: jumps.offsets,
    utcOffset_s,
  };
  if (hasSpeeds && repairs.does("speedNoise")) {
    const [from_s, to_s] = [rows.time_s[0], rows.time_s[rows.count - 1]];
    const words = `recorded speeds smoothed, their noise taken as ${setting.speedNoise.noise_mps} m/s`;
    repairs.add("speedNoise", Math.round(to_s - from_s), from_s, to_s, words);
  }
  const parts: CleanedStretch[] = [];
  const heights: Float64Array[] = [];
  let done = 0;
  for (const stretch of found.stretches) {
    const share = (stretch.to - stretch.from) / rows.count;
    const steps = cleanStretch(rows, stretch, setting, repairs);
    let next = steps.next();
    while (!next.done) {
      yield 0.25 + 0.7 * (done + share * 0.8 * next.value);
      next = steps.next();
    }
    parts.push(next.value);
    heights.push(cleanHeights(rows, stretch, distanceOf(next.value.speed_mps), repairs, utcOffset_s));
    done += share;
    yield 0.25 + 0.7 * done;
  }
  return assembled(log, rows, raw, parts, heights, found, setting, jumps, repairs);
}

function assembled(
  log: CleanInput,
  rows: RowColumns,
  raw: CleanedLog["raw"],
  parts: readonly CleanedStretch[],
  heights: readonly Float64Array[],
  found: GapFindings,
  setting: StretchSetting,
  jumps: JumpFindings,
  repairs: RepairList,
): CleanedLog {
  const { series, track } = joined(parts, heights);
  markSpans(series, jumps.spans);
  const gaps: LongGap[] = found.gaps.map((gap, i) => ({ ...gap, row: series.breaks[i] ?? series.count }));
  const hasPositions = hasValues(rows.lat_deg);
  const finished = repairs.finish();
  const distance_m = series.distance_m[series.count - 1] ?? 0;
  const isStill = distance_m < STILL_m;
  const quality = qualityOf({
    series,
    repairs: finished,
    rows: rows.count,
    interval_s: found.interval_s,
    positionNoise_m: hasPositions ? setting.noise.wandering_m : Number.NaN,
    hasSpeeds: setting.hasSpeeds,
    isStill,
    notDriven: notDriven(series, setting.utcOffset_s),
  });
  if (log.fixes.count === 0) {
    throw new Error(`cleaned an empty log: ${log.file}`);
  }
  return { series, track: hasPositions ? track : undefined, raw, gaps, repairs: finished, quality, isStill };
}

function joined(
  parts: readonly CleanedStretch[],
  heights: readonly Float64Array[],
): { series: CleanedSeries; track: Track } {
  const count = parts.reduce((sum, part) => sum + part.speed_mps.length, 0);
  const column = () => new Float64Array(count);
  const series = {
    count,
    time_s: column(),
    speed_mps: column(),
    distance_m: column(),
    height_m: column(),
    flags: new Uint8Array(count),
    breaks: [] as number[],
  };
  const track = { lat_deg: column(), lon_deg: column() };
  let at = 0;
  let from_m = 0;
  parts.forEach((part, p) => {
    if (p > 0) {
      series.breaks.push(at);
    }
    const distance_m = distanceOf(part.speed_mps);
    for (let i = 0; i < part.speed_mps.length; i++) {
      series.time_s[at + i] = part.start_s + i;
      series.distance_m[at + i] = from_m + distance_m[i];
    }
    series.speed_mps.set(part.speed_mps, at);
    series.height_m.set(heights[p], at);
    series.flags.set(part.flags, at);
    track.lat_deg.set(part.lat_deg, at);
    track.lon_deg.set(part.lon_deg, at);
    at += part.speed_mps.length;
    from_m += distance_m[distance_m.length - 1] ?? 0;
  });
  return { series, track };
}

/** Marks the seconds whose positions were put back; spans come in order of time. */
function markSpans(series: CleanedSeries, spans: readonly (readonly [number, number])[]): void {
  let i = 0;
  for (const [from_s, to_s] of spans) {
    while (i < series.count && series.time_s[i] < from_s) {
      i++;
    }
    for (; i < series.count && series.time_s[i] <= to_s; i++) {
      series.flags[i] |= Mended.multipath;
    }
  }
}

/** Distance from the start at every second: mean speed of each step times its second. */
function distanceOf(speed_mps: Float64Array): Float64Array {
  const distance_m = new Float64Array(speed_mps.length);
  for (let i = 1; i < speed_mps.length; i++) {
    distance_m[i] = distance_m[i - 1] + 0.5 * (speed_mps[i] + speed_mps[i - 1]);
  }
  return distance_m;
}

function speedCoverage_frac(rows: RowColumns): number {
  let count = 0;
  for (let i = 0; i < rows.count; i++) {
    count += Number.isNaN(rows.speed_mps[i]) ? 0 : 1;
  }
  const placed = rows.lat_deg.reduce((sum, value) => sum + (Number.isNaN(value) ? 0 : 1), 0);
  // rows of other quantities between the fixes do not count against the speed
  return placed > 0 ? count / Math.min(rows.count, Math.max(placed, count)) : count > 0 ? 1 : 0;
}

function speedRows(rows: RowColumns): [Float64Array, Float64Array] {
  const kept: number[] = [];
  for (let i = 0; i < rows.count; i++) {
    if (!Number.isNaN(rows.speed_mps[i])) {
      kept.push(i);
    }
  }
  return [Float64Array.from(kept, (i) => rows.time_s[i]), Float64Array.from(kept, (i) => rows.speed_mps[i])];
}

/** Stretches at one row a second must fit into memory: a month and a half of unbroken logging does. */
function checkLength(log: CleanInput, rows: RowColumns, found: GapFindings): void {
  const length_s = found.stretches.reduce((sum, one) => sum + rows.time_s[one.to - 1] - rows.time_s[one.from], 0);
  if (length_s > LONGEST_s) {
    const days = (length_s / 86400).toFixed(0);
    throw inputError("tooLong", log.file, `found ${days} days of logging, at most 46 are cleaned at once: cut the log`);
  }
}

function checkUsable(log: CleanInput, rows: RowColumns): void {
  if (hasValues(rows.lat_deg) || hasValues(rows.speed_mps)) {
    return;
  }
  const hadPositions = hasValues(log.fixes.lat_deg);
  const message = hadPositions
    ? "found every position at 0,0 or out of reach of the others: the receiver never had a lock"
    : "found neither positions nor speeds";
  throw inputError("noUsablePosition", log.file, `${message}, wanted a drive`);
}
