import { describe, expect, it } from "vitest";
import { seenMoving, settle } from "../../../../../sim/route/clean/draws/settle.ts";

const wander = { correlated_m: 5, correlation_s: 20 };
const settled = (speeds: readonly number[], seen: readonly number[] = [], noise = wander, hasSpeeds = false) => {
  const speed_mps = Float32Array.from(speeds);
  const isSeen = new Uint8Array(speeds.length);
  for (const second of seen) isSeen[second] = 1;
  settle(speed_mps, isSeen, noise, hasSpeeds);
  return Array.from(speed_mps);
};

describe("a drawn drive put at rest", () => {
  it("stands where it is slower than 1 km/h, the measure of the rules", () => {
    expect(settled([5, 0.27, 0.28, 5])).toEqual([5, 0, Math.fround(0.28), 5]);
  });

  it("stands through a move that is less than the positions wander in its time", () => {
    // 2 * 5 m * sqrt(2 (1 - exp(-4 s / 20 s))) = 6.02 m
    expect(settled([0, 2, 2, 2, 0])).toEqual([0, 2, 2, 2, 0].map((each, i) => (i > 0 && i < 4 ? 0 : each)));
    expect(settled([0, 2, 2, 2.1, 0])[2]).toBe(2);
    expect(settled([0, 2, 2, 2, 0], [], { ...wander, correlated_m: 2 })[2]).toBe(2);
  });

  it("moves where a recorded speed shows it, but for less than 3 m", () => {
    expect(settled([0, 2, 2, 0], [1])[1]).toBe(2);
    expect(settled([0, 1, 1, 0], [1])[1]).toBe(0);
  });

  it("stands through a move of less than 35 m that recorded speeds ought to show and do not", () => {
    const move = (far_m: number) => settled([0, far_m / 4, far_m / 4, far_m / 4, far_m / 4, 0], [], wander, true)[2];
    expect(move(34)).toBe(0);
    expect(move(36)).toBe(9);
  });

  it("leaves what moves before its first standstill and after its last", () => {
    expect(settled([1, 0, 0, 1])).toEqual([1, 0, 0, 1]);
  });
});

it("a recorded speed shows a move where it is above its noise, at the second that holds it", () => {
  // Moments at 0, 0.5, 1 and 2 s; a second is that of the last whole one.
  const line = { count: 4, seconds: 3, second: Int32Array.of(0, -1, 1, 2) };
  expect(Array.from(seenMoving(line, Float64Array.of(0.4, 0.7, Number.NaN, 2), 0.15))).toEqual([1, 0, 1]);
  expect(Array.from(seenMoving(line, Float64Array.of(0.4, 0.5, 0.5, 2), 0.15))).toEqual([0, 0, 1]);
});
