import fc from "fast-check";
import { expect, it } from "vitest";
import { createChannels } from "../../sim/step/channels.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import { elevationAt_m } from "../../sim/trace/profileAlong.ts";
import { arbitraryJob, arbitraryTrace } from "../support/arbitraryJob.ts";
import { bareJob, driven, evenSlope, steadyTrace } from "../support/bareCar.ts";
import { fixedly } from "../support/fixedly.ts";

it("takes m g dz to climb, to rounding, whatever the road and however much of it was driven", () => {
  let climbed = 0;
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const model = prepare(job, job.packs[0]);
      const { totals } = run(model, trace);
      if (trace.profile === undefined) {
        expect(totals.ledger.climb_J).toBe(0);
        return;
      }
      // The last interval of a pack that meets its floor is cut in proportion, not driven anew.
      if (totals.reachedFloor) return;
      const { profile } = trace;
      const rise_m = elevationAt_m(profile, totals.distance_m) - elevationAt_m(profile, 0);
      const weight_N = model.road.mass_kg * job.environment.gravity_mps2;
      if (Math.abs(rise_m) > 1) climbed++;
      expect(Math.abs(totals.ledger.climb_J - weight_N * rise_m)).toBeLessThanOrEqual(
        1e-9 * weight_N * (1 + totals.distance_m),
      );
    }),
    fixedly(150),
  );
  expect(climbed).toBeGreaterThan(20);
});

it("stands still on a hill that is too steep for its motor, for good and without rolling back", () => {
  let stuck = 0;
  fc.assert(
    fc.property(arbitraryJob, fc.integer({ min: 1, max: 90 }), (job, speed_kmh) => {
      const weak = { ...job, motor: { ...job.motor, envelope: { kind: "peak" as const, torque_Nm: 2, power_kW: 1 } } };
      const trace = steadyTrace(speed_kmh / 3.6, 120, 1, evenSlope(0.25, 5000));
      const model = prepare(weak, weak.packs[0]);
      const channels = createChannels(trace.time_s.length);
      const { totals } = run(model, trace, channels);
      const stop = channels.speed_mps.subarray(0, channels.length).indexOf(0);
      if (stop < 0) return;
      stuck++;
      for (let i = stop; i < channels.length; i++) {
        expect(channels.speed_mps[i]).toBe(0);
        expect(channels.distance_m[i]).toBe(channels.distance_m[stop]);
      }
      expect(totals.distance_m).toBe(channels.distance_m[channels.length - 1]);
    }),
    fixedly(80),
  );
  expect(stuck).toBeGreaterThan(40);
});

it("draws its accessories and nothing else where it is asked to stand on a hill", () => {
  const { totals } = driven(bareJob({ accessories: { standing_W: 200 } }), steadyTrace(0, 100, 1, evenSlope(0.2, 100)));
  expect(totals.ledger.accessories_J).toBeCloseTo(20_000, 6);
  expect(totals.ledger.total_J - totals.ledger.packHeat_J).toBeCloseTo(20_000, 6);
  expect(totals.distance_m).toBe(0);
});
