import { describe, expect, it } from "vitest";
import { SwitchingFilter } from "../../../../../sim/math/kalman/switchingFilter.ts";
import {
  type AlongRoad,
  DRIVING_STATES,
  drivingModel,
  MOVING,
  SPEED,
  STANDING,
} from "../../../../../sim/route/clean/draws/drivingModel.ts";

const noise = { correlated_m: 1, correlation_s: 20, white_m: 0.3, speed_mps: 0.1 };

/** A road of 40 s with recorded speeds only. */
function known(speed_mps: (i: number) => number, changes: Partial<AlongRoad> = {}): AlongRoad {
  const time_s = Float64Array.from({ length: 40 }, (_, i) => i);
  return {
    time_s,
    at_m: new Float64Array(40).fill(Number.NaN),
    speed_mps: time_s.map((_, i) => speed_mps(i)),
    offset_m2: new Float64Array(40),
    isParked: new Uint8Array(40),
    ...changes,
  };
}

/** Weights of moving and standing, and the speed while moving, at the end. */
function filtered(road: AlongRoad, canStand = true) {
  const filter = new SwitchingFilter(drivingModel(road, new Float64Array(40).fill(0.9), noise, { canStand }));
  for (let k = 0; k < 40; k++) filter.step(k);
  return { weight: filter.now.weight, speed_mps: filter.now.mean[MOVING * DRIVING_STATES + SPEED] };
}

describe("a car along its road", () => {
  it("moves where its speed is recorded, at that", () => {
    const { weight, speed_mps } = filtered(known(() => 12));
    expect(weight[MOVING]).toBeGreaterThan(0.999);
    expect(Math.abs(speed_mps - 12)).toBeLessThan(0.2);
  });
  it("stands where it is at nought for long", () => {
    expect(filtered(known(() => 0)).weight[STANDING]).toBeGreaterThan(0.99);
  });
  it("never stands where standing is turned off", () => {
    expect(
      filtered(
        known(() => 0.3),
        false,
      ).weight[STANDING],
    ).toBe(0);
  });
  it("stands where it is known to be parked, whatever was recorded", () => {
    const isParked = new Uint8Array(40).fill(1, 20);
    expect(filtered(known(() => Number.NaN, { isParked })).weight[STANDING]).toBe(1);
  });
});
