import fc from "fast-check";
import { expect, it } from "vitest";
import { rangeOn } from "../../sim/plan/going/range.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import type { Trace } from "../../sim/trace/trace.ts";
import { arbitraryJob, arbitraryTrace, levelled } from "../support/arbitraryJob.ts";
import { fixedly } from "../support/fixedly.ts";

/** The trace so many times on end as one long trace: it ends at rest, where it begins. */
function onEnd(trace: Trace, times: number): Trace {
  const rows = trace.time_s.length - 1;
  const lasts_s = trace.time_s[rows];
  return {
    ...trace,
    time_s: Float64Array.from(
      { length: times * rows + 1 },
      (_, i) => Math.floor(i / rows) * lasts_s + trace.time_s[i % rows],
    ),
    speed_mps: Float64Array.from({ length: times * rows + 1 }, (_, i) => trace.speed_mps[i % rows]),
  };
}

it("is how far one long trace of many repetitions goes before the floor", () => {
  let compared = 0;
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const level = levelled(trace);
      const model = prepare(job, job.packs[0]);
      const range = rangeOn(model, level);
      if (range.end !== "floor") return;
      const { totals: once } = run(model, level);
      const times = Math.ceil(range.distance_m / Math.max(once.distance_m, 1e-9)) * 2 + 2;
      if (times > 300) return;
      const { totals } = run(model, onEnd(level, times));
      expect(totals.reachedFloor).toBe(true);
      expect(Math.abs(totals.distance_m - range.distance_m)).toBeLessThanOrEqual(1e-6 * range.distance_m + 1e-6);
      compared++;
    }),
    fixedly(150),
  );
  expect(compared).toBeGreaterThan(25);
});
