import type { Job } from "../../../shared/job/job.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import { type EngineRating, ratingProblems } from "./engineCurve.ts";

/** Torque at the speed of best power, as a share of the best torque; speed of best torque as a share of that of best power. */
const LAST_frac = 0.8;
const BEST_frac = 0.55;
/** The power at best torque stays below the best power by this. */
const BELOW_frac = 0.98;

/** An old engine as far as it is known: its rating, completed where figures were missing, or what to type. */
export interface KnownEngine {
  /** Absent where too little is known for a curve. */
  readonly rating?: EngineRating;
  /** Figures of the rating that were not typed: `power_rpm`. */
  readonly assumed: readonly (keyof EngineRating)[];
  /** Paths in the job of what a curve still wants; empty where there is one. */
  readonly missing: readonly string[];
}

/**
 * An engine's four ratings, those that were not typed by a rule. Common practice, no source: at the speed of best power n2 it gives
 * 0.8 of its best torque, P = 0.8 T n2, and best torque lies at 0.55 n2. Two figures are enough: best power, and best torque or n2.
 */
export function knownEngine(engine: Job["engine"]): KnownEngine {
  const { ratedTorque_Nm, ratedPower_kW, power_rpm, torque_rpm, idle_rpm, limit_rpm } = engine ?? {};
  const power_W = (ratedPower_kW ?? 0) * W_PER_KW;
  const best_rpm =
    power_rpm ?? (ratedTorque_Nm === undefined ? undefined : power_W / (LAST_frac * ratedTorque_Nm) / RADPS_PER_RPM);
  if (ratedPower_kW === undefined || best_rpm === undefined) {
    const wanted = [
      ...(ratedPower_kW === undefined ? ["engine.ratedPower_kW"] : []),
      ...(ratedTorque_Nm === undefined ? ["engine.ratedTorque_Nm"] : []),
    ];
    return { assumed: [], missing: wanted };
  }
  const most_Nm = ratedTorque_Nm ?? power_W / (LAST_frac * best_rpm * RADPS_PER_RPM);
  const turned_rpm = torque_rpm ?? Math.min(BEST_frac * best_rpm, (BELOW_frac * power_W) / (most_Nm * RADPS_PER_RPM));
  const rating: EngineRating = {
    ratedTorque_Nm: most_Nm,
    torque_rpm: turned_rpm,
    ratedPower_kW,
    power_rpm: best_rpm,
    idle_rpm,
    limit_rpm,
  };
  const typed = { ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm };
  const assumed = (Object.keys(typed) as (keyof typeof typed)[]).filter((key) => typed[key] === undefined);
  if (ratingProblems(rating).length === 0) return { rating, assumed, missing: [] };
  // What was typed is no contradiction, its reader saw to that: what was assumed does not go with it.
  return { assumed: [], missing: assumed.map((key) => `engine.${key}`) };
}
