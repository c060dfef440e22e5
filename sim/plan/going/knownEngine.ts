import { engineRatings, type TorqueCurve } from "../../../shared/job/engineRatings.ts";
import type { Job } from "../../../shared/job/job.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import { straightAt } from "../../math/straightAt.ts";
import { type EngineRating, engineCurve, ratingProblems } from "./engineCurve.ts";

/** Torque at the speed of best power, as a share of the best torque; speed of best torque as a share of that of best power. */
const LAST_frac = 0.8;
const BEST_frac = 0.55;
/** The power at best torque stays below the best power by this. */
const BELOW_frac = 0.98;

/** An old engine with its full-throttle torque over its speed, from the lowest that it is driven at to the highest. */
export interface OldEngine {
  readonly rating: EngineRating;
  readonly curve: TorqueCurve;
  /** The curve is as typed; otherwise drawn through the rated figures (`engineCurve`). */
  readonly isTyped: boolean;
}

/** An old engine as far as it is known: its curve and rating, completed where figures were missing, or what to type. */
export interface KnownEngine {
  /** Absent where too little is known for a curve. */
  readonly engine?: OldEngine;
  /** Figures of the rating that were not typed and do not follow from a typed curve: `power_rpm`. */
  readonly assumed: readonly (keyof EngineRating)[];
  /** Paths in the job of what a curve still wants; empty where there is one. */
  readonly missing: readonly string[];
}

/**
 * What is known of the engine that came out: the one judgement of it, for the page and for the pace.
 *
 * A curve as typed is taken as it is, and its best torque and power are the ratings that were not typed. Without one, the curve is drawn
 * through four ratings, those that were not typed by a rule. Common practice, no source: at the speed of best power n2 it gives
 * 0.8 of its best torque, P = 0.8 T n2, and best torque lies at 0.55 n2. Two figures are enough: best power, and best torque or n2.
 */
export function knownEngine(engine: Job["engine"]): KnownEngine {
  return engine?.curve ? { engine: typedEngine(engine, engine.curve), assumed: [], missing: [] } : completed(engine);
}

/** An engine whose four ratings are known, with the curve drawn through them. */
export function drawnEngine(rating: EngineRating): OldEngine {
  const { speed_rpm, torque_Nm } = engineCurve(rating);
  return { rating, curve: { speed_rpm, torque_Nm }, isTyped: false };
}

function typedEngine(engine: NonNullable<Job["engine"]>, curve: TorqueCurve): OldEngine {
  const { ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm, idle_rpm, limit_rpm } = engine;
  const best = engineRatings(curve);
  const rating: EngineRating = {
    ratedTorque_Nm: ratedTorque_Nm ?? best.ratedTorque_Nm,
    torque_rpm: torque_rpm ?? best.torque_rpm,
    ratedPower_kW: ratedPower_kW ?? best.ratedPower_kW,
    power_rpm: power_rpm ?? best.power_rpm,
    idle_rpm,
    limit_rpm,
  };
  return { rating, curve: between(curve, idle_rpm, limit_rpm), isTyped: true };
}

/** The part of a curve between idle and limit, as far as it goes: nothing is made up beyond its ends. */
function between(
  { speed_rpm, torque_Nm }: TorqueCurve,
  idle_rpm = 0,
  limit_rpm = Number.POSITIVE_INFINITY,
): TorqueCurve {
  const from_rpm = Math.max(speed_rpm[0], idle_rpm);
  const to_rpm = Math.min(speed_rpm[speed_rpm.length - 1], limit_rpm);
  const within = speed_rpm.filter((speed) => speed > from_rpm && speed < to_rpm);
  const speeds_rpm = [from_rpm, ...within, to_rpm];
  return { speed_rpm: speeds_rpm, torque_Nm: speeds_rpm.map((speed) => straightAt(speed_rpm, torque_Nm, speed)) };
}

function completed(engine: Job["engine"]): KnownEngine {
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
  if (ratingProblems(rating).length === 0) return { engine: drawnEngine(rating), assumed, missing: [] };
  // What was typed is no contradiction, its reader saw to that: what was assumed does not go with it.
  return { assumed: [], missing: assumed.map((key) => `engine.${key}`) };
}
