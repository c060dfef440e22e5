import type * as z from "zod";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import { type Channels, createChannels } from "../../sim/step/channels.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { type RunResult, run } from "../../sim/step/run.ts";
import type { Profile, Trace } from "../../sim/trace/trace.ts";

/** A job as a file holds it: what the reader fills in may be left out. */
type Written = z.input<typeof Job>;

export interface Changes {
  readonly test_kg?: number;
  readonly vehicle?: Partial<Written["vehicle"]>;
  readonly driveline?: Partial<Written["driveline"]>;
  readonly motor?: Partial<Written["motor"]>;
  readonly controller?: Partial<Written["controller"]>;
  readonly module?: Partial<Written["module"]>;
  readonly pack?: Partial<Written["packs"][number]>;
  readonly accessories?: Partial<Written["accessories"]>;
  readonly charger?: Partial<Written["charger"]>;
  readonly environment?: Partial<Written["environment"]>;
}

const PACK_kg = 1;

/**
 * A car stripped of all that a closed form leaves out: no losses, no drag in the box, a motor and a pack that never bind, one gear that
 * turns the motor 20 times a metre (so 20 N m of force a newton metre), no accessories. Each comparison puts back what it is about.
 */
export function bareJob(changes: Changes = {}): Job {
  return readJob({
    format: "bellhousing-job",
    version: 1,
    title: "Bare car",
    isInvented: true,
    usualDay_km: 40,
    vehicle: {
      name: "Bare car",
      kerb_kg: (changes.test_kg ?? 1400) - PACK_kg,
      tyres: { loadedRadius_mm: 300, rolling_coeff: 0, followsTemperature: false },
      roadLoad: { kind: "physical", drag_coeff: 0, frontalArea_m2: 0 },
      ...changes.vehicle,
    },
    driveline: {
      drivenAxle: "rear",
      gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 1 }],
      finalDrive_ratio: 6,
      finalDriveEfficiency_frac: 1,
      shifting: { kind: "fixed", gear: "only" },
      ...changes.driveline,
    },
    motor: {
      name: "Bare motor",
      kind: "induction",
      origin: "invented",
      mass_kg: 40,
      envelope: { kind: "peak", torque_Nm: 10_000, power_kW: 2000 },
      reference_V: 400,
      maxSpeed_rpm: 30_000,
      rollBack_rpm: 1,
      loss: { kind: "flat", efficiency_frac: 1 },
      ...changes.motor,
    },
    controller: { name: "Bare controller", min_V: 0, max_V: 1500, regen: { isOn: false }, ...changes.controller },
    module: {
      name: "Bare module",
      chemistry: "nickel",
      condition: "new",
      origin: "invented",
      seriesCells: 100,
      parallelCells: 1,
      capacity_Ah: 2000,
      openCircuit: { soc_frac: [0, 1], cell_V: [4, 4] },
      resistance: { soc_frac: [0, 1], module_mohm: [1e-6, 1e-6] },
      resistanceByTemperature: { temperature_degC: [-40, 80], resistance_ratio: [1, 1] },
      discharge: { continuous_A: 5000, peak_A: 5000, peak_s: 0 },
      charge: { continuous_A: 5000, peak_A: 5000, peak_s: 0 },
      cellMin_V: 0.5,
      cellMax_V: 5,
      mass_kg: PACK_kg,
      length_mm: 300,
      width_mm: 200,
      height_mm: 150,
      ...changes.module,
    },
    packs: [{ name: "only", seriesModules: 1, parallelModules: 1, boxes_frac: 0, leads_mohm: 0, ...changes.pack }],
    accessories: { standing_W: 0, dcdcEfficiency_frac: 1, ...changes.accessories },
    charger: { name: "Bare charger", efficiency_frac: 1, ...changes.charger },
    environment: { ...changes.environment },
    roads: [{ kind: "cycle", id: "town", title: "Town", cycle: "ece-15" }],
  });
}

/** A trace from rows of time in seconds and speed in km/h. */
export function traceOf(rows: readonly (readonly [number, number])[], profile?: Profile): Trace {
  return {
    id: "rows",
    title: "rows",
    time_s: Float64Array.from(rows, ([time_s]) => time_s),
    speed_mps: Float64Array.from(rows, ([, speed_kmh]) => speed_kmh * MPS_PER_KMH),
    ...(profile ? { profile } : {}),
  };
}

/** One speed in m/s asked for all the time, at even steps. */
export function steadyTrace(speed_mps: number, duration_s: number, step_s: number, profile?: Profile): Trace {
  const rows = Math.round(duration_s / step_s) + 1;
  return {
    id: "steady",
    title: "steady",
    time_s: Float64Array.from({ length: rows }, (_, i) => i * step_s),
    speed_mps: new Float64Array(rows).fill(speed_mps),
    ...(profile ? { profile } : {}),
  };
}

/** A road that rises evenly: the same sine of the slope all along. */
export function evenSlope(sinSlope: number, length_m: number): Profile {
  return {
    distance_m: Float64Array.of(0, length_m),
    elevation_m: Float64Array.of(Math.max(0, -sinSlope * length_m), Math.max(0, sinSlope * length_m)),
  };
}

/** The first pack of a job driven over a trace, with every step kept. */
export function driven(
  job: Job,
  trace: Trace,
  startSoc_frac?: number,
): RunResult & { readonly channels: Channels; readonly rows: number } {
  const channels = createChannels(trace.time_s.length);
  const result = run(prepare(job, job.packs[0]), trace, channels, startSoc_frac);
  return { ...result, channels, rows: channels.length };
}
