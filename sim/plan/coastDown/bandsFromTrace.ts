import { MPS_PER_KMH } from "../../../shared/units.ts";
import type { Trace } from "../../trace/trace.ts";
import type { CoastBand } from "../../vehicle/coastDown/evaluateCoastDown.ts";

/** A coast-down in a recorded drive: rows from its fastest to its slowest. */
export interface Coasting {
  readonly first: number;
  readonly last: number;
}

/** Bands of 10 km/h around each tenth, as the rules have them. [GTR15, Annex 4, para 4.3.1] */
const BAND_kmh = 10;
const HIGHEST_kmh = 145;
const LOWEST_kmh = 15;
/** A piece that loses less is a lift of the foot and no coast-down. Assumed. */
const LEAST_DROP_mps = 30 * MPS_PER_KMH;
/** Harder slowing is braking; a speed that rises by more than this is driving on. Assumed. */
const BRAKING_mps2 = 1.2;
const RISE_mps = 0.5;
/** Slowing is judged over so long, so that a recording's noise is no braking. */
const OVER_s = 2;

/** The pieces of a drive in which the car rolled freely: the speed falls all along, never as hard as by braking, by 30 km/h at least. */
export function coastings({ time_s, speed_mps }: Trace): Coasting[] {
  const found: Coasting[] = [];
  const n = time_s.length;
  let first = 0;
  let lowest_mps = speed_mps[0];
  const close = (last: number) => {
    if (speed_mps[first] - speed_mps[last] >= LEAST_DROP_mps) found.push({ first, last });
  };
  for (let i = 1; i < n; i++) {
    const isRising = speed_mps[i] > lowest_mps + RISE_mps;
    if (isRising || isBraking(time_s, speed_mps, i)) {
      close(i - 1);
      first = i;
      lowest_mps = speed_mps[i];
    } else if (speed_mps[i] >= speed_mps[first]) {
      first = i;
      lowest_mps = speed_mps[i];
    } else lowest_mps = Math.min(lowest_mps, speed_mps[i]);
  }
  close(n - 1);
  return found;
}

/**
 * The times in which the coast-downs of some recorded drives pass bands of 10 km/h, between samples by straight lines; a band that only
 * part of them pass has fewer times. Which way each went is as given: all of them one way, or those `back` the other.
 */
export function bandsFromTraces(there: readonly Trace[], back: readonly Trace[] = []): CoastBand[] {
  const runsOf = (traces: readonly Trace[]) =>
    traces.flatMap((trace) => coastings(trace).map((coasting) => ({ trace, coasting })));
  const [runs, backRuns] = [runsOf(there), runsOf(back)];
  const bands: CoastBand[] = [];
  for (let high_kmh = HIGHEST_kmh; high_kmh - BAND_kmh >= LOWEST_kmh; high_kmh -= BAND_kmh) {
    const high_mps = high_kmh * MPS_PER_KMH;
    const low_mps = (high_kmh - BAND_kmh) * MPS_PER_KMH;
    const timesOf = (which: typeof runs) =>
      which.flatMap(({ trace, coasting }) => {
        const begin_s = passes_s(trace, coasting, high_mps);
        const end_s = passes_s(trace, coasting, low_mps);
        return begin_s === undefined || end_s === undefined ? [] : [end_s - begin_s];
      });
    const [there_s, back_s] = [timesOf(runs), timesOf(backRuns)];
    if (there_s.length + back_s.length > 0) bands.push({ high_mps, low_mps, there_s, back_s });
  }
  return bands;
}

/** When a coast-down falls to a speed for the first time; nothing where it begins below or does not fall so low. */
function passes_s({ time_s, speed_mps }: Trace, { first, last }: Coasting, at_mps: number): number | undefined {
  if (speed_mps[first] < at_mps) return undefined;
  for (let i = first + 1; i <= last; i++) {
    if (speed_mps[i] > at_mps) continue;
    const part = (speed_mps[i - 1] - at_mps) / (speed_mps[i - 1] - speed_mps[i]);
    return time_s[i - 1] + part * (time_s[i] - time_s[i - 1]);
  }
  return undefined;
}

function isBraking(time_s: Float64Array, speed_mps: Float64Array, i: number): boolean {
  let before = i - 1;
  while (before > 0 && time_s[i] - time_s[before] < OVER_s) before--;
  return (speed_mps[before] - speed_mps[i]) / (time_s[i] - time_s[before]) > BRAKING_mps2;
}
