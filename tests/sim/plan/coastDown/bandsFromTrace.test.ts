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

describe("bands of coast-downs that are straight lines", () => {
  // 1 m/s² from 40 m/s, sampled every 3 s: bands of 10 km/h take 2.778 s each, wherever the samples lie.
  const falling = (every_s: number, from_mps: number, until_s: number) =>
    Array.from(
      { length: Math.floor(until_s / every_s) + 1 },
      (_, i) => [i * every_s, 3.6 * (from_mps - i * every_s)] as const,
    );
  const straight = traceOf(falling(3, 40, 33));

  it("are timed between the samples", () => {
    const bands = bandsFromTraces([straight]);
    // From 144 to 25.2 km/h: 135 to 125 down to 35 to 25 km/h would end below.
    expect(bands.map(({ high_mps }) => Math.round(3.6 * high_mps))).toEqual([
      135, 125, 115, 105, 95, 85, 75, 65, 55, 45,
    ]);
    for (const { there_s, high_mps, low_mps } of bands) {
      expect(3.6 * (high_mps - low_mps)).toBeCloseTo(10, 9);
      expect(there_s[0]).toBeCloseTo(10 / 3.6, 9);
    }
  });

  it("are those of the highest and the lowest that are counted, 145 to 135 and 25 to 15 km/h", () => {
    const long = bandsFromTraces([traceOf(falling(1, 45, 44))]);
    expect(Math.round(3.6 * long[0].high_mps)).toBe(145);
    expect(Math.round(3.6 * (long.at(-1)?.low_mps ?? 0))).toBe(15);
  });

  it("have a time of each coast-down that passes them whole", () => {
    // The second begins at 90 km/h.
    const second = traceOf(falling(1, 25, 20));
    const bands = bandsFromTraces([straight, second]);
    const counts = Object.fromEntries(
      bands.map(({ high_mps, there_s }) => [Math.round(3.6 * high_mps), there_s.length]),
    );
    expect(counts[95]).toBe(1);
    expect(counts[85]).toBe(2);
  });
});

describe("a coast-down", () => {
  it("is judged over two seconds, so that a recording's noise is no braking", () => {
    // 10 Hz with a speed that jumps by 0.15 m/s from sample to sample: 1.5 m/s² within a tenth of a second.
    const noisy = traceOf(
      Array.from({ length: 201 }, (_, i) => [i / 10, 3.6 * (30 - 0.06 * i + (i % 2 === 0 ? 0.075 : -0.075))] as const),
    );
    const [found, ...more] = coastings(noisy);
    expect(more).toEqual([]);
    // Within the first two seconds there is less to judge by.
    expect(found.first).toBeLessThan(20);
    expect(found.last).toBe(200);
  });

  it("ends where the brakes are put on harder than 1.2 m/s² over two seconds", () => {
    const rows = (braking_mps2: number) =>
      traceOf([
        ...Array.from({ length: 31 }, (_, i) => [i, 3.6 * (30 - 0.5 * i)] as const),
        ...[1, 2, 3, 4].map((s) => [30 + s, 3.6 * (15 - braking_mps2 * s)] as const),
      ]);
    expect(coastings(rows(1.1))).toEqual([{ first: 0, last: 34 }]);
    // The second in which it begins still counts half of rolling.
    expect(coastings(rows(1.6))).toEqual([{ first: 0, last: 31 }]);
  });

  it("may rise by half a metre a second on the way, and loses 30 km/h at least", () => {
    const rows = (bump_mps: number) =>
      traceOf([20, 18, 16, 16 + bump_mps, 15, 13, 11].map((mps, i) => [2 * i, 3.6 * mps] as const));
    expect(coastings(rows(0.4))).toEqual([{ first: 0, last: 6 }]);
    expect(coastings(rows(0.6))).toEqual([]);
    const dropping = (drop_kmh: number) => traceOf([0, 1, 2].map((i) => [10 * i, 80 - (drop_kmh * i) / 2] as const));
    expect(coastings(dropping(30.1))).toEqual([{ first: 0, last: 2 }]);
    expect(coastings(dropping(29.9))).toEqual([]);
  });

  it("begins at its highest speed, not where the car still drove on", () => {
    const rows = [20, 20.3, 20.4, 18, 14, 11].map((mps, i) => [4 * i, 3.6 * mps] as const);
    expect(coastings(traceOf(rows))).toEqual([{ first: 2, last: 5 }]);
  });
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
