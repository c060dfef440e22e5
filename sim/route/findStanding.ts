/** Shortest stand worth holding still. */
const LEAST_STAND_s = 3;
/** Slow moments this short between two stands belong to them. */
const MERGED_s = 3;
/** A recorded speed below this is standing: four times a usual receiver's noise, slower than a walk. */
const STANDING_mps = 0.6;

/**
 * 1 at every moment the car stands, from its speed there. With recorded speeds the limit is 0.6 m/s; with speeds from
 * positions it rises with their noise, since a standing receiver wanders and seems to drive 50 to 300 m an hour.
 * Moments with NaN count as their neighbours do.
 */
export function findStanding(time_s: Float64Array, speed_mps: Float64Array, limit_mps = STANDING_mps): Uint8Array {
  const n = time_s.length;
  const isStanding = new Uint8Array(n);
  let start = -1;
  let lastEnd = -1;
  for (let i = 0; i <= n; i++) {
    const isSlow = i < n && !(speed_mps[i] >= limit_mps);
    if (isSlow && start < 0) {
      start = i;
    } else if (!isSlow && start >= 0) {
      const end = i - 1;
      if (time_s[end] - time_s[start] >= LEAST_STAND_s) {
        const from = lastEnd >= 0 && time_s[start] - time_s[lastEnd] <= MERGED_s ? lastEnd + 1 : start;
        isStanding.fill(1, from, end + 1);
        lastEnd = end;
      }
      start = -1;
    }
  }
  return isStanding;
}

/** The limit of standing for speeds from positions with the wander given, in m/s. */
export function standingLimit_mps(wandering_m: number): number {
  return 0.4 + 0.11 * Math.min(wandering_m, 12);
}
