import { randomNormal } from "d3-random";
import { describe, expect, it } from "vitest";
import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import { climbOf } from "../../sim/route/clean/heights/cleanHeights.ts";
import { makeLog, makeTruth, seeded } from "../logs/logMaker.ts";
import { madeLog } from "../logs/madeFixes.ts";
import { wavyElevation_m } from "../logs/routeAccuracy.ts";

/** Climb of 10 km at 1 Hz after cleaning, with 3 m of white noise on every height. */
function climbFound_m(speed_kmh: number, height: (distance_m: number) => number, seed: number) {
  const speed_mps = speed_kmh / 3.6;
  const truth = makeTruth(new Array(Math.round(10_000 / speed_mps) + 1).fill(speed_mps), seed, height);
  const noise = randomNormal.source(seeded(seed + 50))(0, 3);
  const rows = makeLog(truth, {
    seed,
    sampling_s: 1,
    position_m: 3,
    white_m: 0.5,
    speed_mps: 0.15,
    elevation_m: 0,
    hasMultipath: false,
    hasDropouts: false,
  });
  const noisy = rows.map((row) => ({ ...row, elevation_m: row.elevation_m + noise() }));
  return {
    raw_m: climbOf(Float64Array.from(noisy, ({ elevation_m }) => elevation_m)),
    true_m: climbOf(truth.elevation_m),
    found_m: climbOf(cleanLog(madeLog(noisy)).series.elevation_m),
  };
}

const cases = [30, 50, 80].flatMap((speed_kmh) => [1].map((seed) => ({ speed_kmh, seed })));

// A receiver's height scatters by metres, and summing that as climb makes a mountain of a plain: the criteria here are our
// own, 20 m on a flat road of 10 km, and 15 % on one that climbs 210 m in waves of 30 m.
describe("heights with 3 m of white noise", () => {
  it.each(cases)("add at most 20 m of climb to a flat 10 km at $speed_kmh km/h, seed $seed", ({ speed_kmh, seed }) => {
    const { raw_m, found_m } = climbFound_m(speed_kmh, () => 100, seed);
    expect(raw_m).toBeGreaterThan(500); // what would be counted without smoothing
    expect(found_m).toBeLessThan(20);
  });

  it.each(cases)("leave the climb of waves of 30 m at $speed_kmh km/h, seed $seed", ({ speed_kmh, seed }) => {
    const { true_m, found_m } = climbFound_m(speed_kmh, wavyElevation_m, seed);
    expect(true_m).toBeGreaterThan(195);
    expect(Math.abs(found_m / true_m - 1)).toBeLessThan(0.15);
  });
});
