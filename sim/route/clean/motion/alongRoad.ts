/** Seconds on each side over which the direction of the road is taken. */
const DIRECTION_s = 4;

/**
 * Speed along the road: the smoothed velocity on the mean direction of the seconds around it. The bare length of the
 * velocity would count what is left of the sideways noise as speed, always upward: half a percent in a noisy street.
 */
export function alongRoad(time_s: Float64Array, east: Float64Array, north: Float64Array): Float64Array {
  const n = time_s.length;
  const speed_mps = new Float64Array(n);
  let [from, to] = [0, 0];
  let [sumEast, sumNorth] = [0, 0];
  for (let i = 0; i < n; i++) {
    for (; to < n && time_s[to] <= time_s[i] + DIRECTION_s; to++) {
      sumEast += east[to];
      sumNorth += north[to];
    }
    for (; time_s[from] < time_s[i] - DIRECTION_s; from++) {
      sumEast -= east[from];
      sumNorth -= north[from];
    }
    const size = Math.hypot(sumEast, sumNorth);
    speed_mps[i] = size > 0 ? Math.max(0, (east[i] * sumEast + north[i] * sumNorth) / size) : 0;
  }
  return speed_mps;
}
