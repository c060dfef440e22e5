import type { Bracket } from "../math/bracketedRoot.ts";
import { createHeatFactors, type HeatFactors } from "../math/heatLump.ts";
import type { Profile } from "../trace/trace.ts";
import { elevationAt_m } from "./elevation.ts";
import type { Model } from "./model.ts";
import { createRow, type Row } from "./record.ts";

/** What a car carries from one interval to the next. */
export interface State {
  speed_mps: number;
  distance_m: number;
  elevation_m: number;
  soc_frac: number;
  motor_K: number;
  pack_K: number;
  /** How much of the peak budgets is used up. */
  dischargeUse_A2s: number;
  chargeUse_A2s: number;
  /** The stretch of the height profile the car is on. */
  stretch: number;
}

/**
 * One interval being worked out: scratch space made once a run. The first group is set when the interval begins, the second by
 * `balance` each time it tries an end speed.
 */
export interface Interval {
  dt_s: number;
  gear: number;
  openCircuit_V: number;
  discharge_ohm: number;
  charge_ohm: number;
  /** Most the pack gives in this interval, and what it would give were it cool. */
  discharge_W: number;
  coolDischarge_W: number;
  /** Most the pack takes, as a number not above zero. */
  charge_W: number;
  /** Accessories as served: less than asked where the pack cannot feed even them. */
  accessories_W: number;
  motorDerate_frac: number;

  /** Time under way: shorter than the interval where the car stops inside it. */
  moving_s: number;
  end_mps: number;
  mean_mps: number;
  distance_m: number;
  endElevation_m: number;
  sinSlope: number;
  drag_N: number;
  rolling_N: number;
  climb_N: number;
  inertia_N: number;
  /** What the tyres pass to the road, brakes included; negative slows the car. */
  wheel_N: number;
  /** The part of it that comes through the driveline, and the part the friction brakes take (not above zero). */
  driveline_N: number;
  brake_N: number;
  motor_radps: number;
  rotor_Nm: number;
  motor_Nm: number;
  loss_W: number;
  controller_W: number;
  terminal_W: number;
  current_A: number;
  terminal_V: number;
  /** Which limit the tried end speed breaks first; index into LIMITS. */
  limit: number;
}

/** One run's surroundings and scratch space, made once, so that stepping allocates nothing. */
export interface Work {
  readonly model: Model;
  /** Heights of the road that is being driven. */
  profile: Profile | undefined;
  readonly state: State;
  readonly interval: Interval;
  readonly row: Row;
  readonly motorHeat: HeatFactors;
  readonly packHeat: HeatFactors;
  readonly speedBracket: Bracket;
  readonly torqueBracket: Bracket;
  /** Share of the controller's torque let through, below 1 only while a standing start ramps up. */
  ramp_frac: number;
}

/** A car at rest, charged to `soc_frac`, that has yet to be put on a road. */
export function createWork(model: Model, soc_frac: number): Work {
  return {
    model,
    profile: undefined,
    state: {
      speed_mps: 0,
      distance_m: 0,
      elevation_m: 0,
      soc_frac,
      motor_K: model.ambient_K,
      pack_K: model.packStart_K,
      dischargeUse_A2s: 0,
      chargeUse_A2s: 0,
      stretch: 0,
    },
    interval: createInterval(),
    row: createRow(),
    motorHeat: createHeatFactors(),
    packHeat: createHeatFactors(),
    speedBracket: { low: 0, high: 0 },
    torqueBracket: { low: 0, high: 0 },
    ramp_frac: 1,
  };
}

/** Puts the car at the beginning of a road, charge and temperatures going on; at rest unless the trace begins in motion. */
export function beginRoad(work: Work, profile: Profile | undefined, speed_mps: number): void {
  const { state } = work;
  work.profile = profile;
  state.distance_m = 0;
  state.stretch = 0;
  state.elevation_m = profile === undefined ? 0 : elevationAt_m(profile, 0, 0);
  state.speed_mps = speed_mps;
}

/** Scratch space, all nought until a step fills it. */
function createInterval(): Interval {
  return {
    dt_s: 0,
    gear: 0,
    openCircuit_V: 0,
    discharge_ohm: 0,
    charge_ohm: 0,
    discharge_W: 0,
    coolDischarge_W: 0,
    charge_W: 0,
    accessories_W: 0,
    motorDerate_frac: 1,
    moving_s: 0,
    end_mps: 0,
    mean_mps: 0,
    distance_m: 0,
    endElevation_m: 0,
    sinSlope: 0,
    drag_N: 0,
    rolling_N: 0,
    climb_N: 0,
    inertia_N: 0,
    wheel_N: 0,
    driveline_N: 0,
    brake_N: 0,
    motor_radps: 0,
    rotor_Nm: 0,
    motor_Nm: 0,
    loss_W: 0,
    controller_W: 0,
    terminal_W: 0,
    current_A: 0,
    terminal_V: 0,
    limit: 0,
  };
}
