import { median } from "simple-statistics";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { mpsPer } from "./columnUnits.ts";
import { FASTEST_CAR_mps } from "./fastestCar.ts";
import { type Fixes, hasValues } from "./fixes.ts";
import { geodesicLeg } from "./geodesicLeg.ts";
import { type Question, type SpeedUnit, speedUnits } from "./logFile.ts";

/** Straight distance needed for a comparison, so that 10 m of position error cannot sway it. */
const LEAST_LEG_m = 100;
const LONGEST_LEG_s = 30;
const LEAST_COMPARISONS = 5;
/** knots and mph lie 14 % apart: a ratio must be nearer to one unit than half of that. */
const NEAR_ENOUGH = Math.log(1.065);

/** What is compared of a log. */
type Compared = Pick<Fixes, "count" | "time_s" | "latitude_deg" | "longitude_deg" | "speed_mps">;

interface SpeedRatio {
  readonly ratio: number;
  readonly comparisons: number;
  /** Share of the comparisons within a tenth of the ratio: near 1 where all differ by one factor. */
  readonly alike_frac: number;
}

/**
 * Recorded speed (in whatever unit) over speed from positions in m/s: median over segments of at least 100 m, or
 * undefined where the log has too few of them. In m/s it is about 1, in km/h 3.6.
 */
export function speedRatio(fixes: Compared): SpeedRatio | undefined {
  const ratios: number[] = [];
  let start = -1;
  let area = 0;
  for (let i = 0; i < fixes.count && ratios.length < 2000; i++) {
    const isWhole = !Number.isNaN(
      fixes.latitude_deg[i] + fixes.longitude_deg[i] + fixes.speed_mps[i] + fixes.time_s[i],
    );
    if (!isWhole) {
      continue;
    }
    if (start >= 0) {
      const last = lastWhole(fixes, i);
      const step_s = fixes.time_s[i] - fixes.time_s[last];
      area += 0.5 * (fixes.speed_mps[i] + fixes.speed_mps[last]) * step_s;
      const long_s = fixes.time_s[i] - fixes.time_s[start];
      if (!(step_s > 0 && step_s <= LONGEST_LEG_s)) {
        start = -1;
      } else {
        const { length_m } = geodesicLeg(
          fixes.latitude_deg[start],
          fixes.longitude_deg[start],
          fixes.latitude_deg[i],
          fixes.longitude_deg[i],
        );
        if (length_m >= LEAST_LEG_m && length_m < FASTEST_CAR_mps * long_s) {
          if (area > 0) {
            ratios.push(area / length_m);
          }
          start = -1;
        } else if (long_s > LONGEST_LEG_s) {
          start = -1;
        }
      }
    }
    if (start < 0) {
      start = i;
      area = 0;
    }
  }
  if (ratios.length < LEAST_COMPARISONS) return undefined;
  const ratio = median(ratios);
  const alike = ratios.filter((each) => Math.abs(Math.log(each / ratio)) < Math.log(1.1)).length;
  return { ratio, comparisons: ratios.length, alike_frac: alike / ratios.length };
}

/** What decides the unit of recorded speeds that are still as written, and whether that is enough. */
export function speedUnitQuestion(fixes: Fixes, given: SpeedUnit | undefined, stated: SpeedUnit | undefined): Question {
  const question = (guess: string, evidence: string, decided: boolean): Question => ({
    name: "speedUnit",
    option: "--speed-unit",
    choices: speedUnits,
    guess,
    evidence,
    decided,
  });
  if (given) {
    return question(given, "given", true);
  }
  const compared = speedRatio(fixes);
  const nearest = compared && nearestUnit(compared.ratio);
  if (stated) {
    const against =
      nearest && nearest !== stated
        ? `; but ${compared.comparisons} segments against positions look like ${nearest}`
        : "";
    return question(stated, `the file names the unit${against}`, true);
  }
  if (compared && nearest) {
    const times = formatNumber(compared.ratio);
    return question(
      nearest,
      `recorded speed is ${times} times that from positions in m/s, over ${compared.comparisons} segments`,
      true,
    );
  }
  const left = plausibleUnits(fixes);
  if (left.length === 1) {
    return question(
      left[0],
      "with any other unit the car would go beyond 250 km/h or change speed as no car does",
      true,
    );
  }
  const why = compared
    ? `the ratio to positions, ${formatNumber(compared.ratio)}, fits no unit`
    : hasValues(fixes.latitude_deg)
      ? "too few rows with speed and position to compare them (five pieces of 100 m are needed)"
      : "no positions to compare with";
  return question(
    left[0] ?? "kmh",
    `no unit in the file and ${why}; plausible are ${left.join(", ") || "none"}`,
    false,
  );
}

/** The unit whose count per m/s is nearest to the ratio, undefined where none is near. */
export function nearestUnit(ratio: number): SpeedUnit | undefined {
  return speedUnits.find((unit) => Math.abs(Math.log(ratio * mpsPer[unit])) < NEAR_ENOUGH);
}

/** Units with which the log stays below 250 km/h and below what tyres hold, 12 m/s2. The likeliest comes first. */
function plausibleUnits(fixes: Fixes): readonly SpeedUnit[] {
  let most = 0;
  let hardest = 0;
  let last = -1;
  for (let i = 0; i < fixes.count; i++) {
    if (Number.isNaN(fixes.speed_mps[i])) {
      continue;
    }
    most = Math.max(most, fixes.speed_mps[i]);
    const step_s = last >= 0 ? fixes.time_s[i] - fixes.time_s[last] : Number.NaN;
    if (step_s >= 1) {
      hardest = Math.max(hardest, Math.abs(fixes.speed_mps[i] - fixes.speed_mps[last]) / step_s);
    }
    last = i;
  }
  return speedUnits.filter((unit) => most * mpsPer[unit] < FASTEST_CAR_mps && hardest * mpsPer[unit] < 12);
}

function lastWhole(fixes: Compared, i: number): number {
  for (let k = i - 1; k >= 0; k--) {
    if (!Number.isNaN(fixes.latitude_deg[k] + fixes.longitude_deg[k] + fixes.speed_mps[k] + fixes.time_s[k])) {
      return k;
    }
  }
  return i;
}
