import { describe, expect, it } from "vitest";
import { logCases, type Recovered, recovered } from "../logs/logCases.ts";

// Logs of all three makers, dense and thinned: what a client's telephone or tracker writes. Tolerances are those asked of the cleaning for the
// energy at the wheel with its hills, the mean over the drives; a single log may be off by more, and says so. Each spacing has one drive of each of the
// makers' kinds, by turns with the good receiver and the bad, in town and in the country. Seeds are none of those
// by which priors and bands were set; tests/bench/logEnergyTable.ts has many, and the spacings between.
const SEED = 301;
const kinds = [
  { every_s: 1, hasSpeed: true, energy_frac: 0.02 },
  { every_s: 5, hasSpeed: false, energy_frac: 0.05 },
  { every_s: 30, hasSpeed: false, energy_frac: 0.15 },
] as const;
/** Distance at 1 Hz, as asked. */
const DISTANCE_frac = 0.01;

const rows = kinds.map((kind, row) => ({
  ...kind,
  found: logCases(SEED, kind.every_s, kind.hasSpeed)
    .filter((_, i) => i % 2 === row % 2)
    .map(recovered),
}));
const all = rows.flatMap(({ found }) => found);

describe.each(rows)("four logs of a fix every $every_s s, speeds recorded: $hasSpeed", ({ energy_frac, found }) => {
  it("keep their energy", () => {
    expect(meanOff(found, (one) => one.energy_frac)).toBeLessThan(energy_frac);
  });
});

// Of twelve bands of 80 % eight or more hold in 93 of 100 cases (binomial distribution).
it.each([
  ["energy", (one: Recovered) => one.isInBand],
  ["distance", (one: Recovered) => one.isDistanceInBand],
  ["stops", (one: Recovered) => one.areStopsInBand],
] as const)("the band of 80 %% that a log states of its %s holds the truth in most of them", (_, isHeld) => {
  expect(all.filter(isHeld).length).toBeGreaterThanOrEqual(8);
});

it.each(rows.filter(({ every_s }) => every_s === 1))(
  "each log of a fix a second has the true distance",
  ({ found }) => {
    for (const { distance_frac } of found) expect(Math.abs(distance_frac)).toBeLessThan(DISTANCE_frac);
  },
);

it.each(rows.filter(({ every_s }) => every_s > 1))(
  "a thin log says its band in words, every $every_s s",
  ({ found }) => {
    for (const { log } of found) {
      const [, below, above] = /known to (?:±|-(\d+) to \+)(\d+) %/.exec(log.quality.samplingNote ?? "") ?? [];
      const { low, high } = log.spread?.energy_ratio ?? { low: Number.NaN, high: Number.NaN };
      expect(Number(above)).toBe(Math.round(100 * (high - 1)));
      expect(Number(below ?? above)).toBe(Math.round(100 * (1 - low)));
      expect(log.quality.samplingNote).toMatch(/driven as (UDDS|NYCC|HWFET|US06|WLTC class 3b) is at such speeds/);
    }
  },
);

/** Mean of how far logs are off, whichever way. */
function meanOff(found: readonly Recovered[], of: (one: Recovered) => number): number {
  return found.reduce((sum, one) => sum + Math.abs(of(one)), 0) / found.length;
}
