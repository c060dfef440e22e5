import type { Grip } from "../../vehicle/grip.ts";
import { gripForce_N } from "../../vehicle/grip.ts";

/** A surface, and the friction its tyres find there. */
export interface Surface {
  readonly name: string;
  readonly grip_coeff: number;
}

/** Common practice, no source; loose is gravel or wet grass. */
export const surfaces: readonly Surface[] = [
  { name: "dry", grip_coeff: 0.8 },
  { name: "wet", grip_coeff: 0.5 },
  { name: "loose", grip_coeff: 0.3 },
];

/** What a start on a hill asks of the tyres with one axle or both driven. */
export interface GripRow {
  readonly drivenAxle: Grip["drivenAxle"];
  /** Friction that the driven tyres need to begin to roll. */
  readonly needed_coeff: number;
  /** Friction at hand beyond that, as a share of what is needed, by surface; negative where it does not start. */
  readonly reserve_frac: Readonly<Record<string, number>>;
}

/**
 * The friction that a start on a slope needs at the driven tyres, by driven axle: the force up the slope over the load on that axle,
 * with the load that the slope moves to the rear.
 *
 *   mu = F / N,  N_rear = m g (cos θ a/L + sin θ h/L)        [Gillespie1992, ch. 1 and 2]
 */
export function gripOnHill(grip: Grip, frontShare_frac: number, force_N: number, sinSlope: number): GripRow[] {
  const cosSlope = Math.sqrt(1 - sinSlope * sinSlope);
  return (["rear", "front", "both"] as const).map((drivenAxle) => {
    const drivenShare_frac = drivenAxle === "front" ? frontShare_frac : 1 - frontShare_frac;
    const load_N = gripForce_N({ ...grip, drivenAxle, drivenShare_frac, grip_coeff: 1 }, 0, sinSlope, cosSlope);
    // Infinite where the slope takes all load off the axle.
    const needed_coeff = force_N / load_N;
    const reserve = surfaces.map(({ name, grip_coeff }) => [name, grip_coeff / needed_coeff - 1] as const);
    return { drivenAxle, needed_coeff, reserve_frac: Object.fromEntries(reserve) };
  });
}
