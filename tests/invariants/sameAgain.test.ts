import fc from "fast-check";
import { expect, it } from "vitest";
import { driveJob } from "../../sim/plan/drive/driveJob.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { pass } from "../../sim/step/run.ts";
import { createRunContext } from "../../sim/step/runContext.ts";
import { createTotals } from "../../sim/step/totals.ts";
import { arbitraryJob, arbitraryTrace } from "../support/arbitraryJob.ts";
import { fixedly } from "../support/fixedly.ts";

it("gives the same report twice, and again with or without its channels", () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const first = driveJob(job, trace, { channels: true });
      expect(driveJob(job, trace, { channels: true })).toEqual(first);
      const bare = first.candidates.map(({ channels: _, ...candidate }) => candidate);
      expect(driveJob(job, trace).candidates).toEqual(bare);
    }),
    fixedly(40),
  );
});

it("leaves the job and the trace as they were", () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const jobBefore = JSON.stringify(job);
      const traceBefore = structuredClone(trace);
      driveJob(job, trace, { channels: true });
      expect(JSON.stringify(job)).toBe(jobBefore);
      expect(trace).toEqual(traceBefore);
    }),
    fixedly(40),
  );
});

it("lets two cars drive by turns as if each drove alone", () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryJob, arbitraryTrace, arbitraryTrace, (jobA, jobB, traceA, traceB) => {
      const start = (job: typeof jobA) => {
        const model = prepare(job, job.packs[0]);
        const context = createRunContext(model, model.pack.ceiling_frac);
        return { context, totals: createTotals(context.state) };
      };
      const a = start(jobA);
      const b = start(jobB);
      for (let k = 0; k < 3; k++) {
        pass(a.context, a.totals, traceA);
        pass(b.context, b.totals, traceB);
      }
      const alone = start(jobB);
      for (let k = 0; k < 3; k++) pass(alone.context, alone.totals, traceB);
      expect(b.totals).toEqual(alone.totals);
      expect(b.context.state).toEqual(alone.context.state);
    }),
    fixedly(40),
  );
});
