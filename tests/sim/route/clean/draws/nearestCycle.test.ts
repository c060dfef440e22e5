import { describe, expect, it } from "vitest";
import { cycleAccelerations_mps2 } from "../../../../../sim/route/clean/draws/drivingPrior.ts";
import { accelerationsOf, cycleDrivings, nearestCycle } from "../../../../../sim/route/clean/draws/nearestCycle.ts";
import { cycleSpeeds_mps } from "../../../../support/cycleSpeeds.ts";

const ids: Readonly<Record<string, string>> = {
  UDDS: "udds",
  NYCC: "nycc",
  HWFET: "hwfet",
  US06: "us06",
  "WLTC class 3b": "wltc-class-3b",
};
const LEAST_ROWS = 20;
const MEAN_s = 30;
const bandOf = (speed_mps: number) => Math.min(6, Math.floor(speed_mps / 4));

describe.each(cycleDrivings)("$name as a driver", ({ name, accelerations_mps2, wayShares_frac }) => {
  const speeds = cycleSpeeds_mps(ids[name]);

  it("has the accelerations of its table, band by band", () => {
    const squares = new Float64Array(7);
    const rows = new Float64Array(7);
    for (let i = 1; i < speeds.length; i++) {
      const mean_mps = 0.5 * (speeds[i] + speeds[i - 1]);
      if (mean_mps === 0) continue;
      squares[bandOf(mean_mps)] += (speeds[i] - speeds[i - 1]) ** 2;
      rows[bandOf(mean_mps)]++;
    }
    accelerations_mps2.forEach((each, band) => {
      if (rows[band] < LEAST_ROWS) expect(each).toBeNaN();
      else expect(Math.abs(Math.sqrt(squares[band] / rows[band]) - each)).toBeLessThan(0.006); // written to hundredths
    });
  });

  it("makes its way at the speeds of its table", () => {
    const way_m = new Float64Array(7);
    for (let i = 0; i + MEAN_s < speeds.length; i++) {
      const within = speeds.slice(i, i + MEAN_s + 1);
      const far_m = within.reduce((sum, each) => sum + each, 0) - 0.5 * (within[0] + within[MEAN_s]);
      way_m[bandOf(far_m / MEAN_s)] += far_m;
    }
    const whole_m = way_m.reduce((sum, each) => sum + each, 0);
    wayShares_frac.forEach((each, band) => {
      expect(Math.abs(way_m[band] / whole_m - each)).toBeLessThan(0.006);
    });
  });

  it("is nearest to itself, also where it is known every 30 s only", () => {
    const time_s = Float64Array.from(speeds, (_, i) => i);
    expect(nearestCycle(time_s, Float64Array.from(speeds)).name).toBe(name);
    const thin = Float64Array.from(speeds, (_, i) => {
      const from = Math.min(speeds.length - MEAN_s, i - (i % MEAN_s));
      return speeds.slice(from, from + MEAN_s).reduce((sum, each) => sum + each, 0) / MEAN_s;
    });
    expect(nearestCycle(time_s, thin).name).toBe(name);
  });
});

it("where a cycle is too seldom at a speed, all of them are taken", () => {
  const nycc = cycleDrivings[1];
  expect(accelerationsOf(nycc)).toEqual([0.81, 0.9, 0.69, ...cycleAccelerations_mps2.slice(3)]);
});
