import { expect, it } from "vitest";
import { distanceAlong_m } from "../../../sim/trace/distanceAlong.ts";

it("adds up mean speed times time, over uneven steps and standing", () => {
  const distance_m = distanceAlong_m(Float64Array.of(0, 2, 3, 9), Float64Array.of(0, 4, 6, 6));
  expect([...distance_m]).toEqual([0, 4, 9, 45]);
  expect([...distanceAlong_m(Float64Array.of(0, 60), Float64Array.of(0, 0))]).toEqual([0, 0]);
});
