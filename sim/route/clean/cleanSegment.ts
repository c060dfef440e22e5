// The order of the steps for one segment; the steps have their own files.

import type { Steps } from "../log/steps.ts";
import { alongObserved } from "./draws/alongObserved.ts";
import { type Drives, drawDrives } from "./draws/drawDrives.ts";
import type { AlongNoise, AlongRoad } from "./draws/drivingModel.ts";
import { spreadOf } from "./draws/fitDriving.ts";
import { layGaps } from "./draws/layGaps.ts";
import { bridgedMoments } from "./gaps/bridgedMoments.ts";
import type { Segment } from "./gaps/findGaps.ts";
import { interpolated, rawFromPositions } from "./motion/fillSpeeds.ts";
import { smoothPositions } from "./motion/smoothPositions.ts";
import type { RepairList } from "./report/repairList.ts";
import { countValues } from "./rows/countValues.ts";
import { layOut } from "./rows/plane.ts";
import type { RowColumns } from "./rows/rowColumns.ts";
import { type Timeline, timeline } from "./rows/timeline.ts";
import { type CleanedSegment, segmentGrid, standingSegment } from "./segmentGrid.ts";
import { type Moments, segmentMoments } from "./segmentMoments.ts";
import type { SegmentSetting } from "./segmentSetting.ts";

/** One segment with its positions and flags, and the drives to choose its speeds from. */
export interface DrawnSegment {
  readonly segment: CleanedSegment;
  /** Undefined where nothing but standing is known. */
  readonly drives: Drives | undefined;
  /** Speeds as logged, where the smoothing is not wanted. */
  readonly raw_mps: Float64Array | undefined;
}

/** What a segment is drawn from, and the noise it is measured with. */
export interface KnownSegment {
  readonly line: Timeline;
  readonly known: AlongRoad;
  readonly noise: AlongNoise;
  /** Speed at every moment as far as smoothing alone shows it, for what is usual at such speeds. */
  readonly about_mps: Float64Array;
  readonly grid: CleanedSegment;
  readonly raw_mps: Float64Array | undefined;
  readonly isEmpty: boolean;
}

/** Smooths one segment's positions and lays them along the road they show. */
export function* knowSegment(
  rows: RowColumns,
  segment: Segment,
  setting: SegmentSetting,
  repairs: RepairList,
): Steps<KnownSegment> {
  const line = timeline(rows, segment.from, segment.to);
  const plane = layOut(
    rows.latitude_deg.subarray(segment.from, segment.to),
    rows.longitude_deg.subarray(segment.from, segment.to),
  );
  const moments = segmentMoments(rows, segment, line, plane, setting);
  const { parked, driven } = bridgedMoments(rows, segment, line);
  const hasPositions = moments.positions > 1;
  const smoothed = hasPositions
    ? yield* smoothPositions({ ...moments, isStanding: parked, noise: setting.noise })
    : undefined;
  const observed = smoothed && alongObserved(line, moments, smoothed, setting.noise.correlated_m);
  const known: AlongRoad = {
    time_s: line.time_s,
    at_m: observed?.at_m ?? new Float64Array(line.count).fill(Number.NaN),
    speed_mps: moments.speed_mps,
    // Speeds of a scale that nobody knows are held by the way.
    offset_m2: observed && setting.speedScale.isKnown ? withLaid(moments, observed.laid_m2, driven) : moments.offset_m2,
    isParked: parked,
  };
  const isEmpty = !hasPositions && countValues(moments.speed_mps) === 0;
  if (smoothed && observed)
    layGaps(
      segment,
      line,
      known,
      observed.speed_mps,
      smoothed,
      setting.noise.correlated_m,
      repairs,
      setting.utcOffset_s,
    );
  const raw =
    setting.hasSpeeds || !hasPositions ? interpolated(line.time_s, moments.speed_mps) : rawFromPositions(line, moments);
  return {
    line,
    known,
    noise: {
      correlated_m: setting.noise.correlated_m,
      correlation_s: setting.noise.correlation_s,
      white_m: setting.noise.white_m,
      speed_mps: setting.speedNoise.noise_mps,
    },
    about_mps: observed?.speed_mps ?? interpolated(line.time_s, moments.speed_mps),
    grid: isEmpty
      ? standingSegment(rows, segment, line)
      : segmentGrid(rows, segment, line, plane, { isDriven: driven, smoothed }),
    raw_mps: repairs.does("speedNoise") ? undefined : onGrid(line, raw),
    isEmpty,
  };
}

/** How lively a log is driven: like the cycle whose accelerations are given, or like all of them, times a factor. */
export interface Driver {
  readonly factor_ratio: number;
  readonly bands_mps2: readonly number[] | undefined;
}

/** Draws the drives of a segment. */
export function* drawSegment(
  { line, known, noise, about_mps, grid, raw_mps, isEmpty }: KnownSegment,
  setting: SegmentSetting,
  { factor_ratio, bands_mps2 }: Driver,
  repairs: RepairList,
): Steps<DrawnSegment> {
  if (isEmpty) return { segment: grid, drives: undefined, raw_mps: undefined };
  const drives = yield* drawDrives(line, known, spreadOf(about_mps, factor_ratio, bands_mps2), noise, {
    draws: setting.draws,
    chance: setting.chance,
    canStand: repairs.does("standingDrift"),
    hasSpeeds: setting.hasSpeeds,
    spreadLog: setting.drivingLog,
  });
  return { segment: grid, drives, raw_mps };
}

/** Variance of the positions' offset with that of the way laid between them; across a gap driven over the way is laid by other means. */
function withLaid({ offset_m2, east_m }: Moments, laid_m2: Float64Array, driven: Uint8Array): Float64Array {
  let isAcross = false;
  return offset_m2.map((each_m2, k) => {
    isAcross ||= driven[k] === 1;
    if (Number.isNaN(east_m[k])) return each_m2;
    const whole_m2 = each_m2 + (isAcross ? 0 : laid_m2[k]);
    isAcross = false;
    return whole_m2;
  });
}

function onGrid(line: Timeline, moments: Float64Array): Float64Array {
  const result = new Float64Array(line.seconds);
  for (let k = 0; k < line.count; k++) {
    if (line.second[k] >= 0) result[line.second[k]] = moments[k];
  }
  return result;
}
