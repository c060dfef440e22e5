import { describe, expect, it } from "vitest";
import { MPS_PER_KMH } from "../../../../shared/units.ts";
import { roadTrace } from "../../../../sim/index.ts";
import { characteristics } from "../../../../sim/trace/characteristics.ts";
import { fieldAt } from "../../../../web/editing/fieldTable/fieldAt.ts";
import { boughtOf, boughtPaths, withBought } from "../../../../web/notebook/start/alreadyBought.ts";
import { isDriveOpen, ownCar, withDrive } from "../../../../web/notebook/start/ownCar.ts";
import { peopleAboard, withPeople } from "../../../../web/notebook/start/people.ts";
import {
  heatingOf,
  heatings,
  meanSpeeds_kmh,
  winterRatio,
  withHeating,
} from "../../../../web/notebook/start/winterHeat.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";

const job = ownCar();
const [none, , small] = heatings;

describe("the winter of a first call", () => {
  it("takes each road at its cycle's mean speed", () => {
    for (const road of job.roads) {
      const { mean_mps } = characteristics(roadTrace(road, cycleTexts));
      expect(Math.abs(mean_mps / MPS_PER_KMH - meanSpeeds_kmh[road.id])).toBeLessThan(1);
    }
  });

  it("is by hand what the cold takes and the heater by the hour", () => {
    // 850 kg and 150 kg aboard, drag area of the saloon: 30 + 70 + 50 CdA Wh/km; 1500 W at 31 km/h are 48.4 Wh/km more.
    const { roadLoad } = job.vehicle;
    const dragArea_m2 = roadLoad.kind === "physical" ? roadLoad.drag_coeff * roadLoad.frontalArea_m2 : Number.NaN;
    const byHand = (1.1 + 1500 / 31 / (30 + 0.07 * 1000 + 50 * dragArea_m2)) / 0.9;
    expect(winterRatio(job, "town", small)).toBeCloseTo(byHand, 2);
    expect(winterRatio(job, "town", small)).toBeGreaterThan(winterRatio(job, "country", small));
    expect(winterRatio(job, "town", none)).toBeCloseTo(1.1 / 0.9, 2);
  });

  it("is remembered by what it was reckoned from, with a band", () => {
    expect(heatingOf(job)).toBeUndefined();
    const heated = withHeating(job, "town", small);
    expect(heatingOf(heated)).toBe(small);
    expect(heated.origins["allowance.winter_ratio"]).toMatchObject({ from: "usual", plusMinus_frac: 0.15 });
  });
});

describe("people aboard", () => {
  it("weigh 75 kg each, until somebody says what the load weighs", () => {
    const three = withPeople(job, 3);
    expect(three.vehicle.load_kg).toBe(225);
    expect(peopleAboard(three)).toBe("3");
    const weighed = { ...three, origins: { ...three.origins, "vehicle.load_kg": { from: "measured" as const } } };
    expect(peopleAboard(weighed)).toBeUndefined();
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
