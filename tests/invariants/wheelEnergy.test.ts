import fc from "fast-check";
import { expect, it } from "vitest";
import type { Job } from "../../shared/job/job.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import type { Trace } from "../../sim/trace/trace.ts";
import { arbitraryJob, arbitraryTrace, levelled } from "../support/arbitraryJob.ts";
import { bareJob } from "../support/bareCar.ts";
import { fixedly } from "../support/fixedly.ts";

/** The job's car in calm air with a motor and a pack that never bind, so that it misses nothing. */
function unhindered(job: Job): Job {
  const { motor, controller, module, packs } = bareJob();
  const { balance: _, ...vehicle } = job.vehicle;
  return {
    ...job,
    vehicle,
    driveline: { ...job.driveline, limits: {}, shifting: { kind: "fixed", gear: "fourth" } },
    motor,
    controller,
    module,
    packs,
    accessories: { ...job.accessories, standing_W: 0, items: [] },
    environment: { ...job.environment, headWind_kmh: 0 },
  };
}

function wheelPositive_J(job: Job, trace: Trace): number {
  const { totals } = run(prepare(job, job.packs[0]), trace);
  expect(totals.target_m - totals.distance_m).toBeLessThanOrEqual(1e-9 * totals.target_m);
  return totals.wheelPositive_J;
}

/** A lighter, smoother and easier rolling twin of the car, each for itself. */
const easier: readonly (readonly [string, (job: Job) => Job])[] = [
  ["mass", (job) => ({ ...job, vehicle: { ...job.vehicle, load_kg: 0, kerb_kg: job.vehicle.kerb_kg - 50 } })],
  [
    "drag",
    ({ vehicle, ...job }) => ({
      ...job,
      vehicle: {
        ...vehicle,
        roadLoad:
          vehicle.roadLoad.kind === "physical"
            ? { ...vehicle.roadLoad, drag_coeff: 0.9 * vehicle.roadLoad.drag_coeff }
            : vehicle.roadLoad.kind === "dragArea"
              ? { ...vehicle.roadLoad, dragArea_m2: 0.9 * vehicle.roadLoad.dragArea_m2 }
              : { ...vehicle.roadLoad, f2_Npkmh2: 0.9 * vehicle.roadLoad.f2_Npkmh2 },
      },
    }),
  ],
  [
    "rolling",
    ({ vehicle, ...job }) => ({
      ...job,
      vehicle: {
        ...vehicle,
        tyres: { ...vehicle.tyres, rolling_coeff: 0.9 * vehicle.tyres.rolling_coeff },
        roadLoad:
          vehicle.roadLoad.kind !== "coastDown"
            ? vehicle.roadLoad
            : { ...vehicle.roadLoad, f0_N: 0.9 * vehicle.roadLoad.f0_N },
      },
    }),
  ],
];

it.each(easier)("falls with less %s on any level road from rest to rest that is driven in full", (_, ease) => {
  let moved = 0;
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const car = unhindered(job);
      const level = levelled(trace);
      const before_J = wheelPositive_J(car, level);
      const after_J = wheelPositive_J(ease(car), level);
      if (before_J === 0) {
        expect(after_J).toBe(0);
        return;
      }
      moved++;
      expect(after_J).toBeLessThan(before_J);
    }),
    fixedly(60),
  );
  expect(moved).toBeGreaterThan(40);
});
