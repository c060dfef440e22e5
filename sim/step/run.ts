import { lookUp } from "../math/uniformTable.ts";
import type { Trace } from "../trace/trace.ts";
import { book } from "./book.ts";
import type { Channels } from "./channels.ts";
import { elevationAt_m, stretchAt } from "./elevation.ts";
import type { Model } from "./model.ts";
import { beginRoad, createWork, type Work } from "./state.ts";
import { stand, step } from "./step.ts";
import { checkLedger, createTotals, type Totals } from "./totals.ts";

/** Where a car may have fallen behind its trace before a person would notice. */
export const BEHIND_mps = 2 / 3.6;

/** A run's totals and the state it ended in. */
export interface RunResult {
  readonly totals: Totals;
  readonly endSoc_frac: number;
}

/**
 * Drives one prepared car once over a trace, from a state of charge (the pack's ceiling where none is given), and records every step
 * into `channels` where they are given (as many rows as the trace has samples, or more).
 *
 * A target is a speed at a time: a car that fell behind does not race to catch up. A pass that meets the floor ends there.
 * Throws where the ledger does not close: that is an error of ours.
 */
export function run(
  model: Model,
  trace: Trace,
  channels?: Channels,
  startSoc_frac = model.pack.ceiling_frac,
): RunResult {
  const work = createWork(model, startSoc_frac);
  const totals = createTotals(startSoc_frac, work.state.motor_K, work.state.pack_K);
  pass(work, totals, trace, channels);
  checkLedger(totals.ledger);
  return { totals, endSoc_frac: work.state.soc_frac };
}

/**
 * One pass over a trace, going on from the state as it stands but from the beginning of the road. Ends early at the floor.
 * The target distance of what was not driven is counted all the same: it is missed.
 */
export function pass(work: Work, totals: Totals, trace: Trace, channels?: Channels): void {
  const { time_s, speed_mps } = trace;
  const { state, interval } = work;
  beginRoad(work, trace.profile, speed_mps[0]);
  if (channels) recordStart(channels, work, trace);
  const n = time_s.length;
  for (let i = 1; i < n; i++) {
    const dt_s = time_s[i] - time_s[i - 1];
    const target_mps = speed_mps[i];
    totals.target_m += 0.5 * (speed_mps[i - 1] + target_mps) * dt_s;
    if (totals.reachedFloor) continue;
    const startSoc_frac = state.soc_frac;
    step(work, target_mps, dt_s);
    const { moving_s, limit } = interval;
    const isStopped = moving_s < dt_s;
    if (channels) recordInterval(channels, work, i);
    if (moving_s > 0) book(work, totals, moving_s);
    if (isStopped && !totals.reachedFloor) {
      stand(work);
      interval.limit = limit;
      book(work, totals, dt_s - moving_s);
    }
    if (work.profile !== undefined) {
      state.stretch = stretchAt(work.profile, state.distance_m, state.stretch);
      state.elevation_m = elevationAt_m(work.profile, state.distance_m, state.stretch);
    }
    if (target_mps - state.speed_mps > BEHIND_mps) totals.behind_s += dt_s;
    if (channels) recordEnd(channels, work, i, totals.time_s, target_mps, startSoc_frac, dt_s);
  }
}

function recordStart(out: Channels, work: Work, trace: Trace): void {
  const { state } = work;
  out.length = 1;
  out.time_s[0] = 0;
  out.distance_m[0] = 0;
  out.target_mps[0] = trace.speed_mps[0];
  out.speed_mps[0] = state.speed_mps;
  out.elevation_m[0] = state.elevation_m;
  out.battery_V[0] = lookUp(work.model.pack.openCircuit_V, state.soc_frac);
  out.soc_frac[0] = state.soc_frac;
  out.motor_K[0] = state.motor_K;
  out.pack_K[0] = state.pack_K;
}

/** Forces, torques and powers of the interval: those while under way, where the car stopped inside it. */
function recordInterval(out: Channels, work: Work, i: number): void {
  const { interval } = work;
  const { sinSlope } = interval;
  out.grade_ratio[i] = sinSlope / Math.sqrt(1 - sinSlope * sinSlope);
  out.wheelForce_N[i] = interval.wheel_N;
  out.brakeForce_N[i] = interval.brake_N;
  out.gear[i] = interval.gear;
  out.motorSpeed_radps[i] = interval.motor_radps;
  out.motorTorque_Nm[i] = interval.motor_Nm;
  out.motorLoss_W[i] = interval.loss_W;
  out.controller_W[i] = interval.controller_W;
  out.battery_V[i] = interval.terminal_V;
  out.limit[i] = interval.limit;
}

function recordEnd(
  out: Channels,
  work: Work,
  i: number,
  time_s: number,
  target_mps: number,
  startSoc_frac: number,
  dt_s: number,
): void {
  const { state, model } = work;
  out.length = i + 1;
  out.time_s[i] = time_s;
  out.distance_m[i] = state.distance_m;
  out.target_mps[i] = target_mps;
  out.speed_mps[i] = state.speed_mps;
  out.elevation_m[i] = state.elevation_m;
  // Over the whole interval, rest after a stop included.
  out.battery_A[i] = ((startSoc_frac - state.soc_frac) * model.pack.capacity_C) / dt_s;
  out.soc_frac[i] = state.soc_frac;
  out.motor_K[i] = state.motor_K;
  out.pack_K[i] = state.pack_K;
}
