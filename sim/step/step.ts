import { narrowBracket } from "../math/bracketedRoot.ts";
import { balance, excess_Nm } from "./balance.ts";
import { beginInterval } from "./beginInterval.ts";
import { MOTOR, NONE } from "./limits.ts";
import type { RunContext } from "./runContext.ts";
import { solveElectrical } from "./solveElectrical.ts";

/** Speed to which a held-back car's end speed is found. */
const SPEED_TOLERANCE_mps = 1e-12;
const TIME_TOLERANCE_s = 1e-12;
/** Below this a car that cannot start counts as standing. */
const CREEP_mps = 1e-6;

/**
 * Works out one interval of `dt_s` towards a target speed and leaves it in `context.interval`; `finishInterval` moves the state on.
 *
 * The car ends at the target where it can. Where it cannot, it ends at the speed at which the same balance holds with the first limit
 * just met. Where even stopping asks more than the limits (a hill, a weak motor), it stops inside the interval after `moving_s`
 * and the brakes hold it for the rest. The gear goes by the mean of the speed now and `gearBy_mps`, the target where it is not given.
 */
export function step(context: RunContext, target_mps: number, dt_s: number, gearBy_mps = target_mps): void {
  const { model, state, start, interval } = context;
  beginInterval(context, gearBy_mps, dt_s);
  if (state.speed_mps === 0 && target_mps === 0) {
    standStill(context);
    return;
  }
  const goal_mps = Math.min(target_mps, model.gears[start.gear].top_mps);
  const over_Nm = balance(context, goal_mps, dt_s);
  if (over_Nm <= 0) {
    interval.limit = goal_mps < target_mps ? MOTOR : NONE;
    return;
  }
  const slowest_mps = state.speed_mps > 0 ? 0 : CREEP_mps;
  const guess_mps = goal_mps - slowedByInertia_mps(context, over_Nm);
  context.scratch.heldBy = interval.limit;
  if (guess_mps > slowest_mps) {
    const guess_Nm = overAtSpeed_Nm(context, guess_mps);
    if (guess_Nm <= 0) {
      driveHeldBack(context, guess_mps, goal_mps, guess_Nm, over_Nm);
      return;
    }
  }
  const slowest_Nm = goal_mps > slowest_mps ? excess_Nm(context, slowest_mps, dt_s) : over_Nm;
  if (slowest_Nm <= 0) {
    driveHeldBack(context, slowest_mps, goal_mps, slowest_Nm, over_Nm);
  } else if (state.speed_mps === 0) {
    // What keeps it from even creeping, not what it would meet first on the way to the target.
    const { limit } = interval;
    standStill(context);
    interval.limit = limit;
  } else {
    stopInside(context, slowest_Nm);
  }
}

/** Standing still for the whole interval: nothing turns, the accessories go on. */
export function standStill(context: RunContext): void {
  const { interval } = context;
  interval.moving_s = 0;
  interval.end_mps = 0;
  interval.mean_mps = 0;
  interval.accel_mps2 = 0;
  interval.distance_m = 0;
  interval.sinSlope = 0;
  interval.cosSlope = 1;
  interval.drag_N = 0;
  interval.rolling_N = 0;
  interval.climb_N = 0;
  interval.inertia_N = 0;
  interval.wheel_N = 0;
  interval.driveline_N = 0;
  interval.brake_N = 0;
  interval.motor_radps = 0;
  interval.rotor_Nm = 0;
  interval.limit = NONE;
  solveElectrical(context, 0);
}

/**
 * By how much slower the interval ends with so much less torque at the motor, by inertia alone, in m/s. Where torque is what holds the car
 * back, that leads to the end speed within a few per cent of the way; where power does, to one that the car surely reaches, and the search
 * between the two is short.
 */
function slowedByInertia_mps({ model, start }: RunContext, torque_Nm: number): number {
  const { motor_radpm, efficiency_frac } = model.gears[start.gear];
  // What it takes of torque and time for each metre a second.
  const wheels_Nms = model.inertia_kg / (motor_radpm * efficiency_frac);
  const rotor_Nms = model.motor.rotorInertia_kgm2 * motor_radpm;
  return (torque_Nm * start.dt_s) / (wheels_Nms + rotor_Nms);
}

/** Ends the interval at the speed at which the first limit is just met, between one that the car reaches and one that it does not. */
function driveHeldBack(context: RunContext, low_mps: number, high_mps: number, low_Nm: number, high_Nm: number): void {
  const { interval, start, scratch } = context;
  const { speedBracket } = scratch;
  speedBracket.low = low_mps;
  speedBracket.high = high_mps;
  narrowBracket(overAtSpeed_Nm, context, speedBracket, low_Nm, high_Nm, SPEED_TOLERANCE_mps);
  if (interval.end_mps !== speedBracket.low) balance(context, speedBracket.low, start.dt_s);
  interval.limit = scratch.heldBy;
}

/** Ends the interval at rest after the longest time under way that the limits allow; `slowest_Nm` is what taking all of it breaks. */
function stopInside(context: RunContext, slowest_Nm: number): void {
  const { interval, start } = context;
  const { limit } = interval;
  const { speedBracket } = context.scratch;
  speedBracket.low = TIME_TOLERANCE_s;
  speedBracket.high = start.dt_s;
  const shortest_Nm = overAtStop_Nm(context, TIME_TOLERANCE_s);
  narrowBracket(overAtStop_Nm, context, speedBracket, shortest_Nm, slowest_Nm, TIME_TOLERANCE_s);
  balance(context, 0, speedBracket.low);
  interval.limit = limit;
}

/** The balance at an end speed; which limit the last try broke that broke one is kept. */
function overAtSpeed_Nm(context: RunContext, end_mps: number): number {
  const over_Nm = excess_Nm(context, end_mps, context.start.dt_s);
  if (over_Nm > 0) context.scratch.heldBy = context.interval.limit;
  return over_Nm;
}

function overAtStop_Nm(context: RunContext, moving_s: number): number {
  return excess_Nm(context, 0, moving_s);
}
