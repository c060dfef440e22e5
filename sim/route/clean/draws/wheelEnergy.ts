import { STANDARD_GRAVITY_mps2 } from "../../../../shared/units.ts";
import type { RoadLoadTerms } from "../report/spread.ts";

/** A classic saloon, invented: what is taken where no car is given. */
export const usualRoadLoad: RoadLoadTerms = { mass_kg: 1200, f0_N: 145, f1_Npmps: 0, f2_Npmps2: 0.48 };

/** Wheels and rotor turn too: 3 % on the mass, as for the cycle energy demand of passenger cars [GTR15, Annex 7, para 5]. */
const ROTATING_ratio = 1.03;

/** Positive energy at the wheel over one second from one speed to the next and `rise_m` up, in J [GTR15, Annex 7, para 5]. */
export function wheelEnergy_J(load: RoadLoadTerms, from_mps: number, to_mps: number, rise_m: number): number {
  const mean_mps = 0.5 * (from_mps + to_mps);
  if (mean_mps === 0) return 0;
  const road_N = load.f0_N + load.f1_Npmps * mean_mps + load.f2_Npmps2 * mean_mps * mean_mps;
  const inertia_N = ROTATING_ratio * load.mass_kg * (to_mps - from_mps);
  return Math.max(0, (road_N + inertia_N) * mean_mps + load.mass_kg * STANDARD_GRAVITY_mps2 * rise_m);
}
