import { narrowBracket } from "../math/bracketedRoot.ts";
import { balance } from "./balance.ts";
import { beginInterval } from "./beginInterval.ts";
import { settle } from "./settle.ts";
import type { Work } from "./state.ts";

/** Speed to which a held-back car's end speed is found. */
const SPEED_TOLERANCE_mps = 1e-12;
const TIME_TOLERANCE_s = 1e-12;
/** Below this a car that cannot start counts as standing: the slope of a stretch of no length has no meaning. */
const CREEP_mps = 1e-6;
const MOTOR_LIMIT = 3;

/**
 * Works out one interval of `dt_s` towards a target speed and leaves it in `work.interval`; the state is moved on by `book`.
 *
 * The car ends at the target where it can. Where it cannot, it ends at the speed at which the same balance holds with the first limit
 * just met. Where even stopping asks more than the limits (a hill, a weak motor), it stops inside the interval after `moving_s`
 * and the brakes hold it for the rest. The gear goes by the mean of the speed now and `gearBy_mps`, the target where it is not given.
 */
export function step(work: Work, target_mps: number, dt_s: number, gearBy_mps = target_mps): void {
  const { model, state, interval } = work;
  beginInterval(model, state, interval, gearBy_mps, dt_s);
  if (state.speed_mps === 0 && target_mps === 0) {
    stand(work);
    return;
  }
  const goal_mps = Math.min(target_mps, model.gears[interval.gear].top_mps);
  const over_Nm = balance(work, goal_mps, dt_s);
  if (over_Nm <= 0) {
    interval.limit = goal_mps < target_mps ? MOTOR_LIMIT : 0;
    return;
  }

  const slowest_mps = state.speed_mps > 0 ? 0 : CREEP_mps;
  const slowest_Nm = goal_mps > slowest_mps ? balance(work, slowest_mps, dt_s) : over_Nm;
  const { speedBracket } = work;
  if (slowest_Nm <= 0) {
    speedBracket.low = slowest_mps;
    speedBracket.high = goal_mps;
    narrowBracket(overAtSpeed_Nm, work, speedBracket, slowest_Nm, over_Nm, SPEED_TOLERANCE_mps);
    balance(work, speedBracket.high, dt_s);
    const limit = interval.limit;
    balance(work, speedBracket.low, dt_s);
    interval.limit = limit;
  } else if (state.speed_mps === 0) {
    // What keeps it from even creeping, not what it would meet first on the way to the target.
    const limit = interval.limit;
    stand(work);
    interval.limit = limit;
  } else {
    const limit = interval.limit;
    speedBracket.low = TIME_TOLERANCE_s;
    speedBracket.high = dt_s;
    narrowBracket(
      overAtStop_Nm,
      work,
      speedBracket,
      overAtStop_Nm(work, TIME_TOLERANCE_s),
      slowest_Nm,
      TIME_TOLERANCE_s,
    );
    balance(work, 0, speedBracket.low);
    interval.limit = limit;
  }
}

/** Standing still for the whole interval: nothing turns, the accessories go on. */
export function stand(work: Work): void {
  const { model, state, interval } = work;
  interval.moving_s = 0;
  interval.end_mps = 0;
  interval.mean_mps = 0;
  interval.distance_m = 0;
  interval.endElevation_m = state.elevation_m;
  interval.sinSlope = 0;
  interval.drag_N = 0;
  interval.rolling_N = 0;
  interval.climb_N = 0;
  interval.inertia_N = 0;
  interval.wheel_N = 0;
  interval.driveline_N = 0;
  interval.brake_N = 0;
  interval.motor_radps = 0;
  interval.rotor_Nm = 0;
  interval.limit = 0;
  settle(model, interval, 0);
}

function overAtSpeed_Nm(work: Work, end_mps: number): number {
  return balance(work, end_mps, work.interval.dt_s);
}

function overAtStop_Nm(work: Work, moving_s: number): number {
  return balance(work, 0, moving_s);
}
