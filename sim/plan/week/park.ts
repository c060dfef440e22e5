import type { Job } from "../../../shared/job/job.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import { J_PER_KWH, S_PER_H, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { createHeatFactors, type HeatLump, warmed_K } from "../../math/heatLump.ts";
import { resetGearState } from "../../step/chooseGear.ts";
import type { Model } from "../../step/model.ts";
import type { RunContext } from "../../step/runContext.ts";
import { cabinAtStart_K } from "../../vehicle/cabin.ts";
import { chargePack } from "../charging/chargePack.ts";
import { chargeSetting, neverCharged } from "../charging/chargeSetting.ts";
import { priceAt_perkWh } from "../charging/tariff.ts";
import type { Mark } from "./driveTrip.ts";
import type { Parking } from "./weekReport.ts";

/** A charge is worked out in pieces of so long, between which its cells warm and cool. */
const PIECE_s = 900;
/** Cells that take no current are asked again after so long. */
const WAIT_s = 300;
/** Rests shorter than this are rounding. */
const SHORT_s = 1e-3;
const HOURS_A_DAY = 24;

/** When the car is parked, in hours since Monday 0:00. */
export interface ParkTimes {
  readonly from_h: number;
  readonly to_h: number;
  /** From when to when the charger is on. */
  readonly plugged_h: readonly [from_h: number, to_h: number];
}

/**
 * Lets a car stand and charge, from the state as it is: cells, motor and cabin go towards what is around them, and the pack charges at
 * its supply between the times given, by `chargePack`, in pieces of a quarter of an hour. Cells that are too cold wait until they are not. At the usual place
 * of the job the cells stand as warm as the job says of the start, in a garage say; elsewhere in the air. A parked car draws nothing.
 */
export function park(
  context: RunContext,
  job: Job,
  supply: Supply | undefined,
  { from_h, to_h, plugged_h }: ParkTimes,
  mark: Mark,
): Parking {
  const { state, model } = context;
  const isUsualPlace = supply !== undefined && supply === job.supplies[0];
  const around_K = isUsualPlace ? model.packStart_K : model.ambient_K;
  const from_frac = state.pack.soc_frac;
  const start_h = Math.min(to_h, Math.max(from_h, plugged_h[0]));
  const end_h = Math.min(to_h, Math.max(start_h, plugged_h[1]));
  const sums = { wall_J: 0, cost: 0, given_J: 0, car_J: 0, stored_J: 0, waited_s: 0 };
  restPack(context, model.pack.heat, around_K, (start_h - from_h) * S_PER_H);
  mark(start_h, from_frac);
  let at_h = start_h;
  let isCold = false;
  const setting = supply && { ...chargeSetting(job, model.pack, supply), ambient_K: around_K };
  const stop = setting && neverCharged(setting, job);
  if (supply && setting && !stop) {
    for (let left_s = (end_h - start_h) * S_PER_H; left_s > SHORT_s; ) {
      const piece_s = Math.min(PIECE_s, left_s);
      const charge = chargePack(setting, state.pack.soc_frac, state.pack.temperature_K, piece_s);
      state.pack.soc_frac = charge.end_frac;
      state.pack.temperature_K = charge.end_K;
      sums.wall_J += charge.wall_J;
      const middle_h = (at_h + charge.time_s / S_PER_H / 2) % HOURS_A_DAY;
      sums.cost += (charge.wall_J / J_PER_KWH) * (priceAt_perkWh(supply, middle_h) ?? Number.NaN);
      sums.stored_J += charge.stored_J;
      sums.car_J += setting.carDraw_W * charge.time_s;
      sums.given_J += charge.terminal_J + setting.carDraw_W * charge.time_s;
      at_h += charge.time_s / S_PER_H;
      mark(at_h, charge.end_frac);
      if (charge.end === "full") break;
      const rest_s = Math.min(WAIT_s, piece_s - charge.time_s);
      if (rest_s > SHORT_s) {
        sums.waited_s += rest_s;
        isCold ||= state.pack.temperature_K <= model.pack.coldChargeFull_K;
        restPack(context, model.pack.heat, around_K, rest_s);
        at_h += rest_s / S_PER_H;
        mark(at_h, charge.end_frac);
      }
      left_s -= charge.time_s + Math.max(0, rest_s);
    }
  }
  restPack(context, model.pack.heat, around_K, (to_h - at_h) * S_PER_H);
  restCar(context, model, supply !== undefined, (to_h - from_h) * S_PER_H);
  mark(to_h, state.pack.soc_frac);
  return {
    from_h,
    to_h,
    ...(supply && { supply: supply.name }),
    from_frac,
    to_frac: state.pack.soc_frac,
    wall_kWh: sums.wall_J / J_PER_KWH,
    ...(!Number.isNaN(sums.cost) && { cost: sums.cost }),
    given_kWh: sums.given_J / J_PER_KWH,
    car_kWh: sums.car_J / J_PER_KWH,
    stored_kWh: sums.stored_J / J_PER_KWH,
    waited_h: sums.waited_s / S_PER_H,
    isCold,
    ...(stop && { stop }),
    pack_degC: state.pack.temperature_K - ZERO_CELSIUS_K,
  };
}

function restPack({ state }: RunContext, heat: HeatLump, around_K: number, time_s: number): void {
  if (time_s <= SHORT_s) return;
  state.pack.temperature_K = rested_K(heat, state.pack.temperature_K, around_K, time_s);
}

/** Motor and cabin after being parked; a cabin that is warmed from the socket is warm where there is one. Peak budgets are whole again. */
function restCar({ state }: RunContext, { motor, cabin, ambient_K }: Model, isAtSocket: boolean, time_s: number): void {
  state.motor_K = rested_K(motor.heat, state.motor_K, ambient_K, time_s);
  if (cabin)
    state.cabin_K =
      cabin.isPreheated && isAtSocket
        ? cabinAtStart_K(cabin, ambient_K)
        : rested_K(cabin.lump, state.cabin_K, ambient_K, time_s);
  state.trip_m = 0;
  state.pack.dischargeUse_A2s = 0;
  state.pack.chargeUse_A2s = 0;
  resetGearState(state.gear);
}

function rested_K(lump: HeatLump, from_K: number, around_K: number, time_s: number): number {
  return warmed_K(lump, createHeatFactors(), from_K, 0, around_K, time_s);
}
