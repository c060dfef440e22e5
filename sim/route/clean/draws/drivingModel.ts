import { keptSteps } from "../../../math/kalman/keptSteps.ts";
import { overStep, type StepMatrices } from "../../../math/kalman/overStep.ts";
import type { Passage, SwitchingModel } from "../../../math/kalman/switchingModel.ts";
import { ACCELERATION_LASTS_s, STANDSTILL_s } from "./drivingPrior.ts";

/** States of the model: way along the road, speed, acceleration, jerk, and the receiver's correlated error along the road. */
export const DRIVING_STATES = 5;
export const SPEED = 1;
export const ACCELERATION = 2;
/** Regimes of the model. */
export const MOVING = 0;
export const STANDING = 1;

/**
 * Where its acceleration would have a car at this speed in a second, it stands then half of the time, give or take so much: the likeliest
 * pair over UDDS, NYCC, HWFET, US06 and WLTC class 3b. Of their rows whose v + a dt lies from -0.5 to 0.5 m/s half stand in the next
 * second, of those above 1 m/s none; a test does it again.
 */
export const stopsAt_mps = { level: -0.05, spread: 0.5 };
/** How a car moves away: 1 m/s2, give or take 0.6. Between the gentle and the brisk starts of the standard cycles. */
const AWAY_mps2 = 1;
const AWAY_SPREAD_mps2 = 0.6;
/** A recorded speed below this may be standing: a receiver writes no negative ones, so that its noise there is another. Assumed. */
const FIDGET_mps = 0.6;
const FIDGET_NOISE_mps = 0.25;
/** What is known of the speed where a log begins. Assumed. */
const START_mps = 5;
const START_SPREAD_mps = 15;
/** A standing car is held to be at rest within these, so that the matrices can be inverted. */
const REST = { way: 1e-3, speed: 0.01, acceleration: 0.05 };

/** What is known of the drive along its road at each moment; NaN where nothing was recorded. */
export interface AlongRoad {
  readonly time_s: Float64Array;
  /** Way along the road as the positions show it, their noise still in it. */
  readonly at_m: Float64Array;
  readonly speed_mps: Float64Array;
  /** Variance by which way and positions may have come apart since the moment before. */
  readonly offset_m2: Float64Array;
  /** 1 where the car is known to stand. */
  readonly isParked: Uint8Array;
}

/** How positions and speeds scatter. */
export interface AlongNoise {
  readonly correlated_m: number;
  readonly correlation_s: number;
  readonly white_m: number;
  readonly speed_mps: number;
}

/**
 * A car along its road: moving, with an acceleration that is a Gaussian process of the spread given at each moment and a smooth one
 * (its derivative exists: Matern's process of order 3/2), or standing, its speed held at nought. It stops only from near nought.
 * Positions see the way and the receiver's first-order correlated error, recorded speeds the speed.
 */
export function drivingModel(
  known: AlongRoad,
  spread_mps2: Float64Array,
  noise: AlongNoise,
  { canStand = true, first = 0, last = known.time_s.length } = {},
): SwitchingModel {
  const n = DRIVING_STATES;
  const correlated = noise.correlated_m ** 2;
  const seesWay = Float64Array.of(1, 0, 0, 0, 1);
  const seesSpeed = Float64Array.of(0, 1, 0, 0, 0);
  const { startMean, startCovariance } = startOf(known, first, last, correlated);
  return {
    states: n,
    regimes: 2,
    events: last - first,
    startWeight: canStand ? Float64Array.of(0.5, 0.5) : Float64Array.of(1, 0),
    startMean,
    startCovariance,
    positiveState: (regime) => (regime === MOVING ? SPEED : -1),
    passage(k, from, to, fill) {
      const i = first + k;
      const dt_s = known.time_s[i] - known.time_s[i - 1];
      if (known.isParked[i] && to === MOVING) return 0;
      const { transition, noise: spread } = fill;
      const keep = Math.exp(-dt_s / noise.correlation_s);
      transition[n * n - 1] = keep;
      spread[n * n - 1] = correlated * (1 - keep * keep);
      spread[0] = known.offset_m2[i];
      if (from === MOVING && to === MOVING) {
        if (canStand) gateBySpeed(fill, dt_s, 1);
        const step = steps(dt_s);
        const variance = spread_mps2[i] ** 2;
        for (let a = 0; a < 4; a++) {
          for (let b = 0; b < 4; b++) {
            transition[a * n + b] = step.transition[a * 4 + b];
            spread[a * n + b] += step.noise[a * 4 + b] * variance;
          }
        }
        return 1;
      }
      transition[0] = 1;
      if (to === STANDING) {
        atRest(fill);
        if (from === STANDING) return Math.exp(-dt_s / STANDSTILL_s);
        transition[1] = dt_s / 2; // comes to rest somewhere in the step
        spread[0] += 0.05 ** 2;
        if (known.isParked[i]) return 1; // at whatever speed the log was lost
        gateBySpeed(fill, dt_s, -1);
        return canStand ? 1 : 0;
      }
      if (known.isParked[i - 1]) {
        anySpeed(fill);
        return 0.5;
      }
      movesAway(fill, dt_s);
      return 1 - Math.exp(-dt_s / STANDSTILL_s);
    },
    measure(k, observe) {
      const i = first + k;
      if (!Number.isNaN(known.at_m[i])) observe(seesWay, noise.white_m ** 2, known.at_m[i]);
      const speed_mps = known.speed_mps[i];
      if (Number.isNaN(speed_mps)) return;
      const fidget_mps = speed_mps > 0 && speed_mps < FIDGET_mps ? FIDGET_NOISE_mps : 0;
      observe(seesSpeed, noise.speed_mps ** 2 + fidget_mps ** 2, speed_mps);
    },
  };
}

/** Steps of every length in milliseconds. */
const steps = keptSteps(1000, accelerating);

/** Way, speed, acceleration of standard deviation 1 and jerk over a step: a'' = -2 a'/T - a/T^2 + w, w of density 4/T^3. */
function accelerating(dt_s: number): StepMatrices {
  const lasts = ACCELERATION_LASTS_s;
  const drift = Float64Array.of(0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, -1 / lasts ** 2, -2 / lasts);
  const density = new Float64Array(16);
  density[15] = 4 / lasts ** 3;
  return overStep(4, drift, density, dt_s);
}

/** By the speed that a step would end with at the acceleration it begins with; a short step shows less of what is to come. */
function gateBySpeed(fill: Passage, dt_s: number, side: -1 | 1): void {
  fill.gateSide = side;
  fill.gateRow[SPEED] = 1;
  fill.gateRow[ACCELERATION] = dt_s;
  fill.gateLevel = stopsAt_mps.level * dt_s;
  fill.gateSpread = Math.max(0.02, stopsAt_mps.spread * dt_s);
}

function atRest({ noise }: Passage): void {
  const n = DRIVING_STATES;
  noise[0] += REST.way ** 2;
  noise[n + 1] = REST.speed ** 2;
  noise[2 * n + 2] = REST.acceleration ** 2;
  noise[3 * n + 3] = REST.acceleration ** 2;
}

/** Starts from rest somewhere in the step, on average in its middle. */
function movesAway({ noise, shift }: Passage, dt_s: number): void {
  const n = DRIVING_STATES;
  const share = [(dt_s * dt_s) / 8, dt_s / 2, 1];
  for (let a = 0; a < 3; a++) {
    shift[a] = share[a] * AWAY_mps2;
    for (let b = 0; b < 3; b++) noise[a * n + b] += share[a] * share[b] * AWAY_SPREAD_mps2 ** 2;
  }
  noise[0] += 0.01 ** 2;
  noise[n + 1] += 0.1 ** 2;
  noise[2 * n + 2] += 0.1 ** 2;
  noise[3 * n + 3] += 0.2 ** 2;
}

/** Moves at a speed of which nothing is known: a log that begins again after a parking may do so on the road. */
function anySpeed({ noise, shift }: Passage): void {
  const n = DRIVING_STATES;
  shift[SPEED] = START_mps;
  [0.01, START_SPREAD_mps ** 2, 0.5, 0.1].forEach((variance, a) => {
    noise[a * n + a] += variance;
  });
}

function startOf(known: AlongRoad, first: number, last: number, correlated: number) {
  const n = DRIVING_STATES;
  let i = first;
  while (i < last && Number.isNaN(known.at_m[i])) i++;
  const startMean = new Float64Array(n);
  startMean[0] = i < last ? known.at_m[i] : 0;
  startMean[SPEED] = START_mps;
  const startCovariance = new Float64Array(n * n);
  [100, START_SPREAD_mps ** 2, 0.5, 0.1, correlated].forEach((variance, a) => {
    startCovariance[a * n + a] = variance;
  });
  return { startMean, startCovariance };
}
