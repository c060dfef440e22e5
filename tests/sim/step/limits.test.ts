import { expect, it } from "vitest";
import { CONTROLLER, DRIVELINE, firstBroken, GRIP, HEAT, LIMITS, MOTOR, NONE, PACK } from "../../../sim/step/limits.ts";

it("names each limit by its place", () => {
  const names = [NONE, GRIP, DRIVELINE, MOTOR, CONTROLLER, PACK, HEAT].map((place) => LIMITS[place]);
  expect(names).toEqual(["none", "grip", "driveline", "motor", "controller", "pack", "heat"]);
  expect(LIMITS).toHaveLength(7);
});

it("finds the first that is broken, in the one order of ties", () => {
  const over: [number, number, number, number, number, number] = [1, 1, 1, 1, 1, 1];
  for (let limit = 1; limit <= 6; limit++) {
    expect(firstBroken(...over)).toBe(limit);
    over[limit - 1] = 0;
  }
  expect(firstBroken(...over)).toBe(NONE);
});
