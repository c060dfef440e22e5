import { describe, expect, it } from "vitest";
import { recoverWinding } from "../logs/recoverWinding.ts";

// A second maker of logs that the cleaning was not made with: roads of bends and corners taken at up to 2 m/s2 sideways,
// driven as they allow, faults at random times. Tolerances are those asked of the cleaning: distance 1 %, energy at the
// wheel 3 % [GTR15, Annex 7, para 5], in four logs of five, since a minute without signal on a winding road can hide more.
const GREAT_MAJORITY_frac = 0.8;
// Stops are standing under 1 km/h [EU2016-427, Annex IIIA, point 6.8], of truth and result alike.
const STOPS_frac = 0.05;
// One seed of each kind; tests/bench/windingAccuracyTable.ts has many.
const seeds = [1];
const kinds = (["town", "hills"] as const).flatMap((country) => [3, 8].map((position_m) => ({ country, position_m })));

describe("logs of winding roads at 1 Hz with recorded speeds", () => {
  const found = kinds.flatMap(({ country, position_m }) =>
    seeds.map((seed) =>
      recoverWinding(country, { seed, position_m, speed_mps: 0.15, elevation_m: position_m === 3 ? 3 : 10 }),
    ),
  );
  const share = (isGood: (each: (typeof found)[number]) => boolean) => found.filter(isGood).length / found.length;
  const mean = (of: (each: (typeof found)[number]) => number) =>
    found.reduce((sum, each) => sum + of(each), 0) / found.length;

  it("have the true distance and energy", () => {
    expect(share(({ distance_frac }) => Math.abs(distance_frac) < 0.01)).toBeGreaterThanOrEqual(GREAT_MAJORITY_frac);
    expect(share(({ level_frac }) => Math.abs(level_frac) < 0.03)).toBeGreaterThanOrEqual(GREAT_MAJORITY_frac);
    // A car that is noisy where it should be calm comes out high on every road.
    expect(Math.abs(mean(({ level_frac }) => level_frac))).toBeLessThan(0.02);
  });

  it("have the true number of stops", () => {
    expect(Math.abs(mean(({ stops }) => stops.found) / mean(({ stops }) => stops.true) - 1)).toBeLessThan(STOPS_frac);
  });
});
