import { STANDARD_GRAVITY_mps2 } from "../../../shared/units.ts";
import { choleskyFactor } from "../../math/cholesky.ts";
import type { Model } from "../../step/model.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import type { PackSamples } from "./packSamples.ts";
import type { Segment } from "./segments.ts";

/**
 * How far a drive and its model are off: speed at any second; height, for so long and so far by about the same; and the model by a share of the
 * energy.
 */
export interface DriveErrors {
  readonly speed_mps: number;
  readonly elevation_m: number;
  readonly lasts_s: number;
  readonly lasts_m: number;
  readonly model_frac: number;
}

/** How far the energies of segments may be off: by motion and model, of which the log itself shows how good they are, and by the rest. */
export interface EnergyErrors {
  readonly count: number;
  /** Covariance of what samples and clocks leave open, n by n. */
  readonly restSquared: Float64Array;
  /** Momentum at each segment's beginning and end: the energy of a speed that is off by 1 m/s. */
  readonly fromSpeed_Ns: Float64Array;
  readonly toSpeed_Ns: Float64Array;
  /** Whether a segment begins where the one before it ended. */
  readonly isMet: Uint8Array;
  /** When each segment begins and ends, in seconds of moving: a car that stands keeps its height. */
  readonly from_s: Float64Array;
  readonly to_s: Float64Array;
  /** Where. */
  readonly from_m: Float64Array;
  readonly to_m: Float64Array;
  /** Energy of a metre of height; nothing where samples lie too far apart to add up. */
  readonly metre_J: number;
  /** What of a segment's energy the model may be off by, for each of its share. */
  readonly throughput_J: Float64Array;
  /** Motion and model as they are taken to be before the log shows more. */
  readonly usual: DriveErrors;
}

/** How far a logger's single sample of current is off, beside its gain. Assumed. */
const CURRENT_A = 0.5;
/** Samples and seconds are off each other by some part of a second: of a step in power so much is lost. Assumed. */
const STEP_frac = 0.3;
/** A length or a time that ends no likeness. */
export const EVER = 1e9;
/** Errors of cleaned speeds and heights, of a road taken as level, and of what a model leaves out. Assumed; the log shows what they are. */
const WITH_HEIGHTS: DriveErrors = { speed_mps: 0.1, elevation_m: 1.5, lasts_s: 35, lasts_m: EVER, model_frac: 0.03 };
const LEVEL: DriveErrors = { ...WITH_HEIGHTS, elevation_m: 6, lasts_s: 70 };
/** Noise of acceleration and slope at one moment, for samples too far apart to add up to energies. Assumed. */
const ACCELERATION_mps2 = 0.1;
const SLOPE_ratio = 0.008;
/** A model is so many times as far off while braking, when the driver's foot shares with the motor. Assumed. */
const BRAKING_ratio = 4;
/** Clocks that are off by this much bring a part of one segment's energy into the next. Assumed. */
const CLOCK_s = 0.2;
/** Slower is standing. */
const MOVING_mps = 0.3;
/** Heights of different parts of a log have nothing to do with each other. */
const APART_s = 1e7;

/**
 * How far the energies of segments may be off. What is wrong with a speed or a height where two segments meet is taken from one and given
 * to the other, so that neighbours are off against each other and long sums are hardly off at all.
 */
export function energyErrors(
  drive: DrivenAsMeasured,
  segments: readonly Segment[],
  samples: PackSamples,
  segmentOf: Int32Array,
  model: Model,
  hasHeights: boolean,
): EnergyErrors {
  const isDense = samples.interval_s <= 2;
  const moved_s = movingTime_s(drive);
  const momentum_Ns = (row: number) => (isDense ? model.inertia_kg * drive.speed_mps[row] : 0);
  return {
    count: segments.length,
    restSquared: restOf(drive, segments, samples, segmentOf, model, isDense),
    throughput_J: throughputOf(segments, samples, segmentOf),
    fromSpeed_Ns: Float64Array.from(segments, ({ from }) => momentum_Ns(from)),
    toSpeed_Ns: Float64Array.from(segments, ({ to }) => momentum_Ns(Math.min(to, drive.count - 1))),
    isMet: Uint8Array.from(segments, ({ from }, s) => (s > 0 && segments[s - 1].to === from ? 1 : 0)),
    from_s: Float64Array.from(segments, ({ from }) => moved_s[from]),
    to_s: Float64Array.from(segments, ({ to }) => moved_s[to - 1]),
    from_m: Float64Array.from(segments, ({ from }) => drive.distance_m[from]),
    to_m: Float64Array.from(segments, ({ to }) => drive.distance_m[to - 1]),
    metre_J: isDense ? model.inertia_kg * STANDARD_GRAVITY_mps2 : 0,
    usual: hasHeights ? WITH_HEIGHTS : LEVEL,
  };
}

/** Lower Cholesky factor of the covariance of energies where the motion is off by so much, n by n. */
export function factorOf(errors: EnergyErrors, size: DriveErrors): Float64Array {
  const lower = errors.restSquared.slice();
  for (let s = 0; s < errors.count; s++) lower[s * errors.count + s] += (size.model_frac * errors.throughput_J[s]) ** 2;
  addSpeeds(lower, errors, size);
  addHeights(lower, errors, size);
  choleskyFactor(errors.count, lower);
  return lower;
}

/** What speeds make of it, m v σ: each is of a second of its own, the end of one segment and the beginning of the next. */
function addSpeeds(matrix: Float64Array, errors: EnergyErrors, { speed_mps }: DriveErrors): void {
  const { count, fromSpeed_Ns, toSpeed_Ns, isMet } = errors;
  for (let s = 0; s < count; s++) {
    const [atBeginSquared, atEndSquared] = [(fromSpeed_Ns[s] * speed_mps) ** 2, (toSpeed_Ns[s] * speed_mps) ** 2];
    matrix[s * count + s] += atBeginSquared + atEndSquared;
    if (isMet[s] === 0) continue;
    matrix[s * count + s - 1] -= atBeginSquared;
    matrix[(s - 1) * count + s] -= atBeginSquared;
  }
}

/**
 * What heights make of it, m g σ: a segment has the error at its end less that at its beginning. A receiver's errors hang together over time, those
 * of a map or of a road taken as level over distance, each as smoothed noise does, by Matern's law of order 3/2, (1 + x) exp(-x).
 */
function addHeights(matrix: Float64Array, errors: EnergyErrors, { elevation_m, lasts_s, lasts_m }: DriveErrors): void {
  const { count, from_s, to_s, from_m, to_m, metre_J } = errors;
  const varianceSquared = (metre_J * elevation_m) ** 2;
  if (varianceSquared === 0) return;
  const law = (share: number) => (1 + share) * Math.exp(-share);
  const together = (s_s: number, s_m: number, t_s: number, t_m: number) =>
    law(Math.abs(t_s - s_s) / lasts_s) * (lasts_m === EVER ? 1 : law(Math.abs(t_m - s_m) / lasts_m));
  for (let a = 0; a < count; a++)
    for (let b = 0; b <= a; b++) {
      const share =
        together(to_s[a], to_m[a], to_s[b], to_m[b]) -
        together(to_s[a], to_m[a], from_s[b], from_m[b]) -
        together(from_s[a], from_m[a], to_s[b], to_m[b]) +
        together(from_s[a], from_m[a], from_s[b], from_m[b]);
      matrix[a * count + b] += varianceSquared * share;
      if (a !== b) matrix[b * count + a] += varianceSquared * share;
    }
}

function movingTime_s({ count, target_mps, part }: DrivenAsMeasured): Float64Array {
  const moved_s = new Float64Array(count);
  for (let i = 1; i < count; i++) {
    const step_s = part[i] !== part[i - 1] ? APART_s : target_mps[i] >= MOVING_mps ? 1 : 0;
    moved_s[i] = moved_s[i - 1] + step_s;
  }
  return moved_s;
}

function restOf(
  drive: DrivenAsMeasured,
  segments: readonly Segment[],
  samples: PackSamples,
  segmentOf: Int32Array,
  model: Model,
  isDense: boolean,
): Float64Array {
  const n = segments.length;
  const matrix = new Float64Array(n * n);
  const mass_kg = model.inertia_kg;
  for (let k = 0; k < samples.count; k++) {
    const s = segmentOf[k];
    if (s < 0) continue;
    const i = samples.row[k];
    const step_W = drive.power_W[i + 1] - drive.power_W[i];
    const speed_mps = drive.speed_mps[i];
    const jolt_W = isDense
      ? 0
      : mass_kg * speed_mps * Math.hypot(ACCELERATION_mps2, STANDARD_GRAVITY_mps2 * SLOPE_ratio);
    const off_W = Math.hypot(samples.voltage_V[k] * CURRENT_A, STEP_frac * step_W, jolt_W);
    matrix[s * n + s] += (samples.weight_s[k] * off_W) ** 2;
  }
  for (let s = 0; s < n; s++) matrix[s * n + s] += 1;
  if (isDense) addClocks(matrix, drive, segments);
  return matrix;
}

function throughputOf(segments: readonly Segment[], samples: PackSamples, segmentOf: Int32Array): Float64Array {
  // Standing, nothing but the accessories draws: no model of a drive to be wrong.
  const weight = ({ doing }: Segment) => (doing === "braking" ? BRAKING_ratio : doing === "standing" ? 0 : 1);
  const through_J = new Float64Array(segments.length);
  for (let k = 0; k < samples.count; k++) {
    const s = segmentOf[k];
    if (s >= 0) through_J[s] += weight(segments[s]) * samples.weight_s[k] * Math.abs(samples.power_W[k]);
  }
  return through_J;
}

/** What clocks carry from one segment to the next where they meet. */
function addClocks(matrix: Float64Array, drive: DrivenAsMeasured, segments: readonly Segment[]): void {
  const n = segments.length;
  segments.forEach(({ from, to }, s) => {
    const atEndSquared = clockOff(drive, Math.min(to, drive.count - 1));
    matrix[s * n + s] += clockOff(drive, from) + atEndSquared;
    if (s + 1 >= n || segments[s + 1].from !== to) return;
    matrix[s * n + s + 1] -= atEndSquared;
    matrix[(s + 1) * n + s] -= atEndSquared;
  });
}

/** Square of the energy that clocks may carry over a meeting of two segments: of what power is there. */
function clockOff({ power_W, count }: DrivenAsMeasured, row: number): number {
  const [before, after] = [Math.max(0, row - 1), Math.min(count - 1, row + 1)];
  return (CLOCK_s * Math.max(Math.abs(power_W[before]), Math.abs(power_W[after]))) ** 2;
}
