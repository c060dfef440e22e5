import { cycleAccelerations_mps2 } from "./drivingPrior.ts";

/** A published cycle as a driver: how it spreads its accelerations, and at which speeds it makes its way. */
export interface CycleDriving {
  readonly name: string;
  /** Root mean square acceleration while moving in bands 4 m/s wide, the last of all that is faster; NaN where it has fewer than 20 rows. */
  readonly accelerations_mps2: readonly number[];
  /** Shares of its way by the same bands, of mean speeds over 30 s. */
  readonly wayShares_frac: readonly number[];
}

const none = Number.NaN;
/** Computed from the cycles on board, to hundredths; a test does it again. */
export const cycleDrivings: readonly CycleDriving[] = [
  {
    name: "UDDS",
    accelerations_mps2: [1.09, 1.01, 0.57, 0.36, 0.43, 0.23, 0.16],
    wayShares_frac: [0.05, 0.21, 0.32, 0.21, 0.03, 0.12, 0.06],
  },
  {
    name: "NYCC",
    accelerations_mps2: [0.81, 0.9, 0.69, none, none, none, none],
    wayShares_frac: [0.32, 0.54, 0.14, 0, 0, 0, 0],
  },
  {
    name: "HWFET",
    accelerations_mps2: [none, none, none, 0.55, 0.38, 0.19, 0.1],
    wayShares_frac: [0, 0, 0, 0.02, 0.17, 0.41, 0.4],
  },
  {
    name: "US06",
    accelerations_mps2: [1.59, 2.33, 1.99, 1.6, 1.13, 0.77, 0.35],
    wayShares_frac: [0, 0.04, 0.05, 0.04, 0.02, 0.04, 0.8],
  },
  {
    name: "WLTC class 3b",
    accelerations_mps2: [0.69, 0.71, 0.79, 0.52, 0.39, 0.27, 0.23],
    wayShares_frac: [0.02, 0.09, 0.14, 0.14, 0.12, 0.11, 0.38],
  },
];

/** Speeds are compared as means over this: nothing shorter is known where fixes are 30 s apart. */
const MEAN_s = 30;
const BAND_mps = 4;

/**
 * The published cycle that makes its way at speeds most like a log's: with the least sum of differences of the shares of the way up to each band
 * (the earth mover's distance, in bands). `speed_mps` are the speeds at `time_s` as far as smoothing alone shows them.
 */
export function nearestCycle(time_s: Float64Array, speed_mps: Float64Array): CycleDriving {
  const way_m = new Float64Array(cycleAccelerations_mps2.length);
  let [from_s, far_m] = [time_s[0], 0];
  for (let k = 1; k < time_s.length; k++) {
    far_m += 0.5 * Math.abs(speed_mps[k] + speed_mps[k - 1]) * (time_s[k] - time_s[k - 1]);
    const long_s = time_s[k] - from_s;
    if (long_s < MEAN_s) continue;
    way_m[Math.min(way_m.length - 1, Math.floor(far_m / long_s / BAND_mps))] += far_m;
    [from_s, far_m] = [time_s[k], 0];
  }
  const whole_m = way_m.reduce((sum, each) => sum + each, 0);
  const apart = ({ wayShares_frac }: CycleDriving) => {
    let [ahead, sum] = [0, 0];
    for (let i = 0; i < way_m.length; i++) {
      ahead += (whole_m > 0 ? way_m[i] / whole_m : 0) - wayShares_frac[i];
      sum += Math.abs(ahead);
    }
    return sum;
  };
  return cycleDrivings.reduce((best, each) => (apart(each) < apart(best) ? each : best));
}

/** The cycle's accelerations by band, those of the median over all where it is too seldom at such speeds. */
export function accelerationsOf({ accelerations_mps2 }: CycleDriving): readonly number[] {
  return accelerations_mps2.map((each, i) => (Number.isNaN(each) ? cycleAccelerations_mps2[i] : each));
}
