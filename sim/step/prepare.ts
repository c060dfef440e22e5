import type { Job } from "../../shared/job/job.ts";
import type { Pack } from "../../shared/job/schema/battery.ts";
import { MM_PER_M, ZERO_CELSIUS_K } from "../../shared/units.ts";
import { packMass_kg } from "../battery/packMass.ts";
import { preparePack } from "../battery/preparePack.ts";
import { prepareController, prepareMotor } from "../motor/prepareMotor.ts";
import { prepareDriveline } from "../vehicle/driveline.ts";
import { prepareGrip } from "../vehicle/grip.ts";
import { testMass_kg } from "../vehicle/masses.ts";
import { prepareRoadLoad } from "../vehicle/prepareRoadLoad.ts";
import type { Model } from "./model.ts";

/** A car that was prepared, and what of. */
export interface Prepared {
  readonly job: Job;
  readonly pack: Pack;
  readonly model: Model;
}

/**
 * A job's car with one of its packs aboard, in SI, ready for stepping. The job is valid: its reader saw to that.
 *
 * What it has in common with a car to be like, the very same part of the job, is that car's: making the tables anew would cost as much as
 * half an hour's drive.
 */
export function prepare(job: Job, pack: Pack, like?: Prepared): Model {
  const { vehicle, environment } = job;
  const driveline = prepareDriveline(job);
  const mass_kg = testMass_kg(vehicle, packMass_kg(pack, job.module));
  const road = prepareRoadLoad(job, mass_kg, driveline.frontShaftDrag_Nm);
  const radius_m = vehicle.tyres.loadedRadius_mm / MM_PER_M;
  const byParts = vehicle.inertia.kind === "parts";
  const ambient_K = environment.temperature_degC + ZERO_CELSIUS_K;
  return {
    testMass_kg: mass_kg,
    road,
    inertia_kg:
      vehicle.inertia.kind === "parts"
        ? road.mass_kg + vehicle.tyres.wheelsInertia_kgm2 / (radius_m * radius_m)
        : road.mass_kg * vehicle.inertia.mass_ratio,
    noLoadDrag_Nm: job.driveline.noLoadDrag_Nm,
    gears: driveline.gears,
    gearUp_mps: driveline.gearUp_mps,
    grip: prepareGrip(job, mass_kg, driveline.drivenAxle),
    motor: prepareMotor(job.motor, byParts, like && { motor: like.job.motor, model: like.model.motor }),
    controller: prepareController(job.controller, job.motor),
    pack: preparePack(pack, job.module, like && { pack: like.pack, module: like.job.module, model: like.model.pack }),
    accessories_W: accessories_W(job),
    ambient_K,
    packStart_K: (environment.pack_degC ?? environment.temperature_degC) + ZERO_CELSIUS_K,
  };
}

/** What the accessories draw at the pack's terminals on average, in watts: 12 V loads over the DC-DC converter's efficiency. */
export function accessories_W(job: Job): number {
  const { standing_W, dcdcEfficiency_frac, items } = job.accessories;
  return items.reduce((sum_W, { power_W, duty_frac, supply }) => {
    const mean_W = power_W * duty_frac;
    return sum_W + (supply === "12V" ? mean_W / dcdcEfficiency_frac : mean_W);
  }, standing_W / dcdcEfficiency_frac);
}
