import { describe, expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import { inventedYear } from "../../../../shared/job/inventedYear.ts";
import {
  climateOf,
  climateOfYear,
  doubtsOf,
  machineOf,
  moneyOf,
  weekOf,
} from "../../../../web/notebook/graph/partsOfJob.ts";
import { demoJob } from "../../../support/demoJob.ts";

const job = demoJob(0);

describe("parts of a job that studies hang on", () => {
  it("leave out of the machine what does not move the car, so that a change there is none", () => {
    const other = {
      ...job,
      title: "Another",
      usualDay_km: 77,
      units: "british" as const,
      year: { ...inventedYear, daysDriven_km: [1, 2] },
      allowance: { winter_ratio: 2, aged_frac: 0.5 },
      packs: job.packs.map((pack) => ({ ...pack, isAskedFor: true })),
    };
    expect(machineOf(other)).toEqual(machineOf(job));
    expect(machineOf({ ...job, vehicle: { ...job.vehicle, kerb_kg: 1 } })).not.toEqual(machineOf(job));
  });

  it("have the winter with the age but no factor of it, and nothing where the job has no conditions", () => {
    const { conditions: _conditions, ...plain } = job;
    expect(climateOf(plain)).toEqual({});
    expect(climateOf(job)).toMatchObject({
      conditions: job.conditions,
      allowance: { winter_ratio: 1, aged_frac: job.allowance.aged_frac },
    });
  });

  it("have the year without its list of days, which changes no drive", () => {
    expect(climateOfYear({ ...inventedYear, daysDriven_km: [12, 30] })).toEqual(inventedYear);
  });

  it("have the roads of the week's trips alone, and a road of their own where it has none", () => {
    const van = demoJob(demos.findIndex(({ id }) => id === "bakery-van"));
    const named = new Set(van.week?.days.flatMap(({ trips }) => trips.map(({ road }) => road)));
    expect(new Set(weekOf(van).roads.map(({ id }) => id))).toEqual(named);
    expect(weekOf(job).roads.map(({ id }) => id)).toEqual(["none"]);
  });

  it("have prices where there are some", () => {
    const { costs: _costs, currency: _currency, ...free } = job;
    expect(moneyOf(free)).toEqual({});
    expect(moneyOf(job)).toEqual({ costs: job.costs, currency: job.currency });
  });

  it("have of the origins those that are open and move the car, and the allowance where that is among them", () => {
    const origins = {
      "vehicle.kerb_kg": { from: "measured" as const },
      "vehicle.load_kg": { from: "typed" as const },
      "vehicle.drag": { from: "typed" as const, plusMinus_frac: 0.1 },
      usualDay_km: { from: "guessed" as const },
      "motor.mass_kg": { from: "guessed" as const, note: "by eye" },
    };
    expect(doubtsOf({ ...job, origins })).toEqual({
      origins: { "vehicle.drag": { from: "typed", plusMinus_frac: 0.1 }, "motor.mass_kg": { from: "guessed" } },
    });
    const aged = { "allowance.aged_frac": { from: "guessed" as const } };
    expect(doubtsOf({ ...job, origins: aged })).toEqual({ origins: aged, allowance: job.allowance });
  });
});
