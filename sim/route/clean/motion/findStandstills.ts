/** Slow moments this short between two stands belong to them. */
const MERGED_s = 3;
/** A receiver that stands may seem to creep for this long at a time. */
const LONGEST_CREEP_s = 40;
/** A recorded speed below this is standing: four times a usual receiver's noise, slower than a walk. */
const STANDING_mps = 0.6;

/** What counts as standing: the speed below which, for how long at least, and how far a standing receiver may creep. */
interface StandingLimits {
  readonly speed_mps: number;
  readonly least_s: number;
  readonly creep_m: number;
}

/** With recorded speeds: a walk's pace is driving, a receiver's noise is not. */
export const recordedLimits: StandingLimits = { speed_mps: STANDING_mps, least_s: 1, creep_m: 0 };

/**
 * Limits for speeds from positions with the correlated noise given: a standing receiver wanders and seems to drive 50 to 300 m an
 * hour, the more the noisier it is. Fitted to made logs with correlated noise of 3 and 8 m.
 */
export function positionLimits(wandering_m: number): StandingLimits {
  const wander_m = Math.min(wandering_m, 12);
  return { speed_mps: 0.4 + 0.11 * wander_m, least_s: 3, creep_m: 3 + 2 * wander_m };
}

/**
 * 1 at every moment the car stands, from its speed there: where it stays below the limit for long enough. Two stands
 * are one where what lies between is a moment, or a creep no longer than the noise makes. NaN counts as slow.
 */
export function findStandstills(time_s: Float64Array, speed_mps: Float64Array, limits: StandingLimits): Uint8Array {
  const n = time_s.length;
  const isStanding = new Uint8Array(n);
  let start = -1;
  let lastEnd = -1;
  for (let i = 0; i <= n; i++) {
    const isSlow = i < n && !(speed_mps[i] >= limits.speed_mps);
    if (isSlow && start < 0) {
      start = i;
    } else if (!isSlow && start >= 0) {
      const end = i - 1;
      if (time_s[end] - time_s[start] >= limits.least_s) {
        const joins = lastEnd >= 0 && isCreep(time_s, speed_mps, lastEnd, start, limits.creep_m);
        isStanding.fill(1, joins ? lastEnd + 1 : start, end + 1);
        lastEnd = end;
      }
      start = -1;
    }
  }
  return isStanding;
}

function isCreep(time_s: Float64Array, speed_mps: Float64Array, from: number, to: number, creep_m: number): boolean {
  const between_s = time_s[to] - time_s[from];
  if (between_s <= MERGED_s) {
    return true;
  }
  if (between_s > LONGEST_CREEP_s) {
    return false;
  }
  let moved_m = 0;
  for (let i = from + 1; i <= to; i++) {
    moved_m += 0.5 * (speed_mps[i] + speed_mps[i - 1]) * (time_s[i] - time_s[i - 1]);
  }
  return moved_m < creep_m;
}

/** A car that stays within a few metres for this long stands, however its receiver fidgets. */
const LEAST_LOITER_s = 60;

/**
 * Marks, in `isStanding`, every time the positions stay for a minute or more within a box whose diagonal is no longer
 * than `box_m`: a standing receiver's correlated noise has no direction that lasts. The ends of such a time, where the car still
 * rolls in or already out faster than `rolling_mps`, stay unmarked.
 */
export function markLoitering(
  time_s: Float64Array,
  east_m: Float64Array,
  north_m: Float64Array,
  speed_mps: Float64Array,
  box_m: number,
  rolling_mps: number,
  isStanding: Uint8Array,
): void {
  const n = time_s.length;
  let start = 0;
  while (start < n) {
    let [west, east, south, north] = [east_m[start], east_m[start], north_m[start], north_m[start]];
    let end = start;
    for (let i = start + 1; i < n; i++) {
      west = Math.min(west, east_m[i]);
      east = Math.max(east, east_m[i]);
      south = Math.min(south, north_m[i]);
      north = Math.max(north, north_m[i]);
      if (Math.hypot(east - west, north - south) > box_m) {
        break;
      }
      end = i;
    }
    if (time_s[end] - time_s[start] < LEAST_LOITER_s) {
      start++;
      continue;
    }
    let [first, last] = [start, end];
    while (first < last && speed_mps[first] > rolling_mps) {
      first++;
    }
    while (last > first && speed_mps[last] > rolling_mps) {
      last--;
    }
    if (time_s[last] - time_s[first] >= 0.5 * LEAST_LOITER_s) {
      isStanding.fill(1, first, last + 1);
    }
    start = end;
  }
}
