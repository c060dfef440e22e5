import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import type { Spread } from "../../../shared/spread.ts";
import { countOf } from "../log/countOf.ts";
import { writeDuration, writeInterval } from "../log/writeTime.ts";
import { type CleanedSeries, Mended, type Quality, type Repair } from "./report/cleanedLog.ts";
import type { Stops } from "./report/spread.ts";

/** What the verdict is made from. */
interface QualityInput {
  readonly series: CleanedSeries;
  readonly repairs: readonly Repair[];
  readonly rows: number;
  readonly interval_s: number;
  readonly positionNoise_m: number;
  readonly hasSpeeds: boolean;
  /** Share of the fixes that have a recorded speed. */
  readonly speedCover_frac: number;
  readonly isStill: boolean;
  /** Why there is no drive in it, where that is not standing. */
  readonly noDrive: string | undefined;
  /** Standing that was set aside before, beside that in the series. */
  readonly setAside_s: number;
  /** Segments that a car hardly drove, a sentence each. */
  readonly notDriven: readonly string[];
  readonly spread: Spread | undefined;
  readonly stops: Stops | undefined;
  /** Shorter stops than this do not show in the log. */
  readonly shortestStop_s: number;
  /** The published cycle that the driving between thin fixes is taken from. */
  readonly like: string | undefined;
}

/** Less of the way than this without heights changes no climb that a person would notice. Assumed. */
const LEAST_LEVEL_frac = 0.01;
/** A log that drives less of its time than this is mostly of a parked car. Assumed: town driving stands a fifth to a third of the time. */
const LEAST_DRIVING_frac = 0.25;
/** Where fewer fixes than this have a recorded speed, it is said; a few are missing in most logs. */
const MOST_SPEEDS_frac = 0.9;

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
  } else if (input.noDrive !== undefined) {
    poor.push(input.noDrive);
  }
  if (bridged_frac > 0.2) {
    poor.push(`${(100 * bridged_frac).toFixed(0)} % of the driving is bridged, not measured`);
  } else if (bridged_frac > 0.05) {
    doubtful.push(`${(100 * bridged_frac).toFixed(0)} % of the driving is bridged, not measured`);
  }
  if (wild > 0.05 * input.rows) {
    poor.push(`${((100 * wild) / input.rows).toFixed(0)} % of the positions were wild`);
  }
  if (input.isStill) {
    // how often it stood is of no matter
  } else if (interval_s > 15) {
    poor.push(`a fix only every ${writeInterval(interval_s)}: starts and stops in between were not seen`);
  } else if (interval_s > 3) {
    doubtful.push(
      `a fix only every ${writeInterval(interval_s)}: short stops and hard starts in between were not seen`,
    );
  }
  if (!input.hasSpeeds && input.positionNoise_m > 6) {
    doubtful.push(`no recorded speed, and positions scatter by ${formatNumber(input.positionNoise_m, 2)} m`);
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
  const logged_s = series.count + input.setAside_s;
  if (!input.isStill && moving > 0 && moving < LEAST_DRIVING_frac * logged_s) {
    doubtful.push(`the car drives for ${writeDuration(moving)} of ${writeDuration(logged_s)}; the rest it stands`);
  }
  const verdict = poor.length > 0 ? "poor" : doubtful.length > 0 ? "usable" : "good";
  const reasons = [...poor, ...doubtful];
  if (reasons.length === 0) reasons.push(`a fix every ${writeInterval(interval_s)}, ${bridgedWords(bridged_frac)}`);
  const isPartly = input.speedCover_frac > 0 && input.speedCover_frac < MOST_SPEEDS_frac;
  if (isPartly) {
    const share = formatNumber(100 * input.speedCover_frac, 2);
    reasons.push(`${share} % of the fixes have a recorded speed: used there, worked out from positions elsewhere`);
  }
  // Said of every such log, and no fault of this one.
  const known = energyWords(input.spread);
  const isFromPositions = !input.hasSpeeds && !isPartly && !input.isStill;
  if (isFromPositions && interval_s < THIN_s && known !== undefined)
    reasons.push(`speed is worked out from positions: ${known}`);
  if ((isFromPositions || interval_s >= THIN_s) && !input.isStill && input.stops)
    reasons.push(stopWords(input.stops, input.shortestStop_s));
  return {
    verdict,
    reasons,
    interval_s,
    bridged_frac,
    positionNoise_m: input.positionNoise_m,
    speedSource: isPartly ? "partly" : input.hasSpeeds ? "recorded" : "positions",
    heightSource: heights > 0 ? "recorded" : "none",
    noDrive: input.noDrive,
    samplingNote: samplingNote(interval_s, input.isStill ? undefined : input.spread, input.like),
  };
}

function bridgedWords(bridged_frac: number): string {
  if (bridged_frac === 0) return "nothing bridged";
  return bridged_frac < 0.01 ? "less than 1 % bridged" : `${(100 * bridged_frac).toFixed(0)} % bridged`;
}

/** Shorter stops than this need not be said not to show. Assumed. */
const LEAST_HIDDEN_s = 2;

/** Fixes further apart than this are thin: what happens in between was not seen. */
export const THIN_s = 3;

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

/**
 * How well the stops are known: `17 stops on the way, 14 to 19 by what else fits the log; one under 4 s may not show`; where a thin log is
 * silent of some, `17 stops on the way are likely, 12 to 22; 12 of them are in the road: one under 30 s may not show`.
 */
function stopWords({ taken, likely, band: { low, high } }: Stops, shortest_s: number): string {
  const hidden = shortest_s < LEAST_HIDDEN_s ? "" : `one under ${writeInterval(shortest_s)} may not show`;
  if (likely > taken) {
    const why = hidden && `: ${hidden}`;
    return `${countOf(likely, "stop")} on the way are likely, ${low} to ${high}; ${taken} of them are in the road${why}`;
  }
  const [least, most] = [Math.min(taken, low), Math.max(taken, high)];
  const known = least === most ? "" : `, ${least} to ${most} by what else fits the log`;
  return `${countOf(taken, "stop")} on the way${known}${hidden && `; ${hidden}`}`;
}

/** What thin sampling leaves open, and where the driving between the fixes comes from; undefined where sampling is not thin. */
function samplingNote(interval_s: number, spread: Spread | undefined, like: string | undefined): string | undefined {
  const known = energyWords(spread);
  if (interval_s < THIN_s || known === undefined || like === undefined) return undefined;
  const driving = `between the fixes it is driven as ${like} is at such speeds, the published cycle nearest to it by its speeds`;
  return `sampled every ${writeInterval(interval_s)}: ${known}; ${driving}`;
}
