import { describe, expect, it } from "vitest";
import { recover } from "../logs/routeAccuracy.ts";

// A standard cycle becomes a log of a receiver that is no gentler than receivers are: positions wander by 3 m (open) or 8 m
// (street) per axis with a time constant of 20 s, plus 0.5 m new in each fix; recorded speed is off by 0.15 m/s; the
// positions step 15 to 40 m aside for 5 to 20 s in every five minutes and drop out for 10 to 60 s in every ten; heights
// wander by 3 or 10 m over 60 s; the car parks for five minutes in the middle. The truth is known exactly.
//
// Tolerances are those asked of the cleaning: distance 1 %, energy at the wheel 3 % [GTR15, Annex 7, para 5].
const DISTANCE_frac = 0.01;
const ENERGY_frac = 0.03;
// One seed of each kind; tests/bench/routeAccuracyTable.ts has many.
const seeds = [2];
const logs = ["udds", "wltc-class-3b"].flatMap((cycle) =>
  [3, 8].flatMap((position_m) => seeds.map((seed) => ({ cycle, position_m, seed }))),
);
const spoiling = (position_m: number, seed: number, speed_mps: number | undefined) => ({
  seed,
  sampling_s: 1,
  position_m,
  white_m: 0.5,
  speed_mps,
  elevation_m: position_m === 3 ? 3 : 10,
  hasMultipath: true,
  hasDropouts: true,
});

// Stops are standing under 1 km/h [EU2016-427, Annex IIIA, point 6.8], of truth and result alike; within 5 % as asked of the cleaning.
const STOPS_frac = 0.05;

describe("noisy logs at 1 Hz with recorded speeds", () => {
  const recovered = logs.map((log) => ({
    ...log,
    found: recover(log.cycle, spoiling(log.position_m, log.seed, 0.15)),
  }));

  it.each(recovered)("of $cycle, $position_m m, seed $seed have the true distance and energy", ({ found }) => {
    expect(Math.abs(found.distance_frac)).toBeLessThan(DISTANCE_frac);
    expect(Math.abs(found.energy_frac)).toBeLessThan(ENERGY_frac);
  });

  it("have the true number of stops", () => {
    const sum = (of: "true" | "found") => recovered.reduce((before, { found }) => before + found.stops[of], 0);
    expect(Math.abs(sum("found") / sum("true") - 1)).toBeLessThan(STOPS_frac);
  });
});

describe("noisy logs at 1 Hz of positions alone", () => {
  // One of each cycle and one of each receiver.
  const some = logs.filter(({ cycle, position_m }) => (cycle === "udds") === (position_m === 8));
  const recovered = some.map((log) => ({
    ...log,
    found: recover(log.cycle, spoiling(log.position_m, log.seed, undefined)),
  }));

  it.each(recovered)("of $cycle, $position_m m, seed $seed have the true distance", ({ found }) => {
    expect(Math.abs(found.distance_frac)).toBeLessThan(DISTANCE_frac);
  });

  it("have the true energy on average", () => {
    const off = recovered.reduce((sum, { found }) => sum + Math.abs(found.energy_frac), 0) / recovered.length;
    expect(off).toBeLessThan(ENERGY_frac);
  });
});
