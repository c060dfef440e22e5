import type { Job } from "../../shared/job/job.ts";

/** Where the weight sits over the axles and what the tyres hold. */
export interface Grip {
  readonly grip_coeff: number;
  readonly drivenAxle: "front" | "rear" | "both";
  /** Share of the weight on the driven axle on level ground at rest. */
  readonly drivenShare_frac: number;
  /** Height of the centre of gravity over the wheelbase: how much weight moves back for each g of acceleration. */
  readonly transfer_ratio: number;
  readonly mass_kg: number;
  readonly gravity_mps2: number;
}

/**
 * Greatest force the driven tyres pass either way, in newtons, not negative.
 *
 *   N_rear = m g cos θ (a/L) + (h/L) m (dv/dt + g sin θ);  N_front the same with the transfer taken off;  F = μ N
 *                                                                       [Gillespie1992, ch. 1 and 2] [Wong2008, ch. 3]
 *
 * Air lift and the pull of a trailer on the hitch are left out. With both axles driven all of the weight counts.
 */
export function gripForce_N(grip: Grip, accel_mps2: number, sinSlope: number, cosSlope: number): number {
  const { gravity_mps2 } = grip;
  const still_mps2 = gravity_mps2 * cosSlope * grip.drivenShare_frac;
  const moved_mps2 = grip.transfer_ratio * (accel_mps2 + gravity_mps2 * sinSlope);
  const load_mps2 =
    grip.drivenAxle === "both"
      ? gravity_mps2 * cosSlope
      : grip.drivenAxle === "rear"
        ? still_mps2 + moved_mps2
        : still_mps2 - moved_mps2;
  return Math.max(0, grip.grip_coeff * grip.mass_kg * load_mps2);
}

/** Grip of a job's car at a mass, or nothing where the job leaves open where its weight sits. */
export function prepareGrip(job: Job, mass_kg: number, drivenAxle: Grip["drivenAxle"]): Grip | undefined {
  const { balance } = job.vehicle;
  if (balance === undefined) return undefined;
  return {
    grip_coeff: job.environment.grip_coeff,
    drivenAxle,
    drivenShare_frac: drivenAxle === "front" ? balance.frontShare_frac : 1 - balance.frontShare_frac,
    transfer_ratio: balance.gravityHeight_mm / balance.wheelbase_mm,
    mass_kg,
    gravity_mps2: job.environment.gravity_mps2,
  };
}
