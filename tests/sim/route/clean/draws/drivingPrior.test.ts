import { median } from "simple-statistics";
import { describe, expect, it } from "vitest";
import {
  ACCELERATION_LASTS_s,
  cycleAccelerations_mps2,
  STANDSTILL_s,
  usualAcceleration_mps2,
} from "../../../../../sim/route/clean/draws/drivingPrior.ts";
import { cycleSpeeds_mps } from "../../../../support/cycleSpeeds.ts";

const cycles = ["udds", "nycc", "hwfet", "us06", "wltc-class-3b"];
const BAND_mps = 4;
const LEAST_ROWS = 5;

/** Acceleration from row to row, one a second, with the mean speed over it. */
const accelerations = (id: string) => {
  const speed_mps = cycleSpeeds_mps(id);
  return speed_mps.slice(1).map((each_mps, i) => ({
    a_mps2: each_mps - speed_mps[i],
    mean_mps: 0.5 * (each_mps + speed_mps[i]),
  }));
};

/** Root mean square of a cycle's acceleration while moving, in a band of speed. */
function spreadIn(id: string, band: number): number | undefined {
  const within = accelerations(id).filter(
    ({ mean_mps }) =>
      mean_mps > 0 && Math.min(cycleAccelerations_mps2.length - 1, Math.floor(mean_mps / BAND_mps)) === band,
  );
  if (within.length < LEAST_ROWS) return undefined;
  return Math.sqrt(within.reduce((sum, { a_mps2 }) => sum + a_mps2 ** 2, 0) / within.length);
}

describe("the spread of acceleration that is taken for a driver nobody knows", () => {
  it.each([0, 1, 2, 3, 4, 5])("is in band %d the median over the published cycles", (band) => {
    const found = cycles.flatMap((id) => spreadIn(id, band) ?? []);
    expect(Math.abs(median(found) - cycleAccelerations_mps2[band])).toBeLessThan(0.01); // written to hundredths
  });

  it("is held at speed, where the cycles would have it fall further", () => {
    const fastest = median(cycles.flatMap((id) => spreadIn(id, 6) ?? []));
    expect(fastest).toBeCloseTo(0.2, 2);
    expect(cycleAccelerations_mps2[6]).toBe(cycleAccelerations_mps2[5]);
  });

  it("goes straight from the middle of one band to the next, and stays at the ends", () => {
    expect(usualAcceleration_mps2(0)).toBe(cycleAccelerations_mps2[0]);
    expect(usualAcceleration_mps2(6)).toBe(cycleAccelerations_mps2[1]);
    expect(usualAcceleration_mps2(8)).toBeCloseTo(0.5 * (cycleAccelerations_mps2[1] + cycleAccelerations_mps2[2]), 12);
    expect(usualAcceleration_mps2(50)).toBe(cycleAccelerations_mps2[6]);
  });
});

describe("how long an acceleration lasts", () => {
  const correlation = (id: string, lag_s: number) => {
    const all = accelerations(id).map(({ a_mps2 }) => a_mps2);
    const at = (lag: number) => all.reduce((sum, each, i) => sum + each * (all[i + lag] ?? 0), 0);
    return at(lag_s) / at(0);
  };

  // By the Wiener-Khinchin theorem the correlation is the spectrum told by time. The two cycles the constant was taken from are held to 0.11.
  it.each([1, 2, 4, 6])("is that of UDDS and of WLTC class 3b at %d s", (lag_s) => {
    const t = lag_s / ACCELERATION_LASTS_s;
    const modelled = (1 + t) * Math.exp(-t);
    for (const id of ["udds", "wltc-class-3b"]) expect(Math.abs(correlation(id, lag_s) - modelled)).toBeLessThan(0.11);
  });

  it("lies between the liveliest cycle and the calmest", () => {
    const t = 4 / ACCELERATION_LASTS_s;
    const modelled = (1 + t) * Math.exp(-t);
    const all = cycles.map((id) => correlation(id, 4));
    expect(Math.min(...all)).toBeLessThan(modelled);
    expect(Math.max(...all)).toBeGreaterThan(modelled);
  });
});

it("a standstill lasts about as long as in the cycles of towns", () => {
  const stand_s = (id: string) => {
    const speeds = cycleSpeeds_mps(id);
    const rows = speeds.filter((each_mps) => each_mps === 0).length;
    const stands = speeds.filter((each_mps, i) => each_mps === 0 && speeds[i - 1] !== 0).length;
    return rows / stands + 1; // from the last row that moves to the first
  };
  expect(stand_s("udds")).toBeLessThan(STANDSTILL_s);
  expect(stand_s("wltc-class-3b")).toBeGreaterThan(STANDSTILL_s);
});
