import { accelerationModel } from "../../../math/kalman/accelerationModel.ts";
import { type Chunk, overlappingChunks } from "../../../math/kalman/overlappingChunks.ts";
import { type Smoothed, smooth } from "../../../math/kalman/smooth.ts";
import type { Steps } from "../../log/steps.ts";

/** What the smoother is given of one segment, moment by moment. NaN is "no position at this moment". */
export interface PositionInput {
  readonly time_s: Float64Array;
  readonly east_m: Float64Array;
  readonly north_m: Float64Array;
  /** 1 where the car is known to stand. */
  readonly isStanding: Uint8Array;
  /** Variance per axis by which the positions' offset may have changed at this moment; mostly 0. */
  readonly offset_m2: Float64Array;
  readonly noise: PositionNoise;
}

/** Noise of positions per axis: one part correlated in time, with a time constant, one that is new in every fix; and how the car moves under it. */
export interface PositionNoise {
  readonly correlated_m: number;
  readonly white_m: number;
  /** Time constant of the correlated part: satellites and reflections change over tens of seconds. */
  readonly correlation_s: number;
  /** Standard deviation of the car's acceleration, per axis. */
  readonly acceleration_mps2: number;
}

export interface SmoothedPositions {
  readonly east_m: Float64Array;
  readonly north_m: Float64Array;
  readonly eastSpeed_mps: Float64Array;
  readonly northSpeed_mps: Float64Array;
}

/** Accelerations of everyday driving last some seconds. Computed from the cycles on board. */
const ACCELERATION_LASTS_s = 5;
/** Moments on each side after which the ends no longer matter. */
const OVERLAP = 512;

/**
 * Positions and velocities along a segment, by a Kalman filter with backward smoothing over distance, speed and
 * acceleration of both axes and the correlated noise of the receiver.
 */
export function* smoothPositions(input: PositionInput): Steps<SmoothedPositions> {
  const n = input.time_s.length;
  const result: SmoothedPositions = {
    east_m: new Float64Array(n),
    north_m: new Float64Array(n),
    eastSpeed_mps: new Float64Array(n),
    northSpeed_mps: new Float64Array(n),
  };
  for (const chunk of overlappingChunks(n, OVERLAP)) {
    smoothChunk(input, chunk, result);
    yield chunk.to / n;
  }
  return result;
}

const STATES = 4; // distance, speed, acceleration, correlated noise

function smoothChunk(input: PositionInput, { from, to, first, last }: Chunk, result: SmoothedPositions): void {
  const { mean } = runPositions(input, first, last, true);
  for (let i = from; i < to; i++) {
    const at = (i - first) * 2 * STATES;
    result.east_m[i] = mean[at];
    result.eastSpeed_mps[i] = mean[at + 1];
    result.north_m[i] = mean[at + STATES];
    result.northSpeed_mps[i] = mean[at + STATES + 1];
  }
}

/** The filter over moments `first` to `last`; without the backward pass only its likelihood is of use. */
export function runPositions(input: PositionInput, first: number, last: number, backward: boolean): Smoothed {
  const { time_s, east_m, north_m, isStanding, offset_m2, noise } = input;
  const correlated = noise.correlated_m ** 2;
  const white = noise.white_m ** 2;
  const positionRow = Float64Array.of(1, 0, 0, 1);
  const speedRow = Float64Array.of(0, 1, 0, 0);
  const values = new Float64Array(2);
  const zeros = new Float64Array(2);
  let start = first;
  while (start < last && Number.isNaN(east_m[start])) {
    start++;
  }
  const [startEast, startNorth] = start < last ? [east_m[start], north_m[start]] : [0, 0];
  const startCovariance = new Float64Array(STATES * STATES);
  startCovariance[0] = 400;
  startCovariance[5] = 400;
  startCovariance[10] = 1;
  startCovariance[15] = correlated;
  return smooth(
    {
      states: STATES,
      axes: 2,
      events: last - first,
      startCovariance,
      startMean: Float64Array.of(startEast, 0, 0, 0, startNorth, 0, 0, 0),
      transition(k, transition, spread) {
        const dt_s = time_s[first + k] - time_s[first + k - 1];
        accelerationModel(dt_s, noise.acceleration_mps2, ACCELERATION_LASTS_s, STATES, transition, spread);
        const keep = Math.exp(-dt_s / noise.correlation_s);
        transition[15] = keep;
        spread[15] = correlated * (1 - keep * keep) + offset_m2[first + k];
      },
      measure(k, observe) {
        const i = first + k;
        if (!Number.isNaN(east_m[i])) {
          values[0] = east_m[i];
          values[1] = north_m[i];
          observe(positionRow, white, values);
        }
        if (isStanding[i]) {
          observe(speedRow, 0.0025, zeros); // 0.05 m/s: standing, to within the grid's second
        }
      },
    },
    backward,
  );
}
