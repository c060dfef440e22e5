import { createPackLimits, type PackLimits } from "../battery/packLimits.ts";
import type { Bracket } from "../math/bracketedRoot.ts";
import { createHeatFactors, forgetFactors, type HeatFactors } from "../math/heatLump.ts";
import type { Profile } from "../trace/trace.ts";
import { elevationAt_m } from "./elevation.ts";
import { createInterval, type Interval } from "./interval.ts";
import type { Model } from "./model.ts";
import { createRow, type Row } from "./record.ts";
import { createState, resetState, type State } from "./state.ts";

/** What holds for a whole interval, set from the state at its start by `beginInterval`. */
export interface IntervalStart {
  dt_s: number;
  gear: number;
  /** What a heater with a thermostat asks for, and what all accessories do. */
  heater_W: number;
  wanted_W: number;
  /** Accessories as served: less than asked where the pack cannot feed even them. */
  accessories_W: number;
  /** Share of its torque that heat leaves the motor. */
  motorDerate_frac: number;
  readonly pack: PackLimits;
}

/** Memory for searches and sums, so that stepping allocates nothing. No result is read from here. */
export interface Scratch {
  readonly speedBracket: Bracket;
  readonly torqueBracket: Bracket;
  readonly motorHeat: HeatFactors;
  readonly packHeat: HeatFactors;
  readonly cabinHeat: HeatFactors;
  readonly row: Row;
  /** The limit that the last speed tried in vain broke. */
  heldBy: number;
}

/** One run: the car, the road, the state, the interval that is being driven. Two runs side by side share nothing. */
export interface RunContext {
  /** The car; another one only at the beginning of a road. */
  model: Model;
  /** Heights of the road that is being driven. */
  profile: Profile | undefined;
  readonly state: State;
  readonly start: IntervalStart;
  readonly interval: Interval;
  readonly scratch: Scratch;
  /** Share of the controller's torque let through, below 1 only while a standing start ramps up. */
  ramp_frac: number;
}

/** A car at rest, charged to `soc_frac`, that has yet to be put on a road. */
export function createRunContext(model: Model, soc_frac: number): RunContext {
  return {
    model,
    profile: undefined,
    state: createState(model, soc_frac),
    start: {
      dt_s: 0,
      gear: 0,
      heater_W: 0,
      wanted_W: 0,
      accessories_W: 0,
      motorDerate_frac: 1,
      pack: createPackLimits(),
    },
    interval: createInterval(),
    scratch: {
      speedBracket: { low: 0, high: 0 },
      torqueBracket: { low: 0, high: 0 },
      motorHeat: createHeatFactors(),
      packHeat: createHeatFactors(),
      cabinHeat: createHeatFactors(),
      row: createRow(),
      heldBy: 0,
    },
    ramp_frac: 1,
  };
}

/** The next run in the memory of the last: another car, or the same one, at rest and charged to `soc_frac`. Allocates nothing. */
export function beginRun(context: RunContext, model: Model, soc_frac: number): void {
  const { scratch } = context;
  context.model = model;
  context.ramp_frac = 1;
  resetState(context.state, model, soc_frac);
  forgetFactors(scratch.motorHeat);
  forgetFactors(scratch.packHeat);
  forgetFactors(scratch.cabinHeat);
}

/** Puts the car at the beginning of a road, charge and temperatures going on; at rest unless the trace begins in motion. */
export function beginRoad(context: RunContext, profile: Profile | undefined, speed_mps: number): void {
  const { state } = context;
  context.profile = profile;
  state.distance_m = 0;
  state.leg = 0;
  state.elevation_m = profile === undefined ? 0 : elevationAt_m(profile, 0, 0);
  state.speed_mps = speed_mps;
}

/** What of a heater's wish the pack serves: its share of all accessories. */
export function servedHeater_W({ heater_W, wanted_W, accessories_W }: IntervalStart): number {
  return accessories_W === wanted_W ? heater_W : (heater_W * accessories_W) / wanted_W;
}
