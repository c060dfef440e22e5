import type { Job } from "../../shared/job/job.ts";
import type { Use } from "../../sim/plan/answer/packAnswer.ts";
import type { Candidate } from "../../sim/plan/driveReport.ts";
import type { Unknown } from "../../sim/plan/unknowns.ts";
import { inventedJob } from "./inventedJob.ts";

const job = inventedJob();

/** A use with round allowances: a winter range is half of today's, at ten years in winter a quarter. */
export function inventedUse(changes: Partial<Use> = {}): Use {
  const { vehicle, controller, packs } = job;
  const allowance: Job["allowance"] = { winter_ratio: 2, aged_frac: 0.5 };
  return { usualDay_km: 10, allowance, vehicle, controller, packs, ...changes };
}

/** A pack as if it had been driven: `size` kWh for its name, its usable energy and a tenth of its mass; ten times that in km. */
export function inventedCandidate(size: number, changes: Partial<Candidate> = {}): Candidate {
  const pack = { seriesModules: 4, parallelModules: 1, nominal_kWh: size, usable_kWh: size, mass_kg: 10 * size };
  return {
    name: `${size} kWh`,
    pack: { ...pack, nominal_V: 100, min_V: 90, max_V: 110 },
    testMass_kg: 800 + 10 * size,
    wheelPositive_Whpkm: 100,
    battery_Whpkm: 100,
    wall_Whpkm: 110,
    range_km: 10 * size,
    rangeEnd: "floor",
    isThereAndBack: false,
    refused: {},
    soc: { start_frac: 0.95, end_frac: 0.9, min_frac: 0.9 },
    distance_km: 5,
    regen_Wh: 0,
    frictionBrake_Wh: 0,
    ledger_Wh: {
      aero: 0,
      rolling: 0,
      climb: 0,
      speed: 0,
      driveline: 0,
      motor: 0,
      packHeat: 0,
      accessories: 0,
      frictionBrake: 0,
      total: 500,
    },
    peak: {
      battery_A: 100,
      charge_A: 10,
      motor_Nm: 50,
      motor_kW: 10,
      motor_rpm: 3000,
      min_V: 95,
      motor_degC: 30,
      pack_degC: 20,
    },
    rmsBattery_A: 50,
    missed_km: 0,
    behind_s: 0,
    reachedFloor: false,
    shed_Wh: 0,
    limited_s: { grip: 0, driveline: 0, motor: 0, controller: 0, pack: 0, heat: 0 },
    findings: [],
    ...changes,
  };
}

/** A value taken as 1, 0.9 to 1.1, that makes so many kilometres more at its low end and so many less at its high end. */
export function inventedUnknown(
  range_km: number,
  more_km: number,
  less_km: number,
  changes: Partial<Unknown> = {},
): Unknown {
  return {
    path: "vehicle.tyres.rolling_coeff",
    from: "usual",
    value: 1,
    plusMinus_frac: 0.1,
    asTaken_km: range_km,
    low: 0.9,
    high: 1.1,
    atLow_km: range_km + more_km,
    atHigh_km: range_km - less_km,
    failsAtLow: false,
    failsAtHigh: false,
    effect_km: Math.max(more_km, less_km),
    ...changes,
  };
}
