import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { gearboxStudy } from "../../../../sim/plan/gearbox/gearboxStudy.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const studyOf = (job: Job) => gearboxStudy(job, 0, roadTrace(job.roads[0], cycleTexts));
const said = (words: readonly Parameters<typeof messageIn>[0][]) =>
  words.map((each) => messageIn(each, "metric")).join("\n");

describe("the cases where the gearbox or the tyres say no", () => {
  const tuner = demoJob();

  it("a low gear on the ring road: beyond the motor, which ends at the speed of the closed form", () => {
    const study = studyOf({ ...tuner, requirement: { topSpeed_kmh: 112.7 } });
    // 70 mph in second, 2.3 x 4.1111 on 284 mm: v G / r / (2 pi / 60).
    const rpm = ((112.7 / 3.6) * 2.3 * 4.1111 * 60) / (0.284 * 2 * Math.PI);
    expect(study.gears[1].motorAtTop_rpm).toBeCloseTo(rpm, 6);
    expect(rpm).toBeGreaterThan(tuner.motor.maxSpeed_rpm);
    const why = study.gearAdvice.others.find(({ gear }) => gear === "second")?.why ?? [];
    expect(messageIn(why, "british")).toMatch(/^9950 rpm at 70 mph is beyond the motor, which ends at 56\.3 mph/);
  });

  it("a start on the hill in a high gear under the cap: the torque needed is that of the slope, and is not there", () => {
    const asked = { ...tuner, requirement: { startHill_ratio: 1 / 6 } };
    const { hill } = studyOf(asked);
    const fourth = hill?.verdict.rows.find(({ gear }) => gear === "fourth");
    const mass_kg = hill?.verdict.mass_kg ?? 0;
    const { driveline, vehicle, environment } = tuner;
    const cos = 1 / Math.sqrt(1 + 1 / 36);
    // Tyres as they are at 12 degC, and the brakes' drag at the wheels.
    const rolling = vehicle.tyres.rolling_coeff / (1 + 0.0086 * (environment.temperature_degC - 20));
    const drag_N = 4 / 0.284;
    const force_N = mass_kg * 9.81 * cos * (1 / 6 + rolling) + drag_N;
    const needed_Nm = (force_N * 0.284) / (4.1111 * 0.975 * 0.92) + driveline.noLoadDrag_Nm;
    expect(fourth?.needed_Nm).toBeCloseTo(needed_Nm, 1);
    expect(fourth?.available_Nm).toBeCloseTo(110, 3);
    expect(fourth?.spare_frac).toBeLessThan(0);
    expect(said(hill?.words ?? [])).toMatch(/It does not start in third and fourth\./);
  });

  it("loose ground with one axle driven: the tyres slip, and with both driven they would not", () => {
    const pickup = demoJob(2);
    const { hill } = studyOf({ ...pickup, requirement: { startHill_ratio: 0.25 } });
    const rear = hill?.verdict.grip.find(({ drivenAxle }) => drivenAxle === "rear");
    const { balance } = pickup.vehicle;
    // tan θ + rolling and drag over the load on the rear axle: (1 - f) cos θ + h/L sin θ, in shares of the weight.
    const [sin, cos] = [0.25 / Math.sqrt(1.0625), 1 / Math.sqrt(1.0625)];
    const rolling = 0.026 / (1 + 0.0086 * (14 - 20));
    const weight_N = (hill?.verdict.mass_kg ?? 0) * 9.81;
    const force = sin + rolling * cos + 7 / 0.352 / weight_N;
    const load = (1 - (balance?.frontShare_frac ?? 0)) * cos + (690 / 2560) * sin;
    expect(rear?.needed_coeff).toBeCloseTo(force / load, 3);
    expect(rear?.reserve_frac["loose"]).toBeLessThan(0);
    expect(said(hill?.words ?? [])).toMatch(/they slip when it is loose/);
  });
});

it("has all four commands in one, of the pack asked for", () => {
  const job = demoJob();
  const study = studyOf(job);
  expect(study.pack).toBe(job.packs[0].name);
  expect(study.gears).toHaveLength(4);
  expect(study.caps.map(({ torque_Nm }) => torque_Nm)).toContain(job.controller.torqueCap_Nm);
  expect(study.recommendedCap?.torque_Nm).toBe(115);
  expect(study.shafts.map(({ name }) => name)).toEqual(["old engine", "as set", "recommended", "motor alone"]);
  expect(study.regen.some(({ torque_Nm }) => torque_Nm === study.regenBegin_Nm)).toBe(true);
  expect(study.changing?.gears).toEqual(["second", "third"]);
});
