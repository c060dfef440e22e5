import type { SmoothedPositions } from "../motion/smoothPositions.ts";
import type { Timeline } from "../rows/timeline.ts";

/** The direction of the road is taken over no more than this much time on each side. */
const DIRECTION_s = 4;
/** It is that of the shortest piece about a moment that is so long, and longer than the noise by this factor: a longer one cuts corners. */
const LEAST_m = 8;
const LEAST_NOISES = 2.5;
/**
 * Of how the road turns between two positions only the whole is known, not where. Of a turn t one sharp corner makes it longer than the line by nothing to
 * t^2/8 of its length, by where it lies, an even bend by t^2/24 (series of 1/cos(t/2) and of (t/2)/sin(t/2)), and a bend back and forth is
 * not seen at all. Taken as a standard deviation of so much of the length times the turn, that of one radian; chosen on made logs of a fix every 10 s.
 */
const TURNING_frac = 0.1;
/** Beside that a road laid along positions is off by a percent over pieces of 100 m, by what winds finer. Variance over a metre, in m. Assumed. */
const WINDING_m = 2 * 0.01 ** 2 * 100;

/** Positions laid along the road. */
export interface Observed {
  /** Way along the road at every moment with a position, the receiver's error still in it; NaN elsewhere. */
  readonly at_m: Float64Array;
  /** Speed along the road by the smoothed positions. */
  readonly speed_mps: Float64Array;
  /** Variance by which the way laid from the position before to that at a moment may differ from the road; 0 where there is no position. */
  readonly laid_m2: Float64Array;
}

/**
 * The way along the road that each position shows: from one position to the next the length of the smoothed path, and what the
 * positions' distance from that path changed along the road. Only the error along the road is left in it: across the road the smoother
 * has had its say. Where the car is too slow for a direction, that of before and after holds.
 */
export function alongObserved(
  line: Timeline,
  logged: Pick<SmoothedPositions, "east_m" | "north_m">,
  smoothed: SmoothedPositions,
  correlated_m: number,
): Observed {
  const n = line.count;
  const least_m = Math.max(LEAST_m, LEAST_NOISES * correlated_m);
  const { east, north } = directions(line.time_s, smoothed, least_m);
  const laid_m2 = new Float64Array(n);
  const at_m = new Float64Array(n).fill(Number.NaN);
  const speed_mps = new Float64Array(n);
  let way_m = 0;
  let [path_m, turned_rad] = [0, 0];
  let last = -1;
  for (let k = 0; k < n; k++) {
    speed_mps[k] = smoothed.eastSpeed_mps[k] * east[k] + smoothed.northSpeed_mps[k] * north[k];
    if (k > 0) {
      path_m += 0.5 * (speed_mps[k] + speed_mps[k - 1]) * (line.time_s[k] - line.time_s[k - 1]);
      turned_rad += Math.abs(
        Math.atan2(east[k - 1] * north[k] - north[k - 1] * east[k], east[k - 1] * east[k] + north[k - 1] * north[k]),
      );
    }
    if (Number.isNaN(logged.east_m[k])) continue;
    if (last >= 0) {
      const offEast_m = logged.east_m[k] - smoothed.east_m[k] - logged.east_m[last] + smoothed.east_m[last];
      const offNorth_m = logged.north_m[k] - smoothed.north_m[k] - logged.north_m[last] + smoothed.north_m[last];
      const [alongEast, alongNorth] = [east[k] + east[last], north[k] + north[last]];
      const size = Math.max(1e-9, Math.hypot(alongEast, alongNorth));
      way_m += path_m + (offEast_m * alongEast + offNorth_m * alongNorth) / size;
      const long_m = Math.abs(path_m);
      laid_m2[k] = (TURNING_frac * Math.max(long_m, least_m) * Math.min(turned_rad, Math.PI)) ** 2 + WINDING_m * long_m;
    }
    [path_m, turned_rad] = [0, 0];
    last = k;
    at_m[k] = way_m;
  }
  return { at_m, speed_mps, laid_m2 };
}

/** Unit vectors of the road's direction at every moment. */
function directions(time_s: Float64Array, { east_m, north_m }: SmoothedPositions, least_m: number) {
  const n = time_s.length;
  const east = new Float64Array(n).fill(Number.NaN);
  const north = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let [from, to] = [i, i];
    for (;;) {
      const dEast_m = east_m[to] - east_m[from];
      const dNorth_m = north_m[to] - north_m[from];
      const far_m = Math.hypot(dEast_m, dNorth_m);
      if (far_m >= least_m) {
        east[i] = dEast_m / far_m;
        north[i] = dNorth_m / far_m;
        break;
      }
      const goesBack = from > 0 && time_s[i] - time_s[from - 1] <= DIRECTION_s;
      const goesOn = to + 1 < n && time_s[to + 1] - time_s[i] <= DIRECTION_s;
      if (!goesBack && !goesOn) break;
      if (goesBack) from--;
      if (goesOn) to++;
    }
  }
  let last = -1;
  for (let i = 0; i <= n; i++) {
    if (i < n && Number.isNaN(east[i])) continue;
    for (let j = last + 1; j < i; j++) {
      const share = last < 0 ? 1 : i === n ? 0 : (j - last) / (i - last);
      const turnedEast = (last < 0 ? 0 : east[last] * (1 - share)) + (i === n ? 0 : east[i] * share);
      const turnedNorth = (last < 0 ? 0 : north[last] * (1 - share)) + (i === n ? 0 : north[i] * share);
      const size = Math.hypot(turnedEast, turnedNorth);
      east[j] = size > 1e-6 ? turnedEast / size : 1;
      north[j] = size > 1e-6 ? turnedNorth / size : 0;
    }
    last = i;
  }
  return { east, north };
}
