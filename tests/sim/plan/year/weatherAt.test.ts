import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { weatherAt, winterShare } from "../../../../sim/plan/year/weatherAt.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

/** The invented job's own weather at 20 degC, and a winter of this sort. */
function jobOf(winter?: object, environment: object = {}): Job {
  const job = inventedJob();
  return readJob({
    ...job,
    environment: { ...job.environment, temperature_degC: 20, ...environment },
    ...(winter && { conditions: { winter } }),
  });
}
const cold = { temperature_degC: -10 };
const weather = (job: Job, temperature_degC: number) => weatherAt(job, temperature_degC).weather;

describe("how far a day is on its way to winter", () => {
  it("is by its temperature, and beyond neither end", () => {
    const job = jobOf(cold);
    expect([30, 20, 5, -10, -25].map((at_degC) => winterShare(job, at_degC))).toEqual([0, 0, 0.5, 1, 1]);
  });
  it("is towards 0 degC where winter is a factor", () => {
    expect([20, 15, 0, -5].map((at_degC) => winterShare(jobOf(), at_degC))).toEqual([0, 0.25, 1, 1]);
  });
  it("is all of it within a kelvin where the job's own weather is as cold as its winter, or colder", () => {
    const job = jobOf({ temperature_degC: 20 });
    expect([21, 20.5, 20].map((at_degC) => winterShare(job, at_degC))).toEqual([0, 0.5, 1]);
    expect(winterShare(jobOf({ temperature_degC: 25 }), 25.5)).toBe(0.5);
  });
});

describe("the weather of a day", () => {
  const winter = {
    temperature_degC: -10,
    drag_ratio: 1.2,
    rolling_ratio: 1.4,
    usable_frac: 0.8,
    resistance_ratio: 3,
    wind_kmh: 40,
  };
  it("is the job's own at its temperature, and winter's at winter's", () => {
    const job = jobOf(winter);
    expect(weather(job, 20)).toMatchObject({
      temperature_degC: 20,
      drag_ratio: 1,
      rolling_ratio: 1,
      usable_frac: 1,
      resistance_ratio: 1,
      wind_kmh: 0,
    });
    expect(weather(job, -10)).toMatchObject(winter);
    expect(weatherAt(job, -10).winter_frac).toBe(1);
  });
  it("has everything half-way where its temperature is, and beyond winter the temperature alone goes on", () => {
    const job = jobOf(winter);
    expect(weather(job, 5)).toMatchObject({
      temperature_degC: 5,
      wind_kmh: 20,
      resistance_ratio: 2,
      drag_ratio: expect.closeTo(1.1, 12),
      rolling_ratio: expect.closeTo(1.2, 12),
      usable_frac: expect.closeTo(0.9, 12),
    });
    expect(weatherAt(job, 5).winter_frac).toBe(0.5);
    expect(weather(job, -20)).toMatchObject({ ...winter, temperature_degC: -20 });
  });
  it("is nothing where winter is a factor", () => {
    expect(weatherAt(jobOf(), 5)).toEqual({});
  });
});

describe("the cells of a day", () => {
  it("are as warm as the air where neither weather says otherwise", () => {
    expect(weather(jobOf(cold), 5)?.pack_degC).toBe(5);
  });
  it("are warmer by as much as in either weather, in between by a share of both", () => {
    // 8 K above the air in winter's garage; 2 K above it in the job's own weather.
    const garaged = jobOf({ ...cold, pack_degC: -2 }, { pack_degC: 22 });
    expect(weather(garaged, -10)?.pack_degC).toBeCloseTo(-2, 9);
    expect(weather(garaged, 20)?.pack_degC).toBeCloseTo(22, 9);
    expect(weather(garaged, 5)?.pack_degC).toBeCloseTo(5 + 5, 9);
    expect(weather(jobOf({ ...cold, pack_degC: -2 }), 5)?.pack_degC).toBeCloseTo(5 + 4, 9);
  });
});

describe("the heating of a day", () => {
  const thermostat = { kind: "thermostat", power_kW: 2, cabin_degC: 18, capacity_kJpK: 50, loss_WpK: 60 };
  it("is turned up from the air's temperature to what is wanted in winter", () => {
    const job = jobOf({ ...cold, heat: thermostat });
    const cabin = (at_degC: number) => {
      const heat = weather(job, at_degC)?.heat;
      return heat?.kind === "thermostat" ? heat.cabin_degC : undefined;
    };
    // Half-way from 5 to 18.
    expect([cabin(20), cabin(5), cabin(-10), cabin(-20)]).toEqual([20, 11.5, 18, 18]);
  });
  it("without a thermostat stays what it is", () => {
    expect(weather(jobOf({ ...cold, heat: { kind: "byHour", power_kW: 1 } }), 5)?.heat).toEqual({
      kind: "byHour",
      power_kW: 1,
    });
  });
});
