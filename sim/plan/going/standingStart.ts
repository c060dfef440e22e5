import { MPS_PER_KMH } from "../../../shared/units.ts";
import { finishInterval } from "../../step/finishInterval.ts";
import type { Model } from "../../step/model.ts";
import { createRunContext } from "../../step/runContext.ts";
import { step } from "../../step/step.ts";
import { createTotals } from "../../step/totals.ts";

/** A start from rest at full throttle on the level, one row a step. */
export interface StandingStart {
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  readonly distance_m: Float64Array;
  /** Index of the gear in which a row's step was driven. */
  readonly gear: Uint8Array;
}

/** A start by the motor: what held each step back, an index into LIMITS. */
export interface MotorStart extends StandingStart {
  readonly limit: Uint8Array;
}

/** Faster than any car here; what it reaches is what its limits let it. */
const FLAT_OUT_mps = 400 * MPS_PER_KMH;

/**
 * Drives off at full throttle for `duration_s` at steps of `step_s`, torque rising from none to full over `ramp_s`.
 * The same step as on a trace, its target out of reach; gears are changed at the speeds the job says, each change leaving the wheels
 * without drive for `change_s` from the step after it.
 */
export function standingStart(
  model: Model,
  duration_s: number,
  step_s: number,
  ramp_s: number,
  startSoc_frac = model.pack.ceiling_frac,
  change_s = 0,
): MotorStart {
  const steps = Math.round(duration_s / step_s);
  const time_s = new Float64Array(steps + 1);
  const speed_mps = new Float64Array(steps + 1);
  const distance_m = new Float64Array(steps + 1);
  const gears = new Uint8Array(steps + 1);
  const limit = new Uint8Array(steps + 1);
  const context = createRunContext(model, startSoc_frac);
  const { state } = context;
  const totals = createTotals(state);
  let idleUntil_s = 0;
  for (let i = 1; i <= steps; i++) {
    const isChanging = (i - 0.5) * step_s < idleUntil_s;
    context.ramp_frac = isChanging ? 0 : Math.min(1, ((i - 0.5) * step_s) / ramp_s);
    const { gear } = state.gear;
    // A target out of reach says nothing of the gear: that goes by the speed the car has.
    step(context, FLAT_OUT_mps, step_s, state.speed_mps);
    // Under way or standing, it does so for all of the step: nothing stops it inside.
    finishInterval(context, totals, step_s);
    if (state.gear.gear !== gear) idleUntil_s = i * step_s + change_s;
    time_s[i] = i * step_s;
    speed_mps[i] = state.speed_mps;
    distance_m[i] = state.distance_m;
    gears[i] = context.start.gear;
    limit[i] = context.interval.limit;
  }
  return { time_s, speed_mps, distance_m, gear: gears, limit };
}

/** Time to a speed in a standing start, in seconds, between two steps by a straight line; nothing where it is not reached. */
export function timeTo_s(start: Pick<StandingStart, "time_s" | "speed_mps">, wanted_mps: number): number | undefined {
  const { time_s, speed_mps } = start;
  const i = speed_mps.findIndex((speed) => speed >= wanted_mps);
  if (i < 0) return undefined;
  if (i === 0) return 0;
  const part = (wanted_mps - speed_mps[i - 1]) / (speed_mps[i] - speed_mps[i - 1]);
  return time_s[i - 1] + part * (time_s[i] - time_s[i - 1]);
}
