import { describe, expect, it } from "vitest";
import { logCases, recovered } from "../logs/logCases.ts";

// Logs of all three makers, thinned: what a client's telephone or tracker writes that looks up every few seconds only. Tolerances are
// those asked of the cleaning for the energy at the wheel, the mean over the eight drives; a single thin log may be off by more, and says so.
// Seeds are none of those by which priors and bands were set; tests/bench/logEnergyTable.ts has many.
const SEED = 301;
const ENERGY_frac = { 5: 0.05, 10: 0.08, 30: 0.15 } as const;
const kinds = [
  { every_s: 5, hasSpeed: false },
  { every_s: 10, hasSpeed: true },
  { every_s: 30, hasSpeed: false },
] as const;

describe.each(kinds)("eight logs of a fix every $every_s s, speeds recorded: $hasSpeed", ({ every_s, hasSpeed }) => {
  const found = logCases(SEED, every_s, hasSpeed).map(recovered);
  const mean = (of: (one: (typeof found)[number]) => number) =>
    found.reduce((sum, one) => sum + of(one), 0) / found.length;

  it("keep their energy", () => {
    expect(mean(({ energy_frac }) => Math.abs(energy_frac))).toBeLessThan(ENERGY_frac[every_s]);
  });

  // Of eight bands of 80 % five or more hold in 94 of 100 cases (binomial distribution).
  it("lie within the band of 80 % that each states, most of them: energy and distance", () => {
    expect(found.filter(({ isInBand }) => isInBand).length).toBeGreaterThanOrEqual(5);
    expect(found.filter(({ isDistanceInBand }) => isDistanceInBand).length).toBeGreaterThanOrEqual(5);
  });

  it("say that band in words", () => {
    for (const { log } of found) {
      const [, below, above] = /known to (?:±|-(\d+) to \+)(\d+) %/.exec(log.quality.samplingNote ?? "") ?? [];
      const { low, high } = log.spread?.energy_ratio ?? { low: Number.NaN, high: Number.NaN };
      expect(Number(above)).toBe(Math.round(100 * (high - 1)));
      expect(Number(below ?? above)).toBe(Math.round(100 * (1 - low)));
      expect(log.quality.samplingNote).toMatch(/driven as (UDDS|NYCC|HWFET|US06|WLTC class 3b) is at such speeds/);
    }
  });
});
