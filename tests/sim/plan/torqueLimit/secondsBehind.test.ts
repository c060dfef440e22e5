import { expect, it } from "vitest";
import { secondsBehind } from "../../../../sim/plan/torqueLimit/secondsBehind.ts";
import { bareJob, driven, traceOf } from "../../../support/bareCar.ts";

it("a car at half of the road's speed for 100 s is 50 s behind, and one that keeps up is not behind", () => {
  const column = (by: (i: number) => number) => Float64Array.from({ length: 101 }, (_, i) => by(i));
  const { channels } = driven(
    bareJob(),
    traceOf([
      [0, 0],
      [10, 36],
    ]),
  );
  const at = (speed_mps: number) =>
    secondsBehind({
      ...channels,
      length: 101,
      time_s: column((i) => i),
      target_mps: column(() => 10),
      distance_m: column((i) => i * speed_mps),
    });
  expect(at(5)).toBeCloseTo(50, 9);
  expect(at(10)).toBe(0);
  expect(at(12)).toBe(0);
});
