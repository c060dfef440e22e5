import { MPS_PER_KMH } from "../../../../shared/units.ts";

/** Speeds at which the spread of acceleration is given: middles of bands 4 m/s wide, the last of all that is faster. */
const AT_mps = [2, 6, 10, 14, 18, 22, 26];

/**
 * Standard deviation of acceleration while moving, by speed: for each band the median over the published cycles UDDS, NYCC, HWFET,
 * US06 and WLTC class 3b of the root mean square within it, over rows 1 s apart (of cycles with five of them or more). Computed from the cycles
 * on board; a test does it again. The last is held at that of the band before: by the cycles it is 0.20, but HWFET and UDDS hold
 * their highest speeds as few motorways let a driver do (assumed).
 */
export const cycleAccelerations_mps2: readonly number[] = [0.95, 1.01, 0.79, 0.54, 0.41, 0.25, 0.25];

/**
 * Time constant of the acceleration: its autocorrelation goes as (1 + t/T) exp(-t/T), which at 1, 2, 4 and 6 s is 0.91, 0.74, 0.41 and 0.20
 * with T = 2 s; that of UDDS is 0.90, 0.77, 0.51 and 0.27, that of WLTC class 3b 0.91, 0.74, 0.39 and 0.15.
 */
export const ACCELERATION_LASTS_s = 2;

/**
 * Slower than this a car stands: the rules on emissions in real driving count as stop periods what is under 1 km/h [EU2016-427, Annex IIIA,
 * point 6.8]. A stop is one such time, however short, with driving on both sides.
 */
export const STANDING_BELOW_mps = MPS_PER_KMH;

/** A standstill lasts this long on average, from moving to moving: over the stops of UDDS, NYCC, HWFET, US06 and WLTC class 3b. */
export const STANDSTILL_s = 18;

/** Spread of acceleration at a speed, straight between the bands, in m/s2; as all cycles are driven unless the bands of one are given. */
export function usualAcceleration_mps2(speed_mps: number, bands_mps2 = cycleAccelerations_mps2): number {
  const last = AT_mps.length - 1;
  if (!(speed_mps > AT_mps[0])) return bands_mps2[0];
  if (speed_mps >= AT_mps[last]) return bands_mps2[last];
  let i = 0;
  while (speed_mps > AT_mps[i + 1]) i++;
  const share = (speed_mps - AT_mps[i]) / (AT_mps[i + 1] - AT_mps[i]);
  return bands_mps2[i] + share * (bands_mps2[i + 1] - bands_mps2[i]);
}
