import { choleskyFactor } from "../../math/cholesky.ts";
import type { Model } from "../../step/model.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import { atSample, type PackSamples } from "./packSamples.ts";
import type { Segment } from "./segments.ts";

/** A drive as a fit sees it: one energy a segment, and how far each may be off, alone and together with its neighbours. */
export interface Observations {
  readonly segments: readonly Segment[];
  /** Energy from the pack as measured, by segment. */
  readonly energy_J: Float64Array;
  /** Time that samples stand for, by segment. */
  readonly time_s: Float64Array;
  /** Segment of each sample, -1 for none. */
  readonly segmentOf: Int32Array;
  /** Lower Cholesky factor of the covariance of the energies, n by n. */
  readonly lower: Float64Array;
}

/** How far a logger's single sample of current is off, beside its gain. Assumed. */
const CURRENT_A = 0.5;
/** Samples and seconds are off each other by some part of a second: of a step in power so much is lost. Assumed. */
const STEP_frac = 0.3;
/** Noise of the cleaned speed and height. Assumed; their sum is scaled to what the segments show. */
const SPEED_mps = 0.1;
const HEIGHT_m = 0.7;
const NO_HEIGHT_m = 4;
/** Noise of acceleration and slope at one moment, for samples too far apart to add up to energies. Assumed. */
const ACCELERATION_mps2 = 0.1;
const SLOPE_ratio = 0.008;
/** What a model leaves out of the energy of a segment, and of one in which the driver's foot shares with the motor. Assumed. */
const MODEL_frac = 0.03;
const BRAKING_frac = 0.12;
/** Places nearer than this have one and the same error of height. */
const SAME_PLACE_m = 3;

/**
 * The measured energy of each segment with its covariance. What is wrong with a speed or a height where two segments meet is taken from
 * one and given to the other, so that neighbours are off against each other and long sums are hardly off at all.
 */
export function observe(
  drive: DrivenAsMeasured,
  segments: readonly Segment[],
  samples: PackSamples,
  model: Model,
  hasHeights: boolean,
): Observations {
  const segmentOfRow = new Int32Array(drive.count).fill(-1);
  segments.forEach(({ from, to }, s) => {
    segmentOfRow.fill(s, from, to);
  });
  const all = Int32Array.from(
    { length: samples.count },
    (_, k) => segmentOfRow[samples.row[k] + Math.round(samples.part_frac[k])],
  );
  const seen_s = new Float64Array(segments.length);
  all.forEach((s, k) => {
    if (s >= 0) seen_s[s] += samples.weight_s[k];
  });
  // A segment of which half was not logged has no energy.
  const isSeen = (s: number) => seen_s[s] >= 0.5 * (segments[s].to - segments[s].from);
  const number = new Int32Array(segments.length).fill(-1);
  const kept = segments.filter((_, s) => isSeen(s));
  let next = 0;
  segments.forEach((_, s) => {
    if (isSeen(s)) number[s] = next++;
  });
  const segmentOf = all.map((s) => (s < 0 ? -1 : number[s]));
  const n = kept.length;
  const energy_J = new Float64Array(n);
  const time_s = new Float64Array(n);
  segmentOf.forEach((s, k) => {
    if (s < 0) return;
    energy_J[s] += samples.weight_s[k] * samples.power_W[k];
    time_s[s] += samples.weight_s[k];
  });
  const covariance = covarianceOf(drive, kept, samples, segmentOf, model, hasHeights);
  choleskyFactor(n, covariance);
  return { segments: kept, energy_J, time_s, segmentOf, lower: covariance };
}

/** What a model's power comes to in each segment, weighed as the samples are. */
export function predictedEnergy_J(
  drive: DrivenAsMeasured,
  samples: PackSamples,
  { segmentOf, energy_J }: Observations,
): Float64Array {
  const predicted_J = new Float64Array(energy_J.length);
  for (let k = 0; k < samples.count; k++) {
    const s = segmentOf[k];
    if (s >= 0) predicted_J[s] += samples.weight_s[k] * atSample(samples, drive.power_W, k);
  }
  return predicted_J;
}

/** Divides residuals by how far they may be off, correlations taken out: solves L x = r in place. */
export function whiten({ lower, energy_J }: Observations, residuals: Float64Array): void {
  const n = energy_J.length;
  for (let i = 0; i < n; i++) {
    let sum = residuals[i];
    for (let l = 0; l < i; l++) sum -= lower[i * n + l] * residuals[l];
    residuals[i] = sum / lower[i * n + i];
  }
}

function covarianceOf(
  drive: DrivenAsMeasured,
  segments: readonly Segment[],
  samples: PackSamples,
  segmentOf: Int32Array,
  model: Model,
  hasHeights: boolean,
): Float64Array {
  const n = segments.length;
  const matrix = new Float64Array(n * n);
  const mass_kg = model.inertia_kg;
  const isDense = samples.interval_s <= 2;
  const throughput_J = new Float64Array(n);
  for (let k = 0; k < samples.count; k++) {
    const s = segmentOf[k];
    if (s < 0) continue;
    const i = samples.row[k];
    const step_W = drive.power_W[i + 1] - drive.power_W[i];
    const speed_mps = drive.speed_mps[i];
    const jolt_W = isDense ? 0 : mass_kg * speed_mps * Math.hypot(ACCELERATION_mps2, 9.81 * SLOPE_ratio);
    const off_W = Math.hypot(samples.voltage_V[k] * CURRENT_A, STEP_frac * step_W, jolt_W);
    matrix[s * n + s] += (samples.weight_s[k] * off_W) ** 2;
    throughput_J[s] += samples.weight_s[k] * Math.abs(samples.power_W[k]);
  }
  segments.forEach(({ doing }, s) => {
    // Standing, nothing but the accessories draws: no model of a drive to be wrong.
    const left_frac = doing === "braking" ? BRAKING_frac : doing === "standing" ? 0 : MODEL_frac;
    matrix[s * n + s] += (left_frac * throughput_J[s]) ** 2 + 1;
  });
  if (isDense) addMeetings(matrix, drive, segments, mass_kg, hasHeights ? HEIGHT_m : NO_HEIGHT_m);
  return matrix;
}

/** What is wrong where segments meet: with kinetic energy, m v σ, and with height, m g σ, one error to a place. */
function addMeetings(
  matrix: Float64Array,
  drive: DrivenAsMeasured,
  segments: readonly Segment[],
  mass_kg: number,
  elevation_m: number,
): void {
  const n = segments.length;
  const add = (a: number, b: number, value: number) => {
    matrix[a * n + b] += value;
    if (a !== b) matrix[b * n + a] += value;
  };
  segments.forEach(({ from, to }, s) => {
    const last = Math.min(to, drive.count - 1);
    const atBegin = (mass_kg * drive.speed_mps[from] * SPEED_mps) ** 2 + clockOff(drive, from);
    const atEnd = (mass_kg * drive.speed_mps[last] * SPEED_mps) ** 2 + clockOff(drive, last);
    const next = s + 1 < n && segments[s + 1].from === to ? s + 1 : -1;
    add(s, s, atBegin + atEnd);
    if (next >= 0) add(s, next, -atEnd);
    const byHeight = (mass_kg * 9.81 * elevation_m) ** 2;
    const moved_m = drive.distance_m[to - 1] - drive.distance_m[from];
    if (moved_m <= SAME_PLACE_m) return;
    add(s, s, 2 * byHeight);
    // The next segment that moves begins at the place where this one ends.
    let after = s + 1;
    while (
      after < n &&
      drive.distance_m[segments[after].to - 1] - drive.distance_m[segments[after].from] <= SAME_PLACE_m
    )
      after++;
    const isMet =
      after < n &&
      segments[after].from - to < 600 &&
      drive.distance_m[segments[after].from] - drive.distance_m[to - 1] < 50;
    if (isMet) add(s, after, -byHeight);
  });
}

/** Clocks that are off by this much bring a part of one segment's energy into the next. Assumed. */
const CLOCK_s = 0.2;

/** Square of the energy that clocks may carry over a meeting of two segments: of what power is there. */
function clockOff({ power_W, count }: DrivenAsMeasured, row: number): number {
  const [before, after] = [Math.max(0, row - 1), Math.min(count - 1, row + 1)];
  return (CLOCK_s * Math.max(Math.abs(power_W[before]), Math.abs(power_W[after]))) ** 2;
}
