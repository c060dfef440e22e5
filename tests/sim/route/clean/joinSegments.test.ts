import { expect, it } from "vitest";
import { joinSegments, markSpans, type WholeSegment } from "../../../../sim/route/clean/joinSegments.ts";
import { Mended } from "../../../../sim/route/clean/report/cleanedLog.ts";

/** A segment at 10 m/s, one row a second. */
function segment(start_s: number, seconds: number): WholeSegment {
  const column = (value: (i: number) => number) => Float64Array.from({ length: seconds }, (_, i) => value(i));
  const draws = new Float64Array(1);
  return {
    start_s,
    speed_mps: column(() => 10),
    distance_m: column((i) => 10 * i),
    elevation_m: column(() => 100),
    middleElevation_m: column(() => 101),
    flags: new Uint8Array(seconds),
    latitude_deg: column(() => 50),
    longitude_deg: column(() => 8),
    pieces: [{ from: 0, to: seconds - 1, chosen: 0, energy_J: draws, distance_m: draws, climb_m: draws, goes: draws }],
  };
}

it("puts segments one after another, distance standing still between them", () => {
  const { series, track, pieces } = joinSegments([segment(1000, 3), segment(5000, 2)]);
  expect(series.count).toBe(5);
  expect([...series.time_s]).toEqual([1000, 1001, 1002, 5000, 5001]);
  expect([...series.distance_m]).toEqual([0, 10, 20, 20, 30]);
  expect(series.breaks).toEqual([3]);
  expect(track.latitude_deg).toHaveLength(5);
  expect(pieces.map(({ from, to }) => [from, to])).toEqual([
    [0, 2],
    [3, 4],
  ]);
});

it("marks the seconds within spans, ends included", () => {
  const { series } = joinSegments([segment(0, 10)]);
  markSpans(series, [
    [2, 3],
    [7.5, 8],
  ]);
  const marked = [...series.flags].flatMap((flag, i) => (flag & Mended.multipath ? [i] : []));
  expect(marked).toEqual([2, 3, 8]);
});
