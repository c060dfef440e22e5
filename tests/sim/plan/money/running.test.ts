import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { Costs, type Running } from "../../../../shared/job/schema/costs.ts";
import { firstYear, runningConverted, runningNow } from "../../../../sim/plan/money/running.ts";
import { exactly } from "../../../../sim/plan/money/span.ts";
import { workingVan } from "./clientsByHand.ts";

const exact = (amount: number) => ({ low: amount, high: amount });
const job = { usualDay_km: 100, origins: {} };

function runningOf(changes: object = {}): Running {
  const { running } = Costs.parse({ running: { ...workingVan.running, ...changes } });
  if (!running) throw new Error("running costs were left out");
  return running;
}

describe("the working van as it runs now", () => {
  it("burns 12 l/100 km at 1.50: 0.18 a kilometre, and pays 10 a day of 100 km", () => {
    const now = runningNow(runningOf(), job);
    expect(now?.energyPerKm.value).toBeCloseTo(0.18, 12);
    expect(now?.chargePerKm).toBeCloseTo(0.1, 12);
    expect(now?.upkeep).toEqual(exactly(800));
  });
  it("pays a road charge of one day in four on a quarter of its kilometres", () => {
    expect(runningNow(runningOf({ chargedDays_frac: 0.25 }), job)?.chargePerKm).toBeCloseTo(0.025, 12);
    expect(runningConverted(runningOf({ chargedDays_frac: 0.25 }), job, exactly(0)).chargePerKm).toBe(0);
  });
  it("has no running costs while the price of fuel is not known", () => {
    const { price_perl: _, ...without } = runningOf();
    expect(runningNow(without, job)).toBeUndefined();
  });
});

describe("how well the consumption is known", () => {
  const origins: Job["origins"] = { "costs.running.use_l100km": { from: "guessed", plusMinus_frac: 0.25 } };
  const other = { use_l100km: 8, servicing: exact(400), roadCharge_perday: 4 };
  it("bands what the car burns", () => {
    const now = runningNow(runningOf(), { ...job, origins });
    expect(now?.energyPerKm).toEqual({
      value: expect.closeTo(0.18, 12),
      low: expect.closeTo(0.135, 12),
      high: expect.closeTo(0.225, 12),
    });
  });
  it("says nothing of another car, which runs at its own figures", () => {
    // 8 l at 1.50 a hundred kilometres; 4 a day of 100 km.
    const running = runningNow(runningOf(), { ...job, origins }, other);
    const perKm = expect.closeTo(0.12, 12);
    expect(running?.energyPerKm).toEqual({ value: perKm, low: perKm, high: perKm });
    expect(running?.chargePerKm).toBeCloseTo(0.04, 12);
    expect(running?.upkeep).toEqual(exactly(400));
  });
  it("never makes it burn less than nothing", () => {
    const wild: Job["origins"] = { "costs.running.use_l100km": { from: "guessed", plusMinus_frac: 1.5 } };
    expect(runningNow(runningOf(), { ...job, origins: wild })?.energyPerKm.low).toBe(0);
  });
});

describe("the first year of the converted van", () => {
  it("is its electricity, its road charges, its servicing and what more insurance takes", () => {
    // 1000 km at 0.06 and 2 a day of 100 km; 300 and 100.
    const converted = runningConverted(
      runningOf({ converted: { servicing: exact(300), roadCharge_perday: 2 } }),
      job,
      exactly(0.06),
    );
    expect(firstYear(converted, 1000).value).toBeCloseTo(60 + 20 + 400, 9);
  });
});
