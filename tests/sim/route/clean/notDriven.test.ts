import { expect, it } from "vitest";
import { notDriven } from "../../../../sim/route/clean/notDriven.ts";

/** What is said of minutes at such speeds from midnight on. */
function said(minutes: number, speed_mps: (i: number) => number) {
  const count = 60 * minutes;
  const column = () => new Float64Array(count);
  const series = {
    count,
    time_s: Float64Array.from({ length: count }, (_, i) => i),
    speed_mps: Float64Array.from({ length: count }, (_, i) => speed_mps(i)),
    distance_m: column(),
    elevation_m: column(),
    middleElevation_m: column(),
    flags: new Uint8Array(count),
    breaks: [],
  };
  return notDriven(series, 0);
}

it("says a walk of three minutes and more", () => {
  expect(said(3, () => 1.4)).toEqual([
    "about 3 min at a walking pace from 00:00:00: if the logger was carried on foot, that is no drive",
  ]);
  expect(said(2, () => 1.4)).toEqual([]);
});

it("says a steady low speed of ten minutes, as ferries keep it", () => {
  expect(said(12, () => 5)).toEqual([
    "about 12 min at a steady 18 km/h from 00:00:00: if that was a ferry or a train, it is no drive",
  ]);
  expect(said(9, () => 5)).toEqual([]);
});

it("has no word for a jam that stops and goes, or for a drive", () => {
  expect(said(12, (i) => (i % 20 < 10 ? 0 : 2.8))).toEqual([]);
  expect(said(12, (i) => 5 + 2 * Math.sin(i / 5))).toEqual([]);
  expect(said(12, () => 20)).toEqual([]);
});
