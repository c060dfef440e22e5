import type { Draft } from "../../shared/job/draft.ts";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";

/** What waits in a field in which nobody typed to the end. */
export function halfTyped(typed: string): Draft {
  return { typed, problem: "found no number" };
}

/** A whole job of a car that nobody has, as the reader makes it, for tests that keep and change jobs. */
export function inventedJob(title = "Invented saloon", load_kg = 150): Job {
  return readJob({
    format: "bellhousing-job",
    version: 1,
    title,
    isInvented: true,
    use: "school, shop, station",
    usualDay_km: 40,
    vehicle: {
      name: "Saloon of about 1960",
      kerb_kg: 900,
      removed_kg: 200,
      added_kg: 90,
      load_kg,
      tyres: { loadedRadius_mm: 290, rolling_coeff: 0.012 },
      roadLoad: { kind: "physical", drag_coeff: 0.45, frontalArea_m2: 1.8 },
    },
    driveline: {
      drivenAxle: "rear",
      gears: [
        { name: "3", gear_ratio: 1.4, efficiency_frac: 0.96 },
        { name: "4", gear_ratio: 1, efficiency_frac: 0.98 },
      ],
      finalDrive_ratio: 4.2,
      finalDriveEfficiency_frac: 0.96,
      shifting: { kind: "fixed", gear: "3" },
    },
    motor: {
      name: "Invented motor",
      kind: "induction",
      origin: "invented",
      mass_kg: 40,
      envelope: { kind: "peak", torque_Nm: 120, power_kW: 45 },
      reference_V: 108,
      maxSpeed_rpm: 8000,
      loss: { kind: "flat", efficiency_frac: 0.85 },
    },
    controller: { name: "Invented controller", min_V: 60, max_V: 160, regen: { isOn: true, torque_Nm: 40 } },
    module: {
      name: "Invented module",
      chemistry: "ironPhosphate",
      condition: "new",
      origin: "invented",
      seriesCells: 4,
      parallelCells: 1,
      capacity_Ah: 100,
      openCircuit: { soc_frac: [0, 1], cell_V: [2.8, 3.4] },
      resistance: { soc_frac: [0, 1], module_mohm: [4, 4] },
      resistanceByTemperature: { temperature_degC: [0, 25], resistance_ratio: [2, 1] },
      discharge: { continuous_A: 200, peak_A: 400, peak_s: 30 },
      charge: { continuous_A: 100, peak_A: 150, peak_s: 10 },
      cellMin_V: 2.5,
      cellMax_V: 3.65,
      mass_kg: 9,
      length_mm: 300,
      width_mm: 200,
      height_mm: 150,
    },
    packs: [
      { name: "Small", seriesModules: 8, parallelModules: 1 },
      { name: "Large", seriesModules: 8, parallelModules: 2 },
    ],
    accessories: { standing_W: 60, dcdcEfficiency_frac: 0.9 },
    charger: { name: "Invented charger", efficiency_frac: 0.9 },
    roads: [{ kind: "cycle", id: "town", title: "Town", cycle: "ece-15" }],
  });
}

/** The same job with a recorded road of so many seconds: a list long enough to be stored on its own. */
export function withRecordedRoad(job: Job, samples: number, top_kmh = 50): Job {
  const time_s = Array.from({ length: samples }, (_, i) => i);
  const speed_kmh = time_s.map((i) => Math.round(1000 * top_kmh * Math.abs(Math.sin(i / 40))) / 1000);
  return { ...job, roads: [...job.roads, { kind: "trace", id: "usual", title: "Usual drive", time_s, speed_kmh }] };
}
