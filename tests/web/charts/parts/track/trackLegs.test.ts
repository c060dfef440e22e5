import { expect, it } from "vitest";
import { steppedRamp } from "../../../../../web/charts/parts/keys/steppedRamp.ts";
import { apart, drawnTrack, fitted } from "../../../../../web/charts/parts/track/trackLegs.ts";
import type { PlacedTrack, Track } from "../../../../../web/charts/parts/track/trackOnPlane.ts";

const placed = (east_m: readonly number[], north_m: readonly number[] = east_m.map(() => 0)): PlacedTrack => ({
  east_m: Float64Array.from(east_m),
  north_m: Float64Array.from(north_m),
  length_m: 0,
});

/** 400 px between its insets of 18 px. */
const WIDE_px = 436;

it("fits a track at one scale in both directions, neither too low nor too high", () => {
  const scales = (plane: PlacedTrack) => {
    const { left, right, top, bottom, x, y } = fitted(plane, WIDE_px, 0);
    return { high_px: bottom - top, across_m: (x[1] - x[0]) / (right - left), down_m: (y[1] - y[0]) / (bottom - top) };
  };
  // 4000 m by 2000 m in 400 px: 10 m a pixel, 200 px high.
  expect(scales(placed([0, 4000], [0, 2000]))).toEqual({ high_px: 200, across_m: 10, down_m: 10 });
  // Flat: 180 px. Steep: 460 px, and 4600 m in them are 10 m a pixel however wide.
  expect(scales(placed([0, 4000], [0, 10]))).toEqual({ high_px: 180, across_m: 10, down_m: 10 });
  expect(scales(placed([0, 40], [0, 4600]))).toEqual({ high_px: 460, across_m: 10, down_m: 10 });
});

it("drops samples nearer than a pixel and a half, but for the ends of the track and of its parts", () => {
  const plane = placed([0, 10, 14, 16, 4000, 4001, 4002]);
  const frame = fitted(plane, WIDE_px, 0); // 4002 m in 400 px: a pixel and a half is 15.0075 m
  expect(apart(plane, frame)).toEqual([0, 3, 4, 6]);
  expect(apart(plane, frame, [2])).toEqual([0, 1, 2, 4, 6]);
});

/** A track of the plane at these speeds, and what is drawn of it. */
function drawn(plane: PlacedTrack, speeds: readonly number[], changes: Partial<Track> = {}) {
  const none = new Float64Array(speeds.length);
  const track: Track = { time_s: none, longitude_deg: none, latitude_deg: none, speed_mps: none, ...changes };
  const every = speeds.map((_, i) => i);
  const frame = fitted(plane, WIDE_px, 0);
  return drawnTrack(every, track, Float64Array.from(speeds), steppedRamp(0, 30), plane, frame);
}

it("parts the track where its colour or its repair changes, each leg from where the one before ended", () => {
  const plane = placed([0, 1000, 2000, 3000, 4000]);
  const { legs, outline } = drawn(plane, [1, 1, 29, 29, 29], { isRepaired: Uint8Array.from([0, 0, 0, 0, 1]) });
  expect(legs.map(({ points, isRepaired }) => [points, isRepaired])).toEqual([
    [[0, 1], false],
    [[1, 2, 3], false],
    [[3, 4], true],
  ]);
  expect(outline).toEqual([[0, 1, 2, 3, 4]]);
});

it("draws a road once in each of its looks, however often it is driven", () => {
  const there = [0, 1000, 2000, 3000, 4000];
  const plane = placed([...there, ...there]);
  const alike = drawn(plane, new Array(10).fill(5), { partRows: [5] });
  // A part begins with its first place; nothing else of the second time is drawn.
  expect(alike.legs.filter(({ points }) => points.length > 1).map(({ points }) => points)).toEqual([[0, 1, 2, 3, 4]]);
  const faster = drawn(plane, [...there.map(() => 5), ...there.map(() => 28)], { partRows: [5] });
  expect(faster.legs.map(({ points }) => points)).toEqual([
    [0, 1, 2, 3, 4],
    [5, 6, 7, 8, 9],
  ]);
});
