import { expect, it } from "vitest";
import { alongRoad } from "../../../../../sim/route/clean/motion/alongRoad.ts";

const time_s = Float64Array.from({ length: 61 }, (_, i) => i);

it("what is left of sideways noise is no speed along the road", () => {
  // East at 10 m/s, north by turns 2 m/s to either side: the mean of nine seconds lies within 2/90 of due east, so that the
  // speed along it is within 2 m/s times 2/90 of 10 m/s; the bare length would be sqrt(104), 10.2 m/s, throughout.
  const east = time_s.map(() => 10);
  const north = time_s.map((t) => (t % 2 === 0 ? 2 : -2));
  const speed_mps = alongRoad(time_s, east, north);
  const inside = speed_mps.subarray(4, 57);
  expect(inside).toHaveLength(53);
  expect(inside.every((each_mps) => Math.abs(each_mps - 10) < 0.05)).toBe(true);
});

it("on a straight road the speed is the velocity's length, whatever its heading", () => {
  const speed_mps = alongRoad(
    time_s,
    time_s.map(() => -3),
    time_s.map(() => 4),
  );
  expect(speed_mps.every((each_mps) => Math.abs(each_mps - 5) < 1e-12)).toBe(true);
});

it("backwards against the direction of the seconds around it is standing, not driving", () => {
  const speed_mps = alongRoad(
    time_s,
    time_s.map((t) => (t === 30 ? -1 : 8)),
    time_s.map(() => 0),
  );
  expect(speed_mps[30]).toBe(0);
});
