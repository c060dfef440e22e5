import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { measure } from "../../../../sim/plan/measured/measure.ts";
import { toTrace } from "../../../../sim/route/roads/toTrace.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { type BuiltLog, drivenAndLogged, shortDrive } from "../../../logs/builtCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

// Logs of cars that are not the job's, made by the project's own stepper; what tells them apart is physics, not their names.
const job = demoJob();
const pack = 2;
const job_kg = prepare(job, job.packs[pack]).testMass_kg;

function saidOf(of: Job, change = (log: BuiltLog): BuiltLog => log) {
  const log = change(drivenAndLogged(of, pack, shortDrive(), { seed: 6, change: {}, isCleaned: true }));
  const found = measure(job, pack, {
    parts: [{ start_s: 0, trace: toTrace(log, "log", "log") }],
    hasHeights: true,
    log: {
      file: "pack.csv",
      time_s: log.electricTime_s,
      voltage_V: log.voltage_V,
      current_A: log.current_A,
      fileSign: 1 as const,
      clock: "same" as const,
      remarks: [],
    },
  });
  return { ...found, words: found.sentences.map((each) => messageIn(each, "metric")) };
}
const heavier = (kg: number): Job => ({
  ...job,
  vehicle: { ...job.vehicle, kerb_kg: (job.vehicle.kerb_kg ?? 0) + kg },
});

describe("a log of another car", () => {
  it.each([
    ["heavier", 700],
    ["lighter", -400],
  ])("that is %s is told by its starts and climbs, and what it differs by is not put down to this one", (_, kg) => {
    const { words, isDoubted } = saidOf(heavier(kg));
    expect(isDoubted).toBe(true);
    const said = words.find((each) => /does not fit the job: its starts and climbs/.test(each)) ?? "";
    const [found_kg] = [...said.matchAll(/of a car of ([\d,.]+) kg/g)].map(([, text]) => Number(text.replace(",", "")));
    // Losses, taken as the job's, pass for some of the mass: to a tenth.
    expect(Math.abs(found_kg / (job_kg + kg) - 1)).toBeLessThan(0.1);
    expect(words.join(" ")).not.toMatch(/jack each wheel up/);
  });

  it("that is faster than this one's motor and pack can be is told by that", () => {
    const weak = { ...job, controller: { ...job.controller, power_kW: 12 } };
    const log = drivenAndLogged(job, pack, shortDrive(), { seed: 6, change: {}, isCleaned: true });
    const found = measure(weak, pack, {
      parts: [{ start_s: 0, trace: toTrace(log, "log", "log") }],
      hasHeights: true,
      log: {
        file: "pack.csv",
        time_s: log.electricTime_s,
        voltage_V: log.voltage_V,
        current_A: log.current_A,
        fileSign: 1 as const,
        clock: "same" as const,
        remarks: [],
      },
    });
    const words = found.sentences.map((each) => messageIn(each, "metric")).join(" ");
    expect(words).toMatch(/the car was faster than the job’s motor, gear and pack can make it/);
  });

  it("whose amps are more than the controller lets through is told by that", () => {
    const limited = saidOf(job, (log) => ({ ...log, current_A: log.current_A.map((amps) => 3 * amps) }));
    expect(limited.isDoubted).toBe(true);
    expect(limited.words.join(" ")).toMatch(/does not fit the job/);
  });
});

it("is no doubt about a car whose tyres, brakes, accessories and regen differ as built cars do", () => {
  const log = drivenAndLogged(job, pack, shortDrive(), {
    seed: 6,
    isCleaned: true,
    change: { rolling_ratio: 1.4, drag_ratio: 1.2, accessories_W: 300, regen_ratio: 0.4, mass_ratio: 1.06 },
  });
  expect(saidOf(job, () => log).isDoubted).toBe(false);
});
