import { describe, expect, it } from "vitest";
import { withPath } from "../../../../shared/job/path.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { heaters, usualWinter } from "../../../../shared/parts/heaters.ts";
import { roadTrace } from "../../../../sim/index.ts";
import { driveInConditions } from "../../../../sim/plan/conditions/driveConditions.ts";
import { driveCandidate } from "../../../../sim/plan/drive/driveCandidate.ts";
import { fieldAt } from "../../../../web/editing/fieldTable/fieldAt.ts";
import { boughtOf, boughtPaths, withBought } from "../../../../web/notebook/start/alreadyBought.ts";
import { isDriveOpen, ownCar, withDrive } from "../../../../web/notebook/start/ownCar.ts";
import { heatingOf, withHeating } from "../../../../web/notebook/start/winterHeat.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";

const job = ownCar();

describe("the winter of a first call", () => {
  it("is driven with the heater that was chosen, and remembered by it", () => {
    const [none, , small, large] = heaters;
    expect(heatingOf(job)).toBe(small);
    expect(heatingOf(withHeating(job, none))).toBe(none);
    const warm = withHeating(job, large);
    expect(heatingOf(warm)).toBe(large);
    expect(warm.origins["conditions.winter.heat.loss_WpK"]).toEqual({ from: "usual" });
    expect(readJob(warm)).toEqual(warm);
  });

  it("stands in for the factor of a job that has one, and keeps what was said of a winter beside the heater", () => {
    const { conditions: _conditions, ...byFactor } = job;
    expect(heatingOf(byFactor)).toBeUndefined();
    const driven = withHeating(byFactor, heaters[1]);
    expect(driven.conditions?.winter).toEqual(usualWinter(heaters[1].heat));
    const cold = withHeating(withPath(driven, "conditions.winter.temperature_degC", -12), heaters[2]);
    expect(cold.conditions?.winter).toMatchObject({ temperature_degC: -12, heat: heaters[2].heat });
  });

  it("asks more of a slow road than of a fast one", () => {
    const ratio = (id: string) => {
      const road = job.roads.find((each) => each.id === id);
      if (!road) throw new Error(`no road ${id}`);
      const trace = roadTrace(road, cycleTexts);
      const [pack] = job.packs;
      const { winter } = driveInConditions(job, pack, trace);
      return driveCandidate(job, pack, trace, false).range_km / (winter?.range_km ?? 0);
    };
    expect(ratio("town")).toBeGreaterThan(ratio("country") + 0.1);
  });
});

describe("what is already bought", () => {
  it("stays when the car's weight asks for another size", () => {
    expect(boughtOf(job)).toBe("none");
    expect(isDriveOpen(job)).toBe(true);
    for (const bought of ["motor", "cells", "both"] as const) {
      const kept = withBought(job, bought);
      expect(boughtOf(kept)).toBe(bought);
      expect(isDriveOpen(kept)).toBe(false);
      for (const path of boughtPaths(kept, bought)) expect(fieldAt(path).type).toBe("quantity");
    }
  });

  it("is open again when it was a slip", () => {
    const again = withBought(withBought(job, "both"), "none");
    expect(isDriveOpen(again)).toBe(true);
    expect(withDrive(again).motor).toEqual(job.motor);
  });
});
