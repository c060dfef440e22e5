import { expect, it } from "vitest";
import { prepare } from "../../../sim/step/prepare.ts";
import { setRoadDemand } from "../../../sim/step/roadDemand.ts";
import { beginRoad, createRunContext } from "../../../sim/step/runContext.ts";
import type { Profile } from "../../../sim/trace/trace.ts";
import { bareJob, evenSlope } from "../../support/bareCar.ts";

/** What the road asks of 1400 kg that coast down by 100 N + 0.5 N/(km/h) + 0.03 N/(km/h)². */
function asked(from_mps: number, end_mps: number, moving_s: number, profile?: Profile) {
  const roadLoad = {
    kind: "coastDown" as const,
    f0_N: 100,
    f1_Npkmh: 0.5,
    f2_Npkmh2: 0.03,
    mass_kg: 1400,
  };
  const job = bareJob({ vehicle: { roadLoad } });
  const context = createRunContext(prepare(job, job.packs[0]), 0.5);
  beginRoad(context, profile, from_mps);
  Object.assign(context.interval, { end_mps, moving_s });
  setRoadDemand(context);
  return context.interval;
}

it("asks rolling resistance and drag of the mean speed, and inertia of the change", () => {
  // Mean 10 m/s = 36 km/h: 100 + 18 N and 38.88 N; 1400 kg by 1 m/s².
  const interval = asked(9.5, 10.5, 1);
  expect(interval).toMatchObject({ mean_mps: 10, accel_mps2: 1, distance_m: 10, climb_N: 0, inertia_N: 1400 });
  expect(interval.rolling_N).toBeCloseTo(118, 9);
  expect(interval.drag_N).toBeCloseTo(38.88, 9);
  expect(interval.wheel_N).toBeCloseTo(118 + 38.88 + 1400, 9);
});

it("takes the slope from the rise over the way of the interval", () => {
  const interval = asked(10, 10, 2, evenSlope(0.1, 1000));
  expect(interval.sinSlope).toBeCloseTo(0.1, 12);
  expect(interval.cosSlope).toBeCloseTo(Math.sqrt(0.99), 12);
  expect(interval.climb_N).toBeCloseTo(1400 * 9.81 * 0.1, 9);
});

it("counts only the time under way of a car that stops", () => {
  expect(asked(1, 0, 0.5)).toMatchObject({ accel_mps2: -2, distance_m: 0.25, inertia_N: -2800 });
});
