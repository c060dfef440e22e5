import { type CleanedSeries, Mended, type Quality, type Repair } from "./report/cleanedLog.ts";

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
    poor.push(`a fix only every ${interval_s.toPrecision(2)} s: starts and stops are lost`);
  } else if (interval_s > 3) {
    doubtful.push(`a fix only every ${interval_s.toPrecision(2)} s: short stops and hard starts are rounded off`);
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
  if (!input.hasSpeeds && !input.isStill && interval_s < samplingBias[samplingBias.length - 1].from_s)
    reasons.push(positionsAlone);
  return {
    verdict,
    reasons,
    interval_s,
    bridged_frac,
    positionNoise_m: input.positionNoise_m,
    speedSource: input.hasSpeeds ? "recorded" : "positions",
    heightSource: heights > 0 ? "recorded" : "none",
    samplingNote: samplingNote(interval_s, input.hasSpeeds),
  };
}

/**
 * Bias that thin sampling brings, as tests/bench/routeAccuracyTable.ts finds it for logs made from the UDDS and the
 * WLTC, in three levels of noise: from the interval given on, with recorded speeds and with positions alone.
 */
const samplingBias: readonly { readonly from_s: number; readonly recorded: string; readonly positions: string }[] = [
  { from_s: 20, recorded: "16 to 18 % low", positions: "19 to 30 % low" },
  { from_s: 7.5, recorded: "about 6 % low", positions: "4 to 6 % low, distance up to 4 % high" },
  { from_s: 3, recorded: "2 to 3 % low", positions: "within 4 %, distance up to 2 % high" },
];

/**
 * What positions every second without speeds bring, as two makers of logs find it (tests/bench/routeAccuracyTable.ts and
 * windingAccuracyTable.ts).
 */
const positionsAlone =
  "speed is worked out from positions: energy at the wheel comes out 8 % low (winding road) to 3 % high (slow town)";

/** What thin sampling does to the energy at the wheel, said to the user; undefined where it does nothing worth saying. */
function samplingNote(interval_s: number, hasSpeeds: boolean): string | undefined {
  const bias = samplingBias.find(({ from_s }) => interval_s >= from_s);
  if (!bias) {
    return undefined;
  }
  const source = hasSpeeds ? "recorded speeds" : "positions alone";
  const size = hasSpeeds ? bias.recorded : bias.positions;
  const every = interval_s.toPrecision(2);
  return `a fix every ${every} s and ${source}: starts and stops in between are lost, energy at the wheel comes out ${size}`;
}
