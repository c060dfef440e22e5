import { describe, expect, it } from "vitest";
import { coastTime_s, type SlowingForce } from "../../../../sim/vehicle/coastDown/coastTime.ts";
import { fitCoastDown, type TimedBand } from "../../../../sim/vehicle/coastDown/fitCoastDown.ts";

const MASS_kg = 1450;
const edges_mps = [34, 30, 25, 21, 16, 12, 8, 4];

/** Times that a law makes, one second of error each where not said otherwise. */
function timed(force: SlowingForce, sigma_s = 1): TimedBand[] {
  return edges_mps.slice(1).map((low_mps, i) => {
    const high_mps = edges_mps[i];
    return { high_mps, low_mps, time_s: coastTime_s(force, MASS_kg, high_mps, low_mps), sigma_s };
  });
}

const square: SlowingForce = { f0_N: 150, f1_Npmps: 0, f2_Npmps2: 0.6 };
const full: SlowingForce = { f0_N: 150, f1_Npmps: 3, f2_Npmps2: 0.5 };

describe("a law fitted to times", () => {
  it("is the law of two terms that made them", () => {
    const fit = fitCoastDown(timed(square), MASS_kg, 2);
    expect(fit?.f0_N).toBeCloseTo(150, 7);
    expect(fit?.f1_Npmps).toBe(0);
    expect(fit?.f2_Npmps2).toBeCloseTo(0.6, 9);
    expect(fit?.residual_s).toBeLessThan(1e-7);
  });

  it("is the law of three terms that made them, wide as the bands are", () => {
    const wide = [timed(full)[0], ...timed(full).slice(2)];
    const fit = fitCoastDown(wide, MASS_kg, 3);
    expect(fit?.f0_N).toBeCloseTo(150, 5);
    expect(fit?.f1_Npmps).toBeCloseTo(3, 6);
    expect(fit?.f2_Npmps2).toBeCloseTo(0.5, 8);
  });

  it("is found with as many bands as terms, of which nothing is left over, and not with fewer", () => {
    const bands = timed(square);
    const two = fitCoastDown([bands[0], bands[5]], MASS_kg, 2);
    expect(two?.f2_Npmps2).toBeCloseTo(0.6, 9);
    for (const other of bands.slice(1)) {
      const late = { ...other, time_s: 1.013 * other.time_s };
      expect(fitCoastDown([bands[0], late], MASS_kg, 2)?.residual_s).toBe(0);
    }
    expect(fitCoastDown([], MASS_kg, 2)).toBeUndefined();
    expect(fitCoastDown(bands.slice(0, 1), MASS_kg, 2)).toBeUndefined();
    expect(fitCoastDown(bands.slice(0, 2), MASS_kg, 3)).toBeUndefined();
  });

  it("leaves the root mean square of what it misses", () => {
    const bands = timed({ f0_N: 200, f1_Npmps: 0, f2_Npmps2: 0 }).map((band, i) => ({
      ...band,
      time_s: band.time_s + (i % 2 === 0 ? 1 : -1),
    }));
    const fit = fitCoastDown(bands, MASS_kg, 2);
    if (!fit) throw new Error("no law was found");
    const missed = bands.map((band) => band.time_s - coastTime_s(fit, MASS_kg, band.high_mps, band.low_mps));
    expect(fit.residual_s).toBeCloseTo(Math.hypot(...missed) / Math.sqrt(bands.length), 9);
    expect(fit.residual_s).toBeGreaterThan(0.5);
  });

  it("follows the surer of two times that disagree", () => {
    const bands = timed(square);
    const late = { ...bands[6], time_s: 1.2 * bands[6].time_s };
    const trusted = fitCoastDown([...bands.slice(0, 6), { ...late, sigma_s: 0.01 }], MASS_kg, 2);
    const doubted = fitCoastDown([...bands.slice(0, 6), { ...late, sigma_s: 100 }], MASS_kg, 2);
    expect(doubted?.f0_N).toBeCloseTo(150, 1);
    expect(trusted?.f0_N).toBeLessThan(140);
  });

  it("is as unsure as its times: one steady force, known by one band", () => {
    // t = m dv / f, so that a part of the time is the same part of the force where the square term has none of it.
    const bands = timed({ f0_N: 200, f1_Npmps: 0, f2_Npmps2: 0 }, 0.5);
    const fit = fitCoastDown(bands, MASS_kg, 2);
    const twice = fitCoastDown(
      bands.map((band) => ({ ...band, sigma_s: 1 })),
      MASS_kg,
      2,
    );
    if (!fit || !twice) throw new Error("no law was found");
    for (const [j, row] of fit.covariance.entries())
      for (const [k, value] of row.entries()) expect(twice.covariance[j][k] / value).toBeCloseTo(4, 5);
    // By the normal equations of the linearised times: d t / d f = -m ∫ (1, v²) dv / f².
    const slopes = bands.map(({ high_mps, low_mps }) => [
      -(MASS_kg * (high_mps - low_mps)) / 200 ** 2 / 0.5,
      -(MASS_kg * (high_mps ** 3 - low_mps ** 3)) / 3 / 200 ** 2 / 0.5,
    ]);
    const sum = (j: number, k: number) => slopes.reduce((total, slope) => total + slope[j] * slope[k], 0);
    const determinant = sum(0, 0) * sum(1, 1) - sum(0, 1) ** 2;
    expect(fit.covariance[0][0] / (sum(1, 1) / determinant)).toBeCloseTo(1, 5);
    expect(fit.covariance[1][1] / (sum(0, 0) / determinant)).toBeCloseTo(1, 5);
    expect(fit.covariance[0][1] / (-sum(0, 1) / determinant)).toBeCloseTo(1, 5);
  });

  it("is found from a start far off: a car held by air alone, its bands a tenth and ten times as fast", () => {
    const air = { f0_N: 1, f1_Npmps: 0, f2_Npmps2: 0.9 };
    const bands = [
      [40, 38],
      [4, 3.8],
      [2, 1],
    ].map(([high_mps, low_mps]) => {
      const time_s = coastTime_s(air, MASS_kg, high_mps, low_mps);
      return { high_mps, low_mps, time_s, sigma_s: 0.1 };
    });
    for (const order of [bands, bands.toReversed()]) {
      const fit = fitCoastDown(order, MASS_kg, 2);
      expect(fit?.f0_N).toBeCloseTo(1, 6);
      expect(fit?.f2_Npmps2).toBeCloseTo(0.9, 7);
    }
  });

  it("is none of one band timed twice", () => {
    const [band] = timed(square);
    expect(fitCoastDown([band, { ...band, time_s: band.time_s + 1 }], MASS_kg, 2)).toBeUndefined();
  });

  it("is none where the times would need a push", () => {
    const bands = timed(square).map((band) => ({ ...band, time_s: -band.time_s }));
    expect(fitCoastDown(bands, MASS_kg, 2)).toBeUndefined();
  });
});
