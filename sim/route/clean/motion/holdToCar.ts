/** What a road car can do: no quicker away than a sports car, no harder in the brakes than dry tyres hold. Assumed. */
const AWAY_mps2 = 5;
const BRAKES_mps2 = 9;

/**
 * Holds speeds, one a second, to what a car can do, in place: never below 0, never faster away than 5 m/s2 nor
 * braking harder than 9 m/s2. Marks what it changed with `flag` and returns how many seconds that were.
 */
export function holdToCar(speed_mps: Float64Array, flags: Uint8Array, flag: number): number {
  const n = speed_mps.length;
  let changed = 0;
  const hold = (i: number, limit_mps: number) => {
    if (speed_mps[i] > limit_mps + 1e-9) {
      speed_mps[i] = limit_mps;
      changed += (flags[i] & flag) === 0 ? 1 : 0;
      flags[i] |= flag;
    }
  };
  for (let i = 0; i < n; i++) {
    speed_mps[i] = Math.max(0, speed_mps[i]);
  }
  for (let i = 1; i < n; i++) {
    hold(i, speed_mps[i - 1] + AWAY_mps2);
  }
  for (let i = n - 2; i >= 0; i--) {
    hold(i, speed_mps[i + 1] + BRAKES_mps2);
  }
  return changed;
}
