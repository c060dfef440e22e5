import { expect, it } from "vitest";
import { finishInterval } from "../../../sim/step/finishInterval.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { createRunContext } from "../../../sim/step/runContext.ts";
import { createTotals } from "../../../sim/step/totals.ts";
import { bareJob } from "../../support/bareCar.ts";

/** Ten seconds and 100 m at so many amperes, from a pack of 3600 C that is half full and may be emptied to a quarter. */
function finished(current_A: number) {
  const job = bareJob({ module: { capacity_Ah: 1 }, pack: { floor_frac: 0.25 } });
  const context = createRunContext(prepare(job, job.packs[0]), 0.5);
  const totals = createTotals(context.state);
  Object.assign(context.interval, { current_A, distance_m: 100, end_mps: 10, moving_s: 10 });
  finishInterval(context, totals, 10);
  return { interval: context.interval, state: context.state, totals };
}

it("drives the whole interval where the charge lasts", () => {
  const { interval, state, totals } = finished(36);
  expect(interval).toMatchObject({ driven_frac: 1, driven_s: 10, driven_m: 100 });
  expect(state.pack.soc_frac).toBeCloseTo(0.4, 12);
  expect(totals).toMatchObject({ reachedFloor: false, time_s: 10, distance_m: 100 });
});

it("cuts it in proportion where the charge reaches the floor, and says so", () => {
  // 360 A for 10 s are a whole charge; a quarter of one is there.
  const { interval, state, totals } = finished(360);
  expect(interval.driven_frac).toBeCloseTo(0.25, 12);
  expect(interval.driven_m).toBeCloseTo(25, 9);
  expect(state.pack.soc_frac).toBe(0.25);
  expect(state.speed_mps).toBeCloseTo(2.5, 9);
  expect(totals.reachedFloor).toBe(true);
  expect(totals.time_s).toBeCloseTo(2.5, 9);
});

it("cuts nothing while charging", () => {
  expect(finished(-36).state.pack.soc_frac).toBeCloseTo(0.6, 12);
});
