import type { Chance } from "../../math/kalman/backwardSampler.ts";
import { chanceOf } from "./draws/chance.ts";
import type { GapFindings } from "./gaps/findGaps.ts";
import type { HeightNoise } from "./heights/heightModel.ts";
import { fitSpeedNoise, usualSpeedNoise } from "./motion/fitSpeedNoise.ts";
import { fitPositionNoise } from "./motion/positionNoise.ts";
import type { PositionNoise } from "./motion/smoothPositions.ts";
import type { SpeedNoise } from "./motion/speedModel.ts";
import type { RepairList } from "./report/repairList.ts";
import { countValues } from "./rows/countValues.ts";
import type { JumpFindings } from "./rows/findJumps.ts";
import type { RowColumns } from "./rows/rowColumns.ts";
import { type SpeedScale, speedScale } from "./rows/speedScale.ts";

/** What is known of the whole log when a segment of it is cleaned. */
export interface SegmentSetting {
  readonly noise: PositionNoise;
  readonly speedNoise: SpeedNoise;
  readonly speedScale: SpeedScale;
  readonly hasSpeeds: boolean;
  /** Share of the fixes that have a recorded speed; 0 where those are too few to be of use. */
  readonly speedCover_frac: number;
  /** Variance of a change of the positions' offset, by row. */
  readonly offsets: ReadonlyMap<number, number>;
  readonly utcOffset_s: number;
  /** Drives drawn of each segment, and by what chance. */
  readonly draws: number;
  readonly chance: Chance;
  /** What the log leaves open of how lively it is driven: standard deviation of the logarithm of a factor on accelerations. */
  readonly drivingLog: number;
  /** The noise of the heights, once a segment has shown it. */
  readonly heightNoise: { found: HeightNoise | undefined };
}

/** Drives drawn: enough for the middle of them and for 10 and 90 %. */
const DRAWS = 24;
/** Seconds of drives kept at once, all draws together: of a very long segment fewer are drawn. */
const MOST_KEPT = 6e6;
const FEWEST_DRAWS = 2;

/**
 * How well a log knows its driver, by the seconds from fix to fix: calibrated with tests/bench/logEnergyTable.ts, so that eight of ten bands
 * hold the truth.
 */
const drivingSpreadLog = { recorded: 0.12, positions: 0.2, thin: 0.35 };

/** Noise of positions and speeds and the scale of recorded speeds, found from all segments; what is mended by them is said. */
export function segmentSetting(
  rows: RowColumns,
  found: GapFindings,
  jumps: JumpFindings,
  repairs: RepairList,
  utcOffset_s: number,
  seed: number,
): SegmentSetting {
  const speedCover_frac = speedCoverage_frac(rows);
  const someSpeeds = speedCover_frac > 0;
  const hasSpeeds = speedCover_frac > 0.5;
  const longest_s = found.segments.reduce(
    (most_s, { from, to }) => Math.max(most_s, rows.time_s[to - 1] - rows.time_s[from]),
    1,
  );
  const setting: SegmentSetting = {
    noise: fitPositionNoise(rows, found.segments, found.interval_s),
    speedNoise: someSpeeds ? fitSpeedNoise(...recordedSpeeds(rows)) : usualSpeedNoise,
    speedScale: someSpeeds ? speedScale(rows, found.interval_s, repairs) : { ratio: 1, isKnown: true },
    hasSpeeds,
    speedCover_frac,
    offsets: jumps.offsets,
    utcOffset_s,
    draws: Math.max(FEWEST_DRAWS, Math.min(DRAWS, Math.floor(MOST_KEPT / longest_s))),
    chance: chanceOf(seed),
    heightNoise: { found: undefined },
    drivingLog:
      found.interval_s > 15
        ? drivingSpreadLog.thin
        : hasSpeeds
          ? drivingSpreadLog.recorded
          : drivingSpreadLog.positions,
  };
  if (someSpeeds && repairs.does("speedNoise")) {
    const [from_s, to_s] = [rows.time_s[0], rows.time_s[rows.count - 1]];
    const words = `recorded speeds smoothed, their noise taken as ${setting.speedNoise.noise_mps} m/s`;
    repairs.add("speedNoise", Math.round(to_s - from_s), from_s, to_s, words);
  }
  return setting;
}

/** Fewer recorded speeds than this show nothing of their noise. */
const LEAST_SPEEDS = 20;

/** Share of the fixes that have a recorded speed: rows of other quantities between the fixes do not count against it. */
function speedCoverage_frac(rows: RowColumns): number {
  const count = countValues(rows.speed_mps);
  if (count < Math.min(LEAST_SPEEDS, rows.count / 2)) return 0;
  const placed = countValues(rows.latitude_deg);
  return placed > 0 ? count / Math.min(rows.count, Math.max(placed, count)) : count > 0 ? 1 : 0;
}

/** Times and speeds of the rows that have a speed. */
function recordedSpeeds(rows: RowColumns): [Float64Array, Float64Array] {
  const isKept = (_: number, i: number) => !Number.isNaN(rows.speed_mps[i]);
  return [rows.time_s.filter(isKept), rows.speed_mps.filter(isKept)];
}
