import { expect, it } from "vitest";
import { alongObserved } from "../../../../../sim/route/clean/draws/alongObserved.ts";
import { timeline } from "../../../../../sim/route/clean/rows/timeline.ts";
import { everySecond } from "../rowsByHand.ts";

const SECONDS = 30;
const line = timeline(
  everySecond(SECONDS, () => ({})),
  0,
  SECONDS,
);
const column = (value: (i: number) => number) => Float64Array.from({ length: SECONDS }, (_, i) => value(i));
/** A straight road to the east at 10 m/s. */
const smoothed = {
  east_m: column((i) => 10 * i),
  north_m: column(() => 0),
  eastSpeed_mps: column(() => 10),
  northSpeed_mps: column(() => 0),
};

it("is the way along the smoothed road, with the error along it and none across it", () => {
  const logged = { east_m: column((i) => 10 * i + (i === 15 ? 3 : 0)), north_m: column((i) => (i === 20 ? 4 : 0)) };
  const { at_m, speed_mps } = alongObserved(line, logged, smoothed, 1);
  expect(at_m[14]).toBeCloseTo(140, 9);
  expect(at_m[15]).toBeCloseTo(153, 9);
  expect(at_m[20]).toBeCloseTo(200, 9);
  for (const each_mps of speed_mps) expect(each_mps).toBeCloseTo(10, 9);
});

it("has no way where there was no position, and goes on behind it", () => {
  const logged = { east_m: column((i) => (i > 5 && i < 9 ? Number.NaN : 10 * i)), north_m: column(() => 0) };
  const { at_m } = alongObserved(line, logged, smoothed, 1);
  expect(at_m[7]).toBeNaN();
  expect(at_m[9]).toBeCloseTo(90, 9);
});

it("is less sure of its length the more the road turns between two positions", () => {
  const logged = { east_m: column((i) => (i % 10 === 0 ? 10 * i : Number.NaN)), north_m: column(() => 0) };
  const straight = alongObserved(line, logged, smoothed, 1).laid_m2;
  // A road of 100 m laid along positions is off by a percent and a half: sqrt(2) of 1 % over each 100 m.
  expect(Math.sqrt(straight[20])).toBeCloseTo(100 * Math.SQRT2 * 0.01, 9);
  expect(straight[15]).toBe(0);
  const bent = {
    ...smoothed,
    east_m: column((i) => 100 * Math.sin(i / 10)),
    north_m: column((i) => 100 * (1 - Math.cos(i / 10))),
    eastSpeed_mps: column((i) => 10 * Math.cos(i / 10)),
    northSpeed_mps: column((i) => 10 * Math.sin(i / 10)),
  };
  const { laid_m2 } = alongObserved(
    line,
    { east_m: logged.east_m.map((each, i) => each && bent.east_m[i]), north_m: bent.north_m },
    bent,
    1,
  );
  // Where a sharp corner of one radian may lie anywhere on 100 m, two legs are up to 1 / cos(1/2) - 1 = 14 % longer than the line; the standard deviation is no more.
  expect(Math.sqrt(laid_m2[20])).toBeGreaterThan(5);
  expect(Math.sqrt(laid_m2[20])).toBeLessThan(14);
});

it("goes round a corner with its whole length", () => {
  // At 10 m/s to the east, from the twelfth second on a quarter of a circle of 15 m, then north: 290 m in all.
  const radius_m = 15;
  const end_s = 12 + (radius_m * Math.PI) / 2 / 10;
  const turned_rad = (i: number) => Math.max(0, Math.min(end_s, i) - 12) * (10 / radius_m);
  const corner = {
    east_m: column((i) => 10 * Math.min(12, i) + radius_m * Math.sin(turned_rad(i))),
    north_m: column((i) => radius_m * (1 - Math.cos(turned_rad(i))) + 10 * Math.max(0, i - end_s)),
    eastSpeed_mps: column((i) => 10 * Math.cos(turned_rad(i))),
    northSpeed_mps: column((i) => 10 * Math.sin(turned_rad(i))),
  };
  const { at_m } = alongObserved(line, corner, corner, 1);
  // Distance at 1 Hz is asked to be within 1 %.
  expect(Math.abs(at_m[SECONDS - 1] / 290 - 1)).toBeLessThan(0.01);
});
