import fc from "fast-check";
import { expect, it } from "vitest";
import { lookUp } from "../../sim/math/uniformTable.ts";
import { createChannels } from "../../sim/step/channels.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import { arbitraryJob, arbitraryTrace } from "../support/arbitraryJob.ts";
import { fixedly } from "../support/fixedly.ts";

it("closes on any valid job and road: the entries add up to what left the cells, to 1e-9 of their absolute sum", () => {
  let emptied = 0;
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, fc.constantFrom(1, 0.1, 1e-3), (job, trace, full) => {
      const model = prepare(job, job.packs[0]);
      const { ceiling_frac, floor_frac } = model.pack;
      const { ledger, reachedFloor } = run(
        model,
        trace,
        undefined,
        floor_frac + full * (ceiling_frac - floor_frac),
      ).totals;
      if (reachedFloor) emptied++;
      // Added up here and not by the run's own check.
      const entries_J = [
        ledger.aero_J,
        ledger.rolling_J,
        ledger.climb_J,
        ledger.speed_J,
        ledger.driveline_J,
        ledger.motor_J,
        ledger.packHeat_J,
        ledger.accessories_J,
        ledger.frictionBrake_J,
      ];
      expect(entries_J).toHaveLength(Object.keys(ledger).length - 1);
      const sum_J = entries_J.reduce((sum, entry_J) => sum + entry_J, 0);
      const throughput_J = entries_J.reduce((sum, entry_J) => sum + Math.abs(entry_J), 0);
      expect(Math.abs(sum_J - ledger.total_J)).toBeLessThanOrEqual(1e-9 * throughput_J);
    }),
    fixedly(400),
  );
  expect(emptied).toBeGreaterThan(40);
});

it("draws from the cells what the fall of their charge takes off the open-circuit curve", () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const model = prepare(job, job.packs[0]);
      const { pack } = model;
      const channels = createChannels(trace.time_s.length);
      const { totals } = run(model, trace, channels);
      const { soc_frac } = channels;
      // The step takes the voltage at its start, so that it is off by at most its own fall of charge times the change of voltage.
      let integral_J = 0;
      let bound_J = 0;
      for (let i = 1; i < channels.length; i++) {
        const fall_C = (soc_frac[i - 1] - soc_frac[i]) * pack.capacity_C;
        let sum_V = 0;
        const pieces = 8;
        const at = (k: number) =>
          lookUp(pack.openCircuit_V, soc_frac[i - 1] + ((soc_frac[i] - soc_frac[i - 1]) * k) / pieces);
        for (let k = 0; k < pieces; k++) sum_V += 0.5 * (at(k) + at(k + 1));
        integral_J += (sum_V / pieces) * fall_C;
        bound_J += Math.abs(fall_C * (at(0) - at(pieces)));
      }
      // A state of charge near 1 has a last digit of 1e-16, whatever the step; currents are found to some 1e-14.
      const full_J = lookUp(pack.openCircuit_V, 1) * pack.capacity_C;
      const rounding_J = channels.length * 4e-16 * full_J + 1e-12 * Math.abs(totals.ledger.total_J);
      expect(Math.abs(totals.ledger.total_J - integral_J)).toBeLessThanOrEqual(bound_J + rounding_J);
    }),
    fixedly(200),
  );
});
