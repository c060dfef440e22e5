import fc from "fast-check";
import { expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import { wintersOf } from "../../../sim/plan/conditions/condition.ts";
import { createChannels } from "../../../sim/step/channels.ts";
import { driveFreely } from "../../../sim/step/driveFreely.ts";
import { finishInterval } from "../../../sim/step/finishInterval.ts";
import { prepare, prepareIn } from "../../../sim/step/prepare.ts";
import { pass } from "../../../sim/step/run.ts";
import { beginRoad, createRunContext } from "../../../sim/step/runContext.ts";
import { step } from "../../../sim/step/step.ts";
import { createTotals } from "../../../sim/step/totals.ts";
import { cycleTrace } from "../../../sim/trace/standardCycles.ts";
import { arbitraryJob, arbitraryTrace } from "../../support/arbitraryJob.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { fixedly } from "../../support/fixedly.ts";

// A recorded pass goes by `step` alone, one without a record by `driveFreely` wherever nothing holds the car back.

function start(job: ReturnType<typeof readJob>, packIndex: number, soc_frac?: number) {
  const model = prepare(job, job.packs[packIndex]);
  const context = createRunContext(model, soc_frac ?? model.pack.ceiling_frac);
  return { context, totals: createTotals(context.state) };
}

it("gives the totals and the state of the step, to the last digit, for any car, road and charge", () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, fc.double({ min: 0.02, max: 1, noNaN: true }), (job, trace, soc_frac) => {
      const { floor_frac, ceiling_frac } = job.packs[0];
      const from_frac = floor_frac + soc_frac * (ceiling_frac - floor_frac);
      const byStep = start(job, 0, from_frac);
      const freely = start(job, 0, from_frac);
      for (let k = 0; k < 3; k++) {
        pass(byStep.context, byStep.totals, trace, createChannels(trace.time_s.length));
        pass(freely.context, freely.totals, trace);
      }
      expect(freely.totals).toEqual(byStep.totals);
      expect(freely.context.state).toEqual(byStep.context.state);
    }),
    fixedly(120),
  );
});

it.each(demos.map(({ title, document }) => [title, readJob(document)] as const))(
  "gives them for every pack of the demo %s on published cycles, over and over",
  (_, job) => {
    for (const id of ["udds", "wltc-class-3b", "us06"]) {
      const trace = cycleTrace(id, cycleTexts);
      for (const packIndex of job.packs.keys()) {
        const byStep = start(job, packIndex);
        const freely = start(job, packIndex);
        for (let k = 0; k < 4; k++) {
          pass(byStep.context, byStep.totals, trace, createChannels(trace.time_s.length));
          pass(freely.context, freely.totals, trace);
        }
        expect(freely.totals).toEqual(byStep.totals);
        expect(freely.context.state).toEqual(byStep.context.state);
      }
    }
  },
);

it.each(demos.map(({ title, document }) => [title, readJob(document)] as const))(
  "gives them in the winters of the demo %s too, heater and thermostat in them",
  (_, job) => {
    const winters = wintersOf(job);
    if (!winters) throw new Error("a demo's winter is driven");
    const trace = cycleTrace("udds", cycleTexts);
    for (const condition of Object.values(winters)) {
      const model = prepareIn(job, job.packs[1], condition);
      const [byStep, freely] = [1, 2].map(() => {
        const context = createRunContext(model, model.pack.ceiling_frac);
        return { context, totals: createTotals(context.state) };
      });
      for (let k = 0; k < 4; k++) {
        pass(byStep.context, byStep.totals, trace, createChannels(trace.time_s.length));
        pass(freely.context, freely.totals, trace);
      }
      expect(freely.totals).toEqual(byStep.totals);
      expect(freely.context.state).toEqual(byStep.context.state);
    }
  },
);

it("leaves next to nothing of a saloon's drive in town to the step", () => {
  const trace = cycleTrace("udds", cycleTexts);
  const { context, totals } = start(readJob(demos[0].document), 0);
  const { interval } = context;
  beginRoad(context, trace.profile, trace.speed_mps[0]);
  const rows = trace.time_s.length;
  let left = 0;
  for (let i = driveFreely(context, totals, trace, 1); i < rows; i = driveFreely(context, totals, trace, i + 1)) {
    step(context, trace.speed_mps[i], trace.time_s[i] - trace.time_s[i - 1]);
    finishInterval(context, totals, interval.moving_s);
    left++;
  }
  expect(left).toBeLessThan(0.04 * rows);
});

it("drives nothing while a standing start ramps up", () => {
  const trace = cycleTrace("udds", cycleTexts);
  const { context, totals } = start(readJob(demos[0].document), 0);
  context.ramp_frac = 0.5;
  expect(driveFreely(context, totals, trace, 1)).toBe(1);
});
