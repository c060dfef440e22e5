import type { Job } from "../../shared/job/job.ts";
import type { Pack } from "../../shared/job/schema/battery.ts";
import type { CabinHeat, Weather } from "../../shared/job/schema/conditions.ts";
import { W_PER_KW, ZERO_CELSIUS_K } from "../../shared/units.ts";
import { packMass_kg } from "../battery/packMass.ts";
import { preparePack, type Wear } from "../battery/preparePack.ts";
import { prepareController, prepareMotor } from "../motor/prepareMotor.ts";
import { prepareCabin } from "../vehicle/cabin.ts";
import { prepareDriveline } from "../vehicle/driveline.ts";
import { prepareGrip } from "../vehicle/grip.ts";
import { inertia_kg, testMass_kg } from "../vehicle/masses.ts";
import { AS_EVER, prepareRoadLoad } from "../vehicle/prepareRoadLoad.ts";
import type { Model } from "./model.ts";
import { settleShapes } from "./settleShapes.ts";

settleShapes();

/** The weather that a car is driven in where it is not the job's own, and what age has made of its pack. */
export interface DrivenIn {
  /** The job's own weather where left out. */
  readonly weather?: Weather;
  /** How far lights and heater by the hour are those of the condition: 1 in its own weather, less on a milder day. */
  readonly winter_frac?: number;
  readonly age?: Omit<Wear, "usable_frac">;
}

/** A car that was prepared, and what of. */
export interface Prepared {
  readonly job: Job;
  readonly pack: Pack;
  /** New and in the job's own weather where left out. */
  readonly condition?: DrivenIn;
  readonly model: Model;
}

/** A job's car with one of its packs aboard, new and in the job's own weather: `prepareIn` no other condition. */
export function prepare(job: Job, pack: Pack, like?: Prepared): Model {
  return prepareIn(job, pack, {}, like);
}

/**
 * A job's car with one of its packs aboard, in SI, ready for stepping, in the job's own weather or in another one. The job
 * is valid: its reader saw to that.
 *
 * What it has in common with a car to be like, the very same part of the job, is that car's: making the tables anew would cost as much as
 * half an hour's drive.
 */
export function prepareIn(job: Job, pack: Pack, condition: DrivenIn, like?: Prepared): Model {
  const { weather, winter_frac = 1 } = condition;
  const { vehicle } = job;
  const environment = weather ? environmentIn(job, weather) : job.environment;
  const driveline = prepareDriveline(job);
  const mass_kg = testMass_kg(vehicle, packMass_kg(pack, job.module));
  const road = prepareRoadLoad({ vehicle, environment }, mass_kg, driveline.frontShaftDrag_Nm, weather ?? AS_EVER);
  const byParts = vehicle.inertia.kind === "parts";
  const ambient_K = environment.temperature_degC + ZERO_CELSIUS_K;
  return {
    testMass_kg: mass_kg,
    road,
    inertia_kg: inertia_kg(vehicle, road.mass_kg),
    noLoadDrag_Nm: job.driveline.noLoadDrag_Nm,
    gears: driveline.gears,
    gearUp_mps: driveline.gearUp_mps,
    grip: prepareGrip(job, mass_kg, driveline.drivenAxle),
    motor: prepareMotor(job.motor, byParts, like && { motor: like.job.motor, model: like.model.motor }),
    controller: prepareController(job.controller, job.motor),
    pack: preparePack(
      pack,
      job.module,
      wearOf(condition),
      like && {
        pack: like.pack,
        module: like.job.module,
        model: like.model.pack,
        wear: wearOf(like.condition ?? {}),
      },
    ),
    accessories_W: accessories_W(job, weather, winter_frac),
    cabin: prepareCabin(weather?.heat),
    ambient_K,
    packStart_K: (environment.pack_degC ?? environment.temperature_degC) + ZERO_CELSIUS_K,
    hasWindHome: weather !== undefined && weather.wind_kmh > 0,
  };
}

function environmentIn({ environment }: Job, { temperature_degC, pack_degC, wind_kmh }: Weather): Job["environment"] {
  const { pack_degC: _pack, ...others } = environment;
  return { ...others, temperature_degC, headWind_kmh: wind_kmh, ...(pack_degC !== undefined && { pack_degC }) };
}

function wearOf({ weather, age }: DrivenIn): Wear {
  return {
    capacity_frac: age?.capacity_frac ?? 1,
    usable_frac: weather?.usable_frac ?? 1,
    resistance_ratio: (age?.resistance_ratio ?? 1) * (weather?.resistance_ratio ?? 1),
  };
}

/**
 * What draws at the pack's terminals on average at all times while driving, in watts: 12 V loads over the DC-DC converter's efficiency,
 * and a heater that is on by the hour. `winter_frac` is how far the shares of the drive are those of winter.
 */
export function accessories_W(job: Job, weather?: Weather, winter_frac = 1): number {
  const { standing_W, dcdcEfficiency_frac, items } = job.accessories;
  const dark_frac = weather?.isDark ? winter_frac : 0;
  const heater = heaterByHour_W(weather?.heat);
  return items.reduce(
    (sum_W, { power_W, duty_frac, winterDuty_frac = duty_frac, supply }) => {
      const mean_W = power_W * (duty_frac + dark_frac * (winterDuty_frac - duty_frac));
      return sum_W + (supply === "12V" ? mean_W / dcdcEfficiency_frac : mean_W);
    },
    (standing_W + winter_frac * heater.at12V_W) / dcdcEfficiency_frac + winter_frac * heater.atPack_W,
  );
}

/** What a heater without a thermostat draws while driving: from the pack, and from the 12 V supply. */
function heaterByHour_W(heat: CabinHeat | undefined): { atPack_W: number; at12V_W: number } {
  if (heat?.kind === "byHour") return { atPack_W: heat.power_kW * W_PER_KW, at12V_W: 0 };
  return { atPack_W: 0, at12V_W: heat?.kind === "fuel" ? heat.fan_W : 0 };
}
