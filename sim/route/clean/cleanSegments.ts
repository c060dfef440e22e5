// The order of the steps for all segments of a log; the steps have their own files.
import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import type { Steps } from "../log/steps.ts";
import { writeClock } from "../log/writeTime.ts";
import { type DrawnSegment, drawSegment, knowSegment } from "./cleanSegment.ts";
import { chooseDraws } from "./draws/chooseDraws.ts";
import type { Drives } from "./draws/drawDrives.ts";
import { fitDriving } from "./draws/fitDriving.ts";
import { accelerationsOf, type CycleDriving, nearestCycle } from "./draws/nearestCycle.ts";
import type { GapFindings, Segment } from "./gaps/findGaps.ts";
import { findHeights, finishHeights } from "./heights/cleanHeights.ts";
import type { WholeSegment } from "./joinSegments.ts";
import { holdToCar } from "./motion/holdToCar.ts";
import { THINNEST_s } from "./motion/positionNoise.ts";
import { noteStands } from "./noteStandstills.ts";
import { THIN_s } from "./quality.ts";
import { Mended } from "./report/cleanedLog.ts";
import type { RepairList } from "./report/repairList.ts";
import type { RoadLoadTerms } from "./report/spread.ts";
import type { RowColumns } from "./rows/rowColumns.ts";
import type { CleanedSegment } from "./segmentGrid.ts";
import type { SegmentSetting } from "./segmentSetting.ts";

/**
 * Positions further apart than this do not tell how lively a car is driven: what they show is how its mean speed changes from one to the
 * next, and that is the traffic's doing.
 */
const TELLING_s = 15;

/** Every segment cleaned, with its distance and its heights; tells of progress from a quarter on. */
export function* cleanSegments(
  rows: RowColumns,
  found: GapFindings,
  assumed: SegmentSetting,
  repairs: RepairList,
  load: RoadLoadTerms,
): Steps<{ readonly parts: readonly WholeSegment[]; readonly like: CycleDriving | undefined }> {
  const parts: WholeSegment[] = [];
  const length = ({ from, to }: Segment) => rows.time_s[to - 1] - rows.time_s[from];
  const longest = found.segments.reduce((a, b) => (length(b) > length(a) ? b : a));
  const showsPositionNoise = found.interval_s <= THINNEST_s;
  const firstLook = showsPositionNoise ? repairs : repairs.emptied();
  const sample = yield* slowed(knowSegment(rows, longest, assumed, firstLook), 0.2, 0.3);
  const isThin = found.interval_s >= THIN_s && !sample.isEmpty;
  const like = isThin ? nearestCycle(sample.line.time_s, sample.about_mps) : undefined;
  const bands_mps2 = like && accelerationsOf(like);
  const fitted = sample.isEmpty
    ? { factor_ratio: 1, noise: sample.noise }
    : fitDriving(sample.known, sample.about_mps, sample.noise, {
        hasSpeeds: assumed.speedCover_frac > 0,
        showsDriving: assumed.speedCover_frac > 0 || found.interval_s <= TELLING_s,
        showsPositionNoise,
        bands_mps2,
      });
  const { correlated_m } = fitted.noise;
  const setting = showsPositionNoise ? assumed : { ...assumed, noise: { ...assumed.noise, correlated_m } };
  const driver = { factor_ratio: fitted.factor_ratio, bands_mps2 };
  let done = 0;
  for (const segment of found.segments) {
    const share = (segment.to - segment.from) / rows.count;
    const at = (part: number) => 0.3 + 0.65 * (done + share * part);
    const known =
      segment === longest && showsPositionNoise
        ? sample
        : yield* slowed(knowSegment(rows, segment, setting, repairs), at(0), at(0.2));
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
