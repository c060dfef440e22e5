import { type CleanedSeries, Mended, type Quality, type Repair } from "./report/cleanedLog.ts";
import type { Spread } from "./report/spread.ts";

/** What the verdict is made from. */
interface QualityInput {
  readonly series: CleanedSeries;
  readonly repairs: readonly Repair[];
  readonly rows: number;
  readonly interval_s: number;
  readonly positionNoise_m: number;
  readonly hasSpeeds: boolean;
  readonly isStill: boolean;
  /** Segments that a car hardly drove, a sentence each. */
  readonly notDriven: readonly string[];
  readonly spread: Spread | undefined;
}

/** Less of the way than this without heights changes no climb that a person would notice. Assumed. */
const LEAST_LEVEL_frac = 0.01;

/** A verdict on a cleaned log in a word, with the reasons a person can check. */
export function qualityOf(input: QualityInput): Quality {
  const { series, interval_s } = input;
  let moving = 0;
  let bridged = 0;
  let heights = 0;
  let level_m = 0;
  for (let i = 0; i < series.count; i++) {
    const isMoving = series.speed_mps[i] > 0.5;
    moving += isMoving ? 1 : 0;
    bridged += isMoving && (series.flags[i] & Mended.bridged) !== 0 ? 1 : 0;
    const hasHeight = !Number.isNaN(series.elevation_m[i]);
    heights += hasHeight ? 1 : 0;
    level_m += hasHeight || i === 0 ? 0 : series.distance_m[i] - series.distance_m[i - 1];
  }
  const bridged_frac = moving > 0 ? bridged / moving : 0;
  const wild = input.repairs.find((repair) => repair.kind === "wildFix")?.count ?? 0;
  const poor: string[] = [];
  const doubtful: string[] = [];
  if (input.isStill) {
    poor.push("the log goes nowhere");
  }
  if (bridged_frac > 0.2) {
    poor.push(`${(100 * bridged_frac).toFixed(0)} % of the driving is bridged, not measured`);
  } else if (bridged_frac > 0.05) {
    doubtful.push(`${(100 * bridged_frac).toFixed(0)} % of the driving is bridged, not measured`);
  }
  if (wild > 0.05 * input.rows) {
    poor.push(`${((100 * wild) / input.rows).toFixed(0)} % of the positions were wild`);
  }
  if (interval_s > 15) {
    poor.push(`a fix only every ${interval_s.toPrecision(2)} s: starts and stops in between were not seen`);
  } else if (interval_s > 3) {
    doubtful.push(
      `a fix only every ${interval_s.toPrecision(2)} s: short stops and hard starts in between were not seen`,
    );
  }
  if (!input.hasSpeeds && input.positionNoise_m > 6) {
    doubtful.push(`no recorded speed, and positions scatter by ${input.positionNoise_m.toPrecision(2)} m`);
  }
  if (heights === 0) {
    doubtful.push("no heights: the road counts as flat");
  } else if (level_m >= LEAST_LEVEL_frac * series.distance_m[series.count - 1] && level_m > 0) {
    const level_frac = level_m / series.distance_m[series.count - 1];
    doubtful.push(`no heights on ${(100 * level_frac).toFixed(0)} % of the way: it counts as flat there`);
  }
  if (!input.isStill) {
    doubtful.push(...input.notDriven);
  }
  const verdict = poor.length > 0 ? "poor" : doubtful.length > 0 ? "usable" : "good";
  const reasons = [...poor, ...doubtful];
  if (reasons.length === 0)
    reasons.push(`a fix every ${interval_s.toPrecision(2)} s, ${(100 * bridged_frac).toPrecision(2)} % bridged`);
  // Said of every such log, and no fault of this one.
  const known = energyWords(input.spread);
  if (!input.hasSpeeds && !input.isStill && interval_s < THIN_s && known !== undefined)
    reasons.push(`speed is worked out from positions: ${known}`);
  return {
    verdict,
    reasons,
    interval_s,
    bridged_frac,
    positionNoise_m: input.positionNoise_m,
    speedSource: input.hasSpeeds ? "recorded" : "positions",
    heightSource: heights > 0 ? "recorded" : "none",
    samplingNote: samplingNote(interval_s, input.isStill ? undefined : input.spread),
  };
}

/** Fixes further apart than this are thin: what happens in between was not seen. */
const THIN_s = 3;

/** How well the energy at the wheel is known, as a range about that of the road taken: `-4 to +5 %`; undefined where nothing was drawn. */
function energyWords(spread: Spread | undefined): string | undefined {
  if (!spread) return undefined;
  const { low, high } = spread.energy_ratio;
  const below = Math.max(1, Math.round(100 * (1 - low)));
  const above = Math.max(1, Math.round(100 * (high - 1)));
  return below === above
    ? `energy at the wheel known to ±${above} %`
    : `energy at the wheel known to -${below} to +${above} %`;
}

/** What thin sampling leaves open, and where the driving between the fixes comes from; undefined where sampling is not thin. */
function samplingNote(interval_s: number, spread: Spread | undefined): string | undefined {
  const known = energyWords(spread);
  if (interval_s < THIN_s || known === undefined) return undefined;
  const driving = "between the fixes it is driven as the published standard cycles are at such speeds";
  return `sampled every ${interval_s.toPrecision(2)} s: ${known}; ${driving}`;
}
