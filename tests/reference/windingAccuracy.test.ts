import { describe, expect, it } from "vitest";
import { recoverWinding } from "../logs/recoverWinding.ts";

// A second maker of logs that the cleaning was not made with: roads of bends and corners taken at up to 2 m/s2 sideways,
// driven as they allow, faults at random times. Tolerances are those asked of the cleaning: distance 1 %, energy at the
// wheel 3 % [GTR15, Annex 7, para 5], in four logs of five, since a minute without signal on a winding road can hide more.
const GREAT_MAJORITY_frac = 0.8;
const seeds = [1, 2, 3, 4, 5];

describe("logs of a winding road at 1 Hz with recorded speeds", () => {
  it.each([
    ["town", 3],
    ["town", 8],
    ["hills", 3],
    ["hills", 8],
  ] as const)("of %s with positions off by %d m have the true distance and energy", (country, position_m) => {
    const found = seeds.map((seed) =>
      recoverWinding(country, { seed, position_m, speed_mps: 0.15, elevation_m: position_m === 3 ? 3 : 10 }),
    );
    const share = (isGood: (each: (typeof found)[number]) => boolean) => found.filter(isGood).length / found.length;
    expect(share(({ distance_frac }) => Math.abs(distance_frac) < 0.01)).toBeGreaterThanOrEqual(GREAT_MAJORITY_frac);
    expect(share(({ level_frac }) => Math.abs(level_frac) < 0.03)).toBeGreaterThanOrEqual(GREAT_MAJORITY_frac);
    // A car that is noisy where it should be calm comes out high on every road.
    expect(Math.abs(found.reduce((sum, { level_frac }) => sum + level_frac, 0) / found.length)).toBeLessThan(0.02);
  });
});
