// The order of the steps; the steps have their own files.
import { countOf } from "../log/countOf.ts";
import { hasValues } from "../log/fixes.ts";
import { runSteps, type Steps } from "../log/steps.ts";
import { writeFar } from "../log/writeFar.ts";
import { writeInterval } from "../log/writeTime.ts";
import { checkLength, checkTimes, checkUsable } from "./checkCleanable.ts";
import { cleanSegments } from "./cleanSegments.ts";
import { spreadOver, stopsFound_frac, stopsOver, unmodelledOf } from "./draws/bands.ts";
import type { CycleDriving } from "./draws/nearestCycle.ts";
import { usualRoadLoad } from "./draws/wheelEnergy.ts";
import { findGaps, type GapFindings } from "./gaps/findGaps.ts";
import { dropZeroHeights } from "./heights/dropZeroHeights.ts";
import { joinSegments, markSpans, type WholeSegment } from "./joinSegments.ts";
import { circuitySeen_frac } from "./motion/circuitySeen.ts";
import { notDriven } from "./notDriven.ts";
import { qualityOf, THIN_s } from "./quality.ts";
import type { CleanedLog, CleanInput, CleanOptions, LongGap, RawSeries } from "./report/cleanedLog.ts";
import { RepairList } from "./report/repairList.ts";
import { dropStandingJumps } from "./rows/dropStandingJumps.ts";
import { dropUnreachable, dropZeroFixes } from "./rows/dropWild.ts";
import { findJumps } from "./rows/findJumps.ts";
import { orderInTime } from "./rows/orderInTime.ts";
import { rawSeries } from "./rows/rawSeries.ts";
import { type RowColumns, rowColumns } from "./rows/rowColumns.ts";
import { scaleToPositions } from "./rows/scaleToPositions.ts";
import { speedsAgree } from "./rows/speedsAgree.ts";
import { withoutLongStands } from "./rows/withoutLongStands.ts";
import { type SegmentSetting, segmentSetting } from "./segmentSetting.ts";
import { shortestStop_s } from "./shortestStop.ts";

/** A log that moves less than this in all is standing, whatever its noise. */
const STILL_m = 50;
/** Recorded speeds that make less than this in all are a standing car's. */
const NOTHING_m = 1;

/**
 * A log turned into a drive at one row a second that can be trusted, with every repair said. In this order:
 *
 *  1. rows put in order of time, clock changes undone, repeats dropped;
 *  2. positions at 0,0 and positions out of reach dropped; stands of hours set aside;
 *  3. sideways steps of the positions put back;
 *  4. gaps classed as parked, tunnel or lost signal; the log cut where no drive can be made up;
 *  5. every segment resampled to 1 s by a smoother that weighs positions and recorded speeds by their noise;
 *     one drive is taken out of all that fit
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
  const all = rowColumns(log.fixes, orderInTime(log, repairs, utcOffset_s));
  yield 0.02;
  const raw = rawSeries(all);
  yield 0.06;
  dropZeroFixes(all, repairs);
  dropUnreachable(all, repairs, utcOffset_s);
  dropZeroHeights(all, repairs);
  checkUsable(log, all);
  yield 0.12;
  const { rows, setAside, setAside_s } = withoutLongStands(all, repairs, utcOffset_s);
  const jumps = findJumps(rows, repairs, utcOffset_s);
  dropStandingJumps(rows, repairs, utcOffset_s);
  yield 0.2;
  scaleToPositions(rows, repairs);
  dropForeignSpeeds(rows, repairs);
  const found = findGaps(rows, repairs, utcOffset_s, setAside);
  checkLength(log, rows, found.segments);
  const setting = segmentSetting(rows, found, jumps, repairs, utcOffset_s, options.seed ?? 1);
  const { parts, like } = yield* cleanSegments(rows, found, setting, repairs, options.roadLoad ?? usualRoadLoad);
  return assembled(rows, raw, parts, like, found, setting, jumps.spans, setAside_s, repairs);
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

function assembled(
  rows: RowColumns,
  raw: RawSeries,
  parts: readonly WholeSegment[],
  like: CycleDriving | undefined,
  found: GapFindings,
  setting: SegmentSetting,
  putBack: readonly (readonly [number, number])[],
  setAside_s: number,
  repairs: RepairList,
): CleanedLog {
  const { series, track, pieces } = joinSegments(parts);
  markSpans(series, putBack);
  const gaps: LongGap[] = found.gaps.map((gap, i) => ({ ...gap, row: series.breaks[i] ?? series.count }));
  const hasPositions = hasValues(rows.latitude_deg);
  const finished = repairs.finish();
  const whole_m = series.distance_m[series.count - 1] ?? 0;
  const noDrive = whole_m < STILL_m ? noDriveWords(whole_m, setting.hasSpeeds, found) : undefined;
  const isStill = whole_m < STILL_m && noDrive === undefined;
  const circuity_frac = found.interval_s >= THIN_s ? circuitySeen_frac(rows, found) : 0;
  const unmodelled = unmodelledOf(found.interval_s, setting.hasSpeeds, circuity_frac);
  const spread = spreadOver(pieces, unmodelled);
  const stops = stopsOver(pieces, unmodelled, stopsFound_frac(found.interval_s));
  const quality = qualityOf({
    series,
    repairs: finished,
    rows: rows.count,
    interval_s: found.interval_s,
    positionNoise_m: hasPositions ? setting.noise.correlated_m : Number.NaN,
    shortestStop_s: shortestStop_s(found.interval_s, setting.hasSpeeds ? undefined : setting.noise),
    hasSpeeds: setting.hasSpeeds,
    speedCover_frac: setting.speedCover_frac,
    isStill,
    noDrive,
    setAside_s,
    notDriven: notDriven(series, setting.utcOffset_s),
    spread,
    stops,
    like: like?.name,
  });
  return {
    series,
    track: hasPositions ? track : undefined,
    raw,
    gaps,
    repairs: finished,
    quality,
    isStill,
    pieces,
    unmodelled,
    spread,
    stops,
  };
}

/** Why so little was driven, where that is not because the car stands. */
function noDriveWords(whole_m: number, hasSpeeds: boolean, { gaps, interval_s }: GapFindings): string | undefined {
  const unknown = gaps.filter(({ kind }) => kind === "signalLoss").length;
  if (unknown > 0) {
    const apart = `its fixes are ${writeInterval(interval_s)} apart`;
    return `${apart}, and what was driven in ${countOf(unknown, "gap")} between them is not known`;
  }
  return hasSpeeds && whole_m >= NOTHING_m
    ? `it moves ${writeFar(whole_m)} in all; a drive is ${STILL_m} m or more`
    : undefined;
}
