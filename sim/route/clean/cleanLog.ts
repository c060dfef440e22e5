// The order of the steps; the steps have their own files.
import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import { countOf } from "../log/countOf.ts";
import { hasValues } from "../log/fixes.ts";
import { runSteps, type Steps } from "../log/steps.ts";
import { writeFar } from "../log/writeFar.ts";
import { writeClock, writeInterval } from "../log/writeTime.ts";
import { checkLength, checkTimes, checkUsable } from "./checkCleanable.ts";
import { type DrawnSegment, drawSegment, knowSegment } from "./cleanSegment.ts";
import { spreadOver, stopsOver, unmodelledOf } from "./draws/bands.ts";
import { chooseDraws } from "./draws/chooseDraws.ts";
import type { Drives } from "./draws/drawDrives.ts";
import { fitDriving } from "./draws/fitDriving.ts";
import { accelerationsOf, type CycleDriving, nearestCycle } from "./draws/nearestCycle.ts";
import { usualRoadLoad } from "./draws/wheelEnergy.ts";
import { findGaps, type GapFindings, type Segment } from "./gaps/findGaps.ts";
import { findHeights, finishHeights } from "./heights/cleanHeights.ts";
import { dropZeroHeights } from "./heights/dropZeroHeights.ts";
import { joinSegments, markSpans, type WholeSegment } from "./joinSegments.ts";
import { circuitySeen_frac } from "./motion/circuitySeen.ts";
import { holdToCar } from "./motion/holdToCar.ts";
import { notDriven } from "./notDriven.ts";
import { noteStands } from "./noteStandstills.ts";
import { qualityOf, THIN_s } from "./quality.ts";
import {
  type CleanedLog,
  type CleanInput,
  type CleanOptions,
  type LongGap,
  Mended,
  type RawSeries,
} from "./report/cleanedLog.ts";
import { RepairList } from "./report/repairList.ts";
import type { RoadLoadTerms } from "./report/spread.ts";
import { dropUnreachable, dropZeroFixes } from "./rows/dropWild.ts";
import { findJumps } from "./rows/findJumps.ts";
import { orderInTime } from "./rows/orderInTime.ts";
import { rawSeries } from "./rows/rawSeries.ts";
import { type RowColumns, rowColumns } from "./rows/rowColumns.ts";
import { scaleToPositions } from "./rows/scaleToPositions.ts";
import { speedsAgree } from "./rows/speedsAgree.ts";
import { withoutLongStands } from "./rows/withoutLongStands.ts";
import type { CleanedSegment } from "./segmentGrid.ts";
import { type SegmentSetting, segmentSetting } from "./segmentSetting.ts";
import { shortestStop_s } from "./shortestStop.ts";

/** A log that moves less than this in all is standing, whatever its noise. */
const STILL_m = 50;
/** Recorded speeds that make less than this in all are a standing car's. */
const NOTHING_m = 1;
/**
 * Positions further apart than this do not tell how lively a car is driven: what they show is how its mean speed changes from one to the
 * next, and that is the traffic's doing.
 */
const TELLING_s = 15;

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

/** Every segment cleaned, with its distance and its heights; tells of progress from a quarter on. */
function* cleanSegments(
  rows: RowColumns,
  found: GapFindings,
  setting: SegmentSetting,
  repairs: RepairList,
  load: RoadLoadTerms,
): Steps<{ readonly parts: readonly WholeSegment[]; readonly like: CycleDriving | undefined }> {
  const parts: WholeSegment[] = [];
  const length = ({ from, to }: Segment) => rows.time_s[to - 1] - rows.time_s[from];
  const longest = found.segments.reduce((a, b) => (length(b) > length(a) ? b : a));
  const sample = yield* slowed(knowSegment(rows, longest, setting, repairs), 0.2, 0.3);
  const isThin = found.interval_s >= THIN_s && !sample.isEmpty;
  const like = isThin ? nearestCycle(sample.line.time_s, sample.about_mps) : undefined;
  const bands_mps2 = like && accelerationsOf(like);
  const fitted = sample.isEmpty
    ? { factor_ratio: 1, noise: sample.noise }
    : fitDriving(sample.known, sample.about_mps, sample.noise, {
        hasSpeeds: setting.speedCover_frac > 0,
        showsDriving: setting.speedCover_frac > 0 || found.interval_s <= TELLING_s,
        bands_mps2,
      });
  const driver = { factor_ratio: fitted.factor_ratio, bands_mps2 };
  let done = 0;
  for (const segment of found.segments) {
    const share = (segment.to - segment.from) / rows.count;
    const at = (part: number) => 0.3 + 0.65 * (done + share * part);
    const known =
      segment === longest ? sample : yield* slowed(knowSegment(rows, segment, setting, repairs), at(0), at(0.2));
    const drawn = yield* slowed(
      drawSegment({ ...known, noise: fitted.noise }, setting, driver, repairs),
      at(0.2),
      at(0.8),
    );
    parts.push(yield* slowed(wholeSegment(rows, segment, drawn, setting, repairs, load), at(0.8), at(1)));
    done += share;
  }
  return { parts, like };
}

/** Tells of the progress of a part of the work as that of the whole. */
function* slowed<T>(steps: Steps<T>, from: number, to: number): Steps<T> {
  let next = steps.next();
  while (!next.done) {
    yield from + (to - from) * next.value;
    next = steps.next();
  }
  yield to;
  return next.value;
}

/** One drive taken out of the draws, held to what a car and a road can do. */
function* wholeSegment(
  rows: RowColumns,
  segment: Segment,
  drawn: DrawnSegment,
  setting: SegmentSetting,
  repairs: RepairList,
  load: RoadLoadTerms,
): Steps<WholeSegment> {
  const { drives, raw_mps } = drawn;
  const grid = drawn.segment;
  const { start_s } = grid;
  const seconds = Float64Array.from(grid.speed_mps, (_, i) => i);
  const about_mps = raw_mps ?? (drives ? meanSpeed_mps(drives) : grid.speed_mps);
  const draws = drives?.draws ?? 1;
  const heights = yield* findHeights(rows, segment, distanceAlong_m(seconds, about_mps), repairs, setting.utcOffset_s, {
    ...setting,
    draws,
  });
  const drawnHeights = heights?.drawn_m && { mean_m: heights.mean_m, drawn_m: heights.drawn_m };
  const chosen = drives && chooseDraws(drives, drawnHeights, load);
  if (chosen) grid.speed_mps.set(chosen.speed_mps);
  markStandstills(grid, raw_mps);
  limitToCar(grid, setting, repairs);
  if (!setting.hasSpeeds && repairs.does("standingDrift")) {
    // with recorded speeds a standstill is no repair: the log itself says so
    noteStands(grid.flags, start_s, setting.utcOffset_s, repairs);
  }
  const distance_m = distanceAlong_m(seconds, grid.speed_mps);
  const elevation_m = chosen?.elevation_m ?? heights?.mean_m ?? new Float64Array(seconds.length).fill(Number.NaN);
  if (heights) finishHeights(elevation_m, distance_m, heights.rawClimb_m, start_s, repairs, setting.utcOffset_s);
  const middleElevation_m = heights?.mean_m ?? elevation_m;
  return { ...grid, distance_m, elevation_m, middleElevation_m, pieces: raw_mps ? [] : (chosen?.pieces ?? []) };
}

function meanSpeed_mps({ draws, seconds, speed_mps }: Drives): Float64Array {
  const mean_mps = new Float64Array(seconds);
  for (let i = 0; i < draws * seconds; i++) mean_mps[i % seconds] += speed_mps[i] / draws;
  return mean_mps;
}

/** Flags the seconds at rest; speeds that are wanted as logged take the place of the chosen ones everywhere else. */
function markStandstills({ speed_mps, flags }: CleanedSegment, raw_mps: Float64Array | undefined): void {
  for (let i = 0; i < speed_mps.length; i++) {
    if (speed_mps[i] === 0) flags[i] |= Mended.standing;
    else if (raw_mps) speed_mps[i] = Math.max(0, raw_mps[i]);
  }
}

function limitToCar(grid: CleanedSegment, { utcOffset_s }: SegmentSetting, repairs: RepairList): void {
  const held = repairs.does("acceleration") ? holdToCar(grid.speed_mps, grid.flags, Mended.limited) : 0;
  if (held === 0) return;
  const detail = `${held} s held to what a car can do after ${writeClock(grid.start_s, utcOffset_s)}`;
  repairs.add("acceleration", held, grid.start_s, grid.start_s + grid.speed_mps.length, detail);
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
  const stops = stopsOver(pieces, unmodelled);
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
