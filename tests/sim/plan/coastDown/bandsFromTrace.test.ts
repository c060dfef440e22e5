import { describe, expect, it } from "vitest";
import { bandsFromTraces, coastings } from "../../../../sim/plan/coastDown/bandsFromTrace.ts";
import { evaluateCoastDown } from "../../../../sim/vehicle/coastDown/evaluateCoastDown.ts";
import { traceOf } from "../../../support/bareCar.ts";

const standing_mps = Math.sqrt(180 / 0.55);
const rate = Math.sqrt(180 * 0.55) / 1442;
/** The worked coast-down from 100 km/h: v = v_s tan(atan(v0/v_s) - w t). */
const rolling_kmh = (time_s: number) =>
  3.6 * standing_mps * Math.tan(Math.atan(100 / 3.6 / standing_mps) - rate * time_s);

/** Up to 100 km/h, rolling freely for 120 s, then braking to rest, at 1 Hz. */
const drive = traceOf([
  ...Array.from({ length: 40 }, (_, i) => [i, 2.5 * i] as const),
  ...Array.from({ length: 121 }, (_, i) => [40 + i, rolling_kmh(i)] as const),
  ...[161, 162].map((time_s, i) => [time_s, rolling_kmh(120) * (0.5 - 0.5 * i)] as const),
]);

it("finds the stretch in which the car rolled freely, and no braking", () => {
  const [found, ...more] = coastings(drive);
  expect(more).toEqual([]);
  expect(drive.time_s[found.first]).toBe(40);
  expect(drive.time_s[found.last]).toBeGreaterThanOrEqual(158);
  expect(drive.time_s[found.last]).toBeLessThanOrEqual(161);
});

it("times the bands that it passes whole, so that the car's own law comes out", () => {
  const bands = bandsFromTraces([drive, drive]);
  expect(bands[0].high_mps).toBeCloseTo(95 / 3.6, 9);
  expect(bands[0].there_s).toHaveLength(2);
  const day = { mass_kg: 1400, rotating_ratio: 1.03, air_kgpm3: 1.189, air_K: 293.15 };
  const found = evaluateCoastDown(bands, { ...day, wind_mps: 0, gravity_mps2: 9.81, stopwatch_s: 0.2 }, 2);
  // Straight lines between samples a second apart miss a band's ends by under 10 ms of 8 s.
  expect(Math.abs((found?.f0_N.value ?? 0) / 180 - 1)).toBeLessThan(2e-3);
  expect(Math.abs((found?.f2_Npmps2.value ?? 0) / 0.55 - 1)).toBeLessThan(2e-3);
});

describe("finds none", () => {
  it.each([
    [
      "in braking",
      [
        [0, 100],
        [20, 0],
      ],
    ],
    [
      "in a lift of the foot",
      [
        [0, 60],
        [20, 45],
        [40, 60],
      ],
    ],
    [
      "in a steady drive",
      [
        [0, 50],
        [600, 50],
      ],
    ],
  ] as const)("%s", (_, rows) => {
    expect(coastings(traceOf(rows))).toEqual([]);
    expect(bandsFromTraces([traceOf(rows)])).toEqual([]);
  });
});
