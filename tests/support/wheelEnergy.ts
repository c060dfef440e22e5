/** A car invented for these tests: the coefficients of a mid-sized one. */
export const testCar = { mass_kg: 1500, f0_N: 140, f1_Npmps: 1.8, f2_Npmps2: 0.42 };

/**
 * Positive energy at the wheel over a drive at even steps of 1 s, in J per m [GTR15, Annex 7, para 5]:
 * F = f0 + f1 v + f2 v^2 + 1.03 m a at the mean speed of the step, E = sum of F d where F > 0.
 * With a height, m g dh is added to the step's energy before its sign is looked at.
 */
export function wheelEnergy_Jpm(speed_mps: ArrayLike<number>, elevation_m?: ArrayLike<number>): number {
  const { mass_kg, f0_N, f1_Npmps, f2_Npmps2 } = testCar;
  let energy_J = 0;
  let distance_m = 0;
  for (let i = 1; i < speed_mps.length; i++) {
    const mean_mps = 0.5 * (speed_mps[i] + speed_mps[i - 1]);
    const accel_mps2 = speed_mps[i] - speed_mps[i - 1];
    const climb_J = elevation_m ? mass_kg * 9.81 * (elevation_m[i] - elevation_m[i - 1]) : 0;
    const rolling_N = mean_mps > 0 ? f0_N : 0;
    const force_N = rolling_N + f1_Npmps * mean_mps + f2_Npmps2 * mean_mps * mean_mps + 1.03 * mass_kg * accel_mps2;
    energy_J += Math.max(0, force_N * mean_mps + climb_J);
    distance_m += mean_mps;
  }
  return energy_J / distance_m;
}
