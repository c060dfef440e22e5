// The order of the steps for one segment; the steps have their own files.

import type { Steps } from "../log/steps.ts";
import { writeClock } from "../log/writeTime.ts";
import { bridgeSegment } from "./bridgeSegment.ts";
import { bridgedMoments } from "./gaps/bridgedMoments.ts";
import type { Segment } from "./gaps/findGaps.ts";
import { alongRoad } from "./motion/alongRoad.ts";
import { filledIn, forStanding, interpolated, rawFromPositions } from "./motion/fillSpeeds.ts";
import { findStandstills, markLoitering, positionLimits, recordedLimits } from "./motion/findStandstills.ts";
import { holdToCar } from "./motion/holdToCar.ts";
import { type SmoothedPositions, smoothPositions } from "./motion/smoothPositions.ts";
import { smoothSpeed } from "./motion/smoothSpeed.ts";
import { noteStands } from "./noteStandstills.ts";
import { Mended } from "./report/cleanedLog.ts";
import type { RepairList } from "./report/repairList.ts";
import { layOut } from "./rows/plane.ts";
import type { RowColumns } from "./rows/rowColumns.ts";
import { type Timeline, timeline } from "./rows/timeline.ts";
import { type CleanedSegment, segmentGrid, standingSegment } from "./segmentGrid.ts";
import { type Moments, segmentMoments } from "./segmentMoments.ts";
import type { SegmentSetting } from "./segmentSetting.ts";

/** Cleans one segment: positions smoothed, stands held still, speeds smoothed, gaps bridged, all held to what a car can do. */
export function* cleanSegment(
  rows: RowColumns,
  segment: Segment,
  setting: SegmentSetting,
  repairs: RepairList,
): Steps<CleanedSegment> {
  const line = timeline(rows, segment.from, segment.to);
  const plane = layOut(
    rows.latitude_deg.subarray(segment.from, segment.to),
    rows.longitude_deg.subarray(segment.from, segment.to),
  );
  const moments = segmentMoments(rows, segment, line, plane, setting);
  const { parked, driven } = bridgedMoments(rows, segment, line);
  const hasPositions = moments.positions > 1;

  let smoothed: SmoothedPositions | undefined;
  if (hasPositions) {
    smoothed = yield* smoothPositions({ ...moments, isStanding: parked, noise: setting.noise });
  }
  const fromPositions = speedAlong(line, smoothed);
  const source = setting.hasSpeeds ? filledIn(line, moments.speed_mps, fromPositions) : fromPositions;
  if (!source) {
    return standingSegment(rows, segment, line);
  }
  let isStanding = parked;
  if (repairs.does("standingDrift")) {
    const stands = standingMoments(line, source, smoothed, setting);
    // in a gap nothing is known of a stop; a parking was found by its two ends
    isStanding = stands.map((stand, i) => (parked[i] || (stand && !driven[i]) ? 1 : 0));
    if (hasPositions) {
      smoothed = yield* smoothPositions({ ...moments, isStanding, noise: setting.noise });
    }
  }
  const speed_mps = speedOf(line, moments, source, smoothed, isStanding, setting, repairs);
  for (let i = 0; i < line.count; i++) {
    speed_mps[i] = isStanding[i] ? 0 : Math.max(0, speed_mps[i]);
  }
  bridgeSegment(segment, line, speed_mps, smoothed);
  const result = segmentGrid(rows, segment, line, plane, { speed_mps, isStanding, isDriven: driven, smoothed });
  limitToCar(result, line.seconds, setting, repairs);
  if (!setting.hasSpeeds && repairs.does("standingDrift")) {
    // with recorded speeds a stand is no repair: the log itself says so
    noteStands(result.flags, result.start_s, setting.utcOffset_s, repairs);
  }
  return result;
}

function speedAlong(line: Timeline, smoothed: SmoothedPositions | undefined): Float64Array | undefined {
  return smoothed && alongRoad(line.time_s, smoothed.eastSpeed_mps, smoothed.northSpeed_mps);
}

/** Moments at which the car stands: by its speeds and, where those come from positions, also by its staying in one place. */
function standingMoments(
  line: Timeline,
  source: Float64Array,
  smoothed: SmoothedPositions | undefined,
  { hasSpeeds, noise }: SegmentSetting,
): Uint8Array {
  const limits = hasSpeeds ? recordedLimits : positionLimits(noise.wandering_m);
  const isStanding = findStandstills(line.time_s, forStanding(source, hasSpeeds), limits);
  if (!hasSpeeds && smoothed) {
    const box_m = 2 * limits.creep_m;
    const { east_m, north_m } = smoothed;
    markLoitering(line.time_s, east_m, north_m, source, box_m, 1.5 * limits.speed_mps, isStanding);
  }
  return isStanding;
}

/** Speed at every moment: from recorded speeds where the log has them, else from positions; smoothed unless that is not wanted. */
function speedOf(
  line: Timeline,
  moments: Moments,
  source: Float64Array,
  smoothed: SmoothedPositions | undefined,
  isStanding: Uint8Array,
  { hasSpeeds, speedNoise }: SegmentSetting,
  repairs: RepairList,
): Float64Array {
  const fromPositions = speedAlong(line, smoothed);
  const isSmoothing = repairs.does("speedNoise");
  if (!hasSpeeds) {
    return isSmoothing || !smoothed ? (fromPositions ?? source) : rawFromPositions(line, moments);
  }
  const filled = filledIn(line, moments.speed_mps, fromPositions);
  return isSmoothing ? smoothSpeed(line.time_s, filled, isStanding, speedNoise) : interpolated(line.time_s, filled);
}

function limitToCar(
  result: CleanedSegment,
  seconds: number,
  { utcOffset_s }: SegmentSetting,
  repairs: RepairList,
): void {
  const held = repairs.does("acceleration") ? holdToCar(result.speed_mps, result.flags, Mended.limited) : 0;
  if (held > 0) {
    const { start_s } = result;
    const detail = `${held} s held to what a car can do after ${writeClock(start_s, utcOffset_s)}`;
    repairs.add("acceleration", held, start_s, start_s + seconds, detail);
  }
}
