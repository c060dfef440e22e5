import { describe, expect, it } from "vitest";
import {
  findStandstills,
  markLoitering,
  positionLimits,
  recordedLimits,
} from "../../../../../sim/route/clean/motion/findStandstills.ts";

const time_s = (n: number) => Float64Array.from({ length: n }, (_, i) => i);
const standing = (speeds: readonly number[], limits = recordedLimits) =>
  [...findStandstills(time_s(speeds.length), Float64Array.from(speeds), limits)].join("");

describe("standing", () => {
  it("is where a recorded speed stays below a walk", () => {
    expect(standing([5, 3, 0.4, 0.1, 0.2, 3, 5])).toBe("0011100");
  });

  it("is not a single slow moment", () => {
    expect(standing([5, 3, 0.4, 3, 5])).toBe("00000");
  });

  it("goes on over a moment of noise", () => {
    expect(standing([5, 0, 0, 0, 0.9, 0, 0, 0, 5])).toBe("011111110");
  });

  it("goes on over a creep no longer than the receiver's correlated noise", () => {
    const speeds = [9, 0, 0, 0, 0, 0, ...new Array(8).fill(1), 0, 0, 0, 0, 0, 9];
    expect(standing(speeds, positionLimits(3))).not.toContain("101");
    expect(standing(speeds, positionLimits(3))).toBe(`0${"1".repeat(18)}0`);
    expect(standing([9, 0, 0, 0, 0, 0, ...new Array(8).fill(4), 0, 0, 0, 0, 0, 9], positionLimits(3))).toContain(
      "00000000",
    );
  });

  it("is a minute inside a small box, less the seconds of rolling in and out", () => {
    const n = 100;
    const east_m = Float64Array.from({ length: n }, (_, i) =>
      i < 10 ? i - 10 : i > 89 ? (i - 89) * 1.0 : Math.sin(i),
    );
    const speed_mps = Float64Array.from({ length: n }, (_, i) => (i < 10 || i > 89 ? 3 : 0.8));
    const isStanding = new Uint8Array(n);
    markLoitering(time_s(n), east_m, new Float64Array(n), speed_mps, 24, 1.5, isStanding);
    expect([...isStanding].join("")).toBe(`${"0".repeat(10)}${"1".repeat(80)}${"0".repeat(10)}`);
  });
});
