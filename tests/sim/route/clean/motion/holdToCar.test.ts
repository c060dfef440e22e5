import { expect, it } from "vitest";
import { holdToCar } from "../../../../../sim/route/clean/motion/holdToCar.ts";

function held(...speeds_mps: readonly number[]) {
  const speed_mps = Float64Array.from(speeds_mps);
  const flags = new Uint8Array(speed_mps.length);
  const changed = holdToCar(speed_mps, flags, 8);
  return { speed_mps: [...speed_mps], flags: [...flags], changed };
}

it("is no faster away than 5 m/s² and brakes no harder than 9", () => {
  expect(held(0, 7, 12)).toEqual({ speed_mps: [0, 5, 10], flags: [0, 8, 8], changed: 2 });
  expect(held(30, 12, 0)).toEqual({ speed_mps: [18, 9, 0], flags: [8, 8, 0], changed: 2 });
});

it("is never below rest, and leaves what a car can do", () => {
  expect(held(-1, 4, 9, 1)).toEqual({ speed_mps: [0, 4, 9, 1], flags: [0, 0, 0, 0], changed: 0 });
});
