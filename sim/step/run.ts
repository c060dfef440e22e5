import { MPS_PER_KMH } from "../../shared/units.ts";
import type { Trace } from "../trace/trace.ts";
import { type Channels, createChannels } from "./channels.ts";
import { driveFreely } from "./driveFreely.ts";
import { elevationAt_m, legAt } from "./elevation.ts";
import { finishInterval } from "./finishInterval.ts";
import type { Model } from "./model.ts";
import { addToRow, beginRow, recordRow, recordStart } from "./record.ts";
import { beginRoad, createRunContext, type RunContext } from "./runContext.ts";
import { standStill, step } from "./step.ts";
import { stepsIn } from "./stepsIn.ts";
import { checkLedger, createTotals, type Totals } from "./totals.ts";

/** Where a car may have fallen behind its trace before a person would notice. */
export const BEHIND_mps = 2 * MPS_PER_KMH;

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
  const context = createRunContext(model, startSoc_frac);
  const totals = createTotals(context.state);
  pass(context, totals, trace, channels);
  checkLedger(totals.ledger);
  return { totals, endSoc_frac: context.state.pack.soc_frac };
}

/** One pass from the ceiling, each step of it. */
export function recorded(model: Model, trace: Trace): Channels {
  const channels = createChannels(trace.time_s.length);
  run(model, trace, channels);
  return channels;
}

/**
 * One pass over a trace, going on from the state as it stands but from the beginning of the road. Ends early at the floor.
 * Samples more than 1 s apart are driven in equal steps of at most 1 s, the target on the straight line between them.
 * The target distance of what was not driven is counted all the same: it is missed.
 */
export function pass(context: RunContext, totals: Totals, trace: Trace, channels?: Channels): void {
  const { time_s, speed_mps } = trace;
  const { state } = context;
  beginRoad(context, trace.profile, speed_mps[0]);
  if (channels) recordStart(channels, context, trace);
  const n = time_s.length;
  for (let i = 1; i < n; i++) {
    if (!channels && !totals.reachedFloor) i = driveFreely(context, totals, trace, i);
    if (i === n) return;
    const dt_s = time_s[i] - time_s[i - 1];
    const from_mps = speed_mps[i - 1];
    const to_mps = speed_mps[i];
    totals.target_m += 0.5 * (from_mps + to_mps) * dt_s;
    if (totals.reachedFloor) continue;
    if (channels) beginRow(context.scratch.row);
    const steps = stepsIn(dt_s, from_mps, to_mps);
    for (let k = 1; k <= steps && !totals.reachedFloor; k++) {
      const target_mps = k === steps ? to_mps : from_mps + ((to_mps - from_mps) * k) / steps;
      driveStep(context, totals, target_mps, dt_s / steps, channels !== undefined);
      if (target_mps - state.speed_mps > BEHIND_mps) totals.behind_s += dt_s / steps;
    }
    if (channels) recordRow(channels, context, i, totals.time_s, to_mps);
  }
}

/** One step: what is under way of it, and what is left of it at rest where the car stops inside. */
function driveStep(context: RunContext, totals: Totals, target_mps: number, dt_s: number, isRecorded: boolean): void {
  const { state, interval } = context;
  const { row } = context.scratch;
  step(context, target_mps, dt_s);
  const { moving_s, limit } = interval;
  if (moving_s > 0) {
    finishInterval(context, totals, moving_s);
    if (isRecorded) addToRow(row, interval);
  }
  if (moving_s < dt_s && !totals.reachedFloor) {
    standStill(context);
    interval.limit = limit;
    finishInterval(context, totals, dt_s - moving_s);
    if (isRecorded) addToRow(row, interval);
  }
  if (context.profile !== undefined) {
    state.leg = legAt(context.profile, state.distance_m, state.leg);
    state.elevation_m = elevationAt_m(context.profile, state.distance_m, state.leg);
  }
}
