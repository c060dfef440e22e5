// Longer than most files: it holds the order of the steps for one stretch; the steps have their own files.
import { alongRoad } from "./alongRoad.ts";
import { bridgeStretch } from "./bridgeStretch.ts";
import { Mended } from "./cleanedLog.ts";
import { filledIn, forStanding, interpolated, rawFromPositions } from "./fillSpeeds.ts";
import type { Stretch } from "./findGaps.ts";
import { findStanding, markLoitering, recordedLimits, wanderingLimits } from "./findStanding.ts";
import { holdToCar } from "./holdToCar.ts";
import { layOut } from "./plane.ts";
import { writeClock, writeDuration } from "./readTime.ts";
import type { RepairList } from "./repairList.ts";
import type { RowColumns } from "./rowColumns.ts";
import { type PositionNoise, type SmoothedPositions, smoothPositions } from "./smoothPositions.ts";
import { smoothSpeed } from "./smoothSpeed.ts";
import type { SpeedNoise } from "./speedModel.ts";
import type { Steps } from "./steps.ts";
import { type Timeline, timeline } from "./timeline.ts";

/** What is known of the whole log when a stretch of it is cleaned. */
export interface StretchSetting {
  readonly noise: PositionNoise;
  readonly speedNoise: SpeedNoise;
  /** Factor on recorded speeds. */
  readonly speedScale: number;
  readonly hasSpeeds: boolean;
  /** Variance of a change of the positions' offset, by row. */
  readonly offsets: ReadonlyMap<number, number>;
  readonly utcOffset_s: number;
}

/** One stretch at one row a second, before heights. */
export interface CleanedStretch {
  readonly start_s: number;
  readonly speed_mps: Float64Array;
  readonly flags: Uint8Array;
  readonly lat_deg: Float64Array;
  readonly lon_deg: Float64Array;
}

/** A receiver that starts again after a parking may be off by some 40 m, and its car has not moved. */
const PARKED_OFFSET_m2 = 1600;

/** Cleans one stretch: positions smoothed, stands held still, speeds smoothed, gaps bridged, all held to what a car can do. */
export function* cleanStretch(
  rows: RowColumns,
  stretch: Stretch,
  setting: StretchSetting,
  repairs: RepairList,
): Steps<CleanedStretch> {
  const line = timeline(rows, stretch.from, stretch.to);
  const plane = planeOf(rows, stretch);
  const moments = momentsOf(rows, stretch, line, plane, setting);
  const bridged = bridgedMoments(rows, stretch, line);
  const hasPositions = moments.positions > 1;

  let smoothed: SmoothedPositions | undefined;
  let fromPositions: Float64Array | undefined;
  if (hasPositions) {
    smoothed = yield* smoothPositions({ ...moments, isStanding: bridged.parked, noise: setting.noise });
    fromPositions = alongRoad(line.time_s, smoothed.eastSpeed_mps, smoothed.northSpeed_mps);
  }
  const source = setting.hasSpeeds ? filledIn(line, moments.speed_mps, fromPositions) : fromPositions;
  if (!source) {
    return nothing(rows, stretch, line);
  }
  let isStanding = bridged.parked;
  if (repairs.does("standingDrift")) {
    const limits = setting.hasSpeeds ? recordedLimits : wanderingLimits(setting.noise.wandering_m);
    isStanding = findStanding(line.time_s, forStanding(source, setting.hasSpeeds), limits);
    if (!setting.hasSpeeds && smoothed) {
      const box_m = 2 * limits.creep_m;
      const { east_m, north_m } = smoothed;
      markLoitering(line.time_s, east_m, north_m, source, box_m, 1.5 * limits.speed_mps, isStanding);
    }
    for (let i = 0; i < line.count; i++) {
      // in a gap nothing is known of a stop; a parking was found by its two ends
      isStanding[i] = bridged.parked[i] || (isStanding[i] && !bridged.driven[i]) ? 1 : 0;
    }
    if (hasPositions) {
      smoothed = yield* smoothPositions({ ...moments, isStanding, noise: setting.noise });
      fromPositions = alongRoad(line.time_s, smoothed.eastSpeed_mps, smoothed.northSpeed_mps);
    }
  }
  const isSmoothing = repairs.does("speedNoise");
  let speed_mps: Float64Array;
  if (!setting.hasSpeeds) {
    speed_mps = isSmoothing || !smoothed ? (fromPositions ?? source) : rawFromPositions(line, moments);
  } else if (isSmoothing) {
    speed_mps = smoothSpeed(
      line.time_s,
      filledIn(line, moments.speed_mps, fromPositions),
      isStanding,
      setting.speedNoise,
    );
  } else {
    speed_mps = interpolated(line.time_s, filledIn(line, moments.speed_mps, fromPositions));
  }
  for (let i = 0; i < line.count; i++) {
    speed_mps[i] = isStanding[i] ? 0 : Math.max(0, speed_mps[i]);
  }
  bridgeStretch(stretch, line, speed_mps, smoothed);
  return onGrid(rows, stretch, line, speed_mps, isStanding, bridged.driven, smoothed, plane, setting, repairs);
}

interface Moments {
  readonly time_s: Float64Array;
  readonly east_m: Float64Array;
  readonly north_m: Float64Array;
  readonly speed_mps: Float64Array;
  readonly offset_m2: Float64Array;
  readonly positions: number;
}

interface Plane {
  readonly east_m: Float64Array;
  readonly north_m: Float64Array;
}

function planeOf(rows: RowColumns, stretch: Stretch): Plane {
  return layOut(rows.lat_deg.subarray(stretch.from, stretch.to), rows.lon_deg.subarray(stretch.from, stretch.to));
}

function momentsOf(rows: RowColumns, stretch: Stretch, line: Timeline, plane: Plane, setting: StretchSetting): Moments {
  const n = line.count;
  const east_m = new Float64Array(n).fill(Number.NaN);
  const north_m = new Float64Array(n).fill(Number.NaN);
  const speed_mps = new Float64Array(n).fill(Number.NaN);
  const offset_m2 = new Float64Array(n);
  const parkedBefore = new Set(stretch.bridges.filter((gap) => gap.kind === "parked").map((gap) => gap.from + 1));
  let positions = 0;
  for (let k = 0; k < n; k++) {
    const row = line.row[k];
    if (row < 0) {
      continue;
    }
    east_m[k] = plane.east_m[row - stretch.from];
    north_m[k] = plane.north_m[row - stretch.from];
    speed_mps[k] = rows.speed_mps[row] * setting.speedScale;
    offset_m2[k] = setting.offsets.get(row) ?? (parkedBefore.has(row) ? PARKED_OFFSET_m2 : 0);
    positions += Number.isNaN(east_m[k]) ? 0 : 1;
  }
  return { time_s: line.time_s, east_m, north_m, speed_mps, offset_m2, positions };
}

/** Moments strictly inside bridged gaps: those driven over and those parked through. */
function bridgedMoments(
  rows: RowColumns,
  stretch: Stretch,
  line: Timeline,
): { parked: Uint8Array; driven: Uint8Array } {
  const parked = new Uint8Array(line.count);
  const driven = new Uint8Array(line.count);
  let k = 0;
  for (const gap of stretch.bridges) {
    const [from_s, to_s] = [rows.time_s[gap.from], rows.time_s[gap.from + 1]];
    while (k < line.count && line.time_s[k] <= from_s) {
      k++;
    }
    for (; k < line.count && line.time_s[k] < to_s; k++) {
      (gap.kind === "parked" ? parked : driven)[k] = 1;
    }
  }
  return { parked, driven };
}

function onGrid(
  rows: RowColumns,
  stretch: Stretch,
  line: Timeline,
  speed_mps: Float64Array,
  isStanding: Uint8Array,
  isDriven: Uint8Array,
  smoothed: SmoothedPositions | undefined,
  plane: Plane,
  setting: StretchSetting,
  repairs: RepairList,
): CleanedStretch {
  const result = emptyStretch(rows, stretch, line);
  let lastPlaced = -1;
  for (let k = 0; k < line.count; k++) {
    const row = line.row[k];
    if (row >= 0 && !Number.isNaN(rows.lat_deg[row])) {
      lastPlaced = row;
    }
    const second = line.second[k];
    if (second < 0) {
      continue;
    }
    result.speed_mps[second] = speed_mps[k];
    result.flags[second] = (isStanding[k] ? Mended.standing : 0) | (isDriven[k] ? Mended.bridged : 0);
    if (smoothed && lastPlaced >= 0) {
      place(
        result,
        second,
        rows,
        lastPlaced,
        smoothed.east_m[k] - plane.east_m[lastPlaced - stretch.from],
        smoothed.north_m[k] - plane.north_m[lastPlaced - stretch.from],
      );
    }
  }
  if (repairs.does("acceleration")) {
    const held = holdToCar(result.speed_mps, result.flags, Mended.limited);
    if (held > 0) {
      const at = writeClock(result.start_s, setting.utcOffset_s);
      repairs.add(
        "acceleration",
        held,
        result.start_s,
        result.start_s + line.seconds,
        `${held} s held to what a car can do after ${at}`,
      );
    }
  }
  countStands(result, setting, repairs);
  return result;
}

/** Metres of a degree are taken at the nearby fix: the smoothed place lies within metres of it. */
function place(
  result: CleanedStretch,
  second: number,
  rows: RowColumns,
  row: number,
  east_m: number,
  north_m: number,
): void {
  const lat_rad = (rows.lat_deg[row] * Math.PI) / 180;
  result.lat_deg[second] = rows.lat_deg[row] + north_m / 111200;
  result.lon_deg[second] = rows.lon_deg[row] + east_m / (111320 * Math.max(0.01, Math.cos(lat_rad)));
}

function countStands(result: CleanedStretch, setting: StretchSetting, repairs: RepairList): void {
  if (setting.hasSpeeds || !repairs.does("standingDrift")) {
    return; // with recorded speeds a stand is no repair: the log itself says so
  }
  let start = -1;
  for (let i = 0; i <= result.flags.length; i++) {
    const stands = i < result.flags.length && (result.flags[i] & Mended.standing) !== 0;
    if (stands && start < 0) {
      start = i;
    } else if (!stands && start >= 0) {
      const from_s = result.start_s + start;
      const detail = `held still for ${writeDuration(i - start)} at ${writeClock(from_s, setting.utcOffset_s)}`;
      repairs.add("standingDrift", 1, from_s, result.start_s + i, detail);
      start = -1;
    }
  }
}

function nothing(rows: RowColumns, stretch: Stretch, line: Timeline): CleanedStretch {
  const result = emptyStretch(rows, stretch, line);
  const where = stretch.from;
  if (!Number.isNaN(rows.lat_deg[where])) {
    result.lat_deg.fill(rows.lat_deg[where]);
    result.lon_deg.fill(rows.lon_deg[where]);
  }
  return result;
}

function emptyStretch(rows: RowColumns, stretch: Stretch, line: Timeline): CleanedStretch {
  return {
    start_s: rows.time_s[stretch.from],
    speed_mps: new Float64Array(line.seconds),
    flags: new Uint8Array(line.seconds),
    lat_deg: new Float64Array(line.seconds).fill(Number.NaN),
    lon_deg: new Float64Array(line.seconds).fill(Number.NaN),
  };
}
