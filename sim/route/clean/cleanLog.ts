// The order of the steps; the steps have their own files.
import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import { hasValues } from "../log/fixes.ts";
import { runSteps, type Steps } from "../log/steps.ts";
import { checkLength, checkTimes, checkUsable } from "./checkCleanable.ts";
import { cleanSegment } from "./cleanSegment.ts";
import { findGaps, type GapFindings } from "./gaps/findGaps.ts";
import { cleanHeights } from "./heights/cleanHeights.ts";
import { dropZeroHeights } from "./heights/dropZeroHeights.ts";
import { joinSegments, markSpans, type WholeSegment } from "./joinSegments.ts";
import { notDriven } from "./notDriven.ts";
import { qualityOf } from "./quality.ts";
import type { CleanedLog, CleanInput, CleanOptions, LongGap, RawSeries } from "./report/cleanedLog.ts";
import { RepairList } from "./report/repairList.ts";
import { dropUnreachable, dropZeroFixes } from "./rows/dropWild.ts";
import { findJumps } from "./rows/findJumps.ts";
import { orderInTime } from "./rows/orderInTime.ts";
import { rawSeries } from "./rows/rawSeries.ts";
import { type RowColumns, rowColumns } from "./rows/rowColumns.ts";
import { speedsAgree } from "./rows/speedsAgree.ts";
import { type SegmentSetting, segmentSetting } from "./segmentSetting.ts";

/** A log that moves less than this in all is standing, whatever its noise. */
const STILL_m = 50;

/**
 * A log turned into a drive at one row a second that can be trusted, with every repair said. In this order:
 *
 *  1. rows put in order of time, clock changes undone, repeats dropped;
 *  2. positions at 0,0 and positions out of reach dropped;
 *  3. sideways steps of the positions put back;
 *  4. gaps classed as parked, tunnel or lost signal; the log cut where no drive can be made up;
 *  5. every segment resampled to 1 s by a smoother that weighs positions and recorded speeds by their noise;
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
  checkTimes(log);
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
  dropForeignSpeeds(rows, repairs);
  const found = findGaps(rows, repairs, utcOffset_s);
  checkLength(log, rows, found.segments);
  const setting = segmentSetting(rows, found, jumps, repairs, utcOffset_s);
  const parts = yield* cleanSegments(rows, found, setting, repairs);
  return assembled(rows, raw, parts, found, setting, jumps.spans, repairs);
}

/** Leaves recorded speeds out where they and the positions speak of different drives. */
function dropForeignSpeeds(rows: RowColumns, repairs: RepairList): void {
  if (speedsAgree(rows) || !repairs.does("speedScale")) {
    return;
  }
  rows.speed_mps.fill(Number.NaN);
  const [from_s, to_s] = [rows.time_s[0], rows.time_s[rows.count - 1]];
  repairs.add("speedScale", 1, from_s, to_s, "recorded speeds have nothing to do with the positions; left out");
}

/** Every segment cleaned, with its distance and its heights; tells of progress from a quarter on. */
function* cleanSegments(
  rows: RowColumns,
  found: GapFindings,
  setting: SegmentSetting,
  repairs: RepairList,
): Steps<readonly WholeSegment[]> {
  const parts: WholeSegment[] = [];
  let done = 0;
  for (const segment of found.segments) {
    const share = (segment.to - segment.from) / rows.count;
    const steps = cleanSegment(rows, segment, setting, repairs);
    let next = steps.next();
    while (!next.done) {
      yield 0.25 + 0.7 * (done + share * 0.8 * next.value);
      next = steps.next();
    }
    const { speed_mps } = next.value;
    const seconds = Float64Array.from(speed_mps, (_, i) => i);
    const distance_m = distanceAlong_m(seconds, speed_mps);
    const elevation_m = cleanHeights(rows, segment, distance_m, repairs, setting.utcOffset_s);
    parts.push({ ...next.value, distance_m, elevation_m });
    done += share;
    yield 0.25 + 0.7 * done;
  }
  return parts;
}

function assembled(
  rows: RowColumns,
  raw: RawSeries,
  parts: readonly WholeSegment[],
  found: GapFindings,
  setting: SegmentSetting,
  putBack: readonly (readonly [number, number])[],
  repairs: RepairList,
): CleanedLog {
  const { series, track } = joinSegments(parts);
  markSpans(series, putBack);
  const gaps: LongGap[] = found.gaps.map((gap, i) => ({ ...gap, row: series.breaks[i] ?? series.count }));
  const hasPositions = hasValues(rows.latitude_deg);
  const finished = repairs.finish();
  const isStill = (series.distance_m[series.count - 1] ?? 0) < STILL_m;
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
  return { series, track: hasPositions ? track : undefined, raw, gaps, repairs: finished, quality, isStill };
}
