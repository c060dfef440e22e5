import { inputError } from "../../../shared/problems.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import type { Trace } from "../../trace/trace.ts";

/** How the last, cut repetition comes to rest: a calm stop. Assumed. */
const BRAKING_mps2 = 1;
const LONGEST_m = 2e6;

/**
 * A cycle driven over and over until the distance is reached, which it is exactly: in the last repetition the car brakes
 * to rest at 1 m/s2 so that it stops there. Throws `InputError` for a distance not within 100 m to 2000 km, and for a
 * cycle that does not begin and end at rest. Heights are left out: lay hills under the result.
 */
export function repeatCycleToDistance(cycle: Trace, distance_m: number): Trace {
  if (!(distance_m >= 100 && distance_m <= LONGEST_m)) {
    throw inputError("badDistance", cycle.id, `found ${distance_m} m, allowed are 100 m to 2000 km`);
  }
  const { time_s, speed_mps } = cycle;
  const last = time_s.length - 1;
  if (speed_mps[0] !== 0 || speed_mps[last] !== 0) {
    throw inputError("notAtRest", cycle.id, "found a trace that does not begin and end at rest, wanted one to repeat");
  }
  const along_m = distanceAlong_m(time_s, speed_mps);
  if (!(along_m[last] > 0)) {
    throw inputError("noDistance", cycle.id, "found a trace that goes nowhere, wanted one to repeat");
  }
  const times: number[] = [0];
  const speeds: number[] = [0];
  let done_m = 0;
  for (;;) {
    const from_s = times[times.length - 1];
    for (let i = 1; i <= last; i++) {
      const braking_m = speed_mps[i] ** 2 / (2 * BRAKING_mps2);
      if (done_m + along_m[i] + braking_m >= distance_m) {
        stopAt(cycle, along_m, i, distance_m - done_m, from_s, times, speeds);
        const title = `${cycle.title}, repeated to ${formatNumber(distance_m / 1000)} km`;
        return { id: cycle.id, title, time_s: Float64Array.from(times), speed_mps: Float64Array.from(speeds) };
      }
      times.push(from_s + time_s[i]);
      speeds.push(speed_mps[i]);
    }
    done_m += along_m[last];
  }
}

/** Finds, by halving inside step i, the moment to brake so that the car stops after `left_m`, and writes the braking. */
function stopAt(
  cycle: Trace,
  along_m: Float64Array,
  i: number,
  left_m: number,
  from_s: number,
  times: number[],
  speeds: number[],
): void {
  const { time_s, speed_mps } = cycle;
  const step_s = time_s[i] - time_s[i - 1];
  const change_mps2 = (speed_mps[i] - speed_mps[i - 1]) / step_s;
  let low = 0;
  let high = step_s;
  const speedAt = (into_s: number) => speed_mps[i - 1] + change_mps2 * into_s;
  const stopsAt = (into_s: number) =>
    along_m[i - 1] +
    speed_mps[i - 1] * into_s +
    0.5 * change_mps2 * into_s ** 2 +
    speedAt(into_s) ** 2 / (2 * BRAKING_mps2);
  for (let k = 0; k < 60; k++) {
    const middle = 0.5 * (low + high);
    if (stopsAt(middle) < left_m) {
      low = middle;
    } else {
      high = middle;
    }
  }
  const begin_s = from_s + time_s[i - 1] + high;
  if (high > 1e-9) {
    times.push(begin_s);
    speeds.push(speedAt(high));
  }
  const brake_s = speedAt(high) / BRAKING_mps2;
  const steps = Math.ceil(brake_s - 1e-9);
  for (let k = 1; k <= steps; k++) {
    times.push(begin_s + (brake_s * k) / steps);
    speeds.push(k === steps ? 0 : speedAt(high) * (1 - k / steps));
  }
}
