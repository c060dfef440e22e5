import { describe, expect, it } from "vitest";
import { createChannels } from "../../../../../sim/index.ts";
import { timeByPoint } from "../../../../../web/charts/parts/motorGround/timeByPoint.ts";

const RADPS_PER_RPM = Math.PI / 30;

describe("timeByPoint", () => {
  it("tells every second that the motor turns once, and none that it stands", () => {
    const channels = createChannels(101);
    channels.length = 101;
    for (let i = 0; i <= 100; i++) {
      channels.time_s[i] = i * 0.5;
      channels.motorSpeed_radps[i] = i % 4 === 0 ? 0 : (1000 + 37 * i) * RADPS_PER_RPM;
      channels.motorTorque_Nm[i] = 50 * Math.sin(i);
    }
    const points = timeByPoint(channels, 8000, 100);
    const turning = Array.from({ length: 100 }, (_, i) => i + 1).filter((i) => i % 4 !== 0).length * 0.5;
    expect(points.reduce((sum, point) => sum + point.time_s, 0)).toBeCloseTo(turning, 9);
  });

  it("tells a field at the mean of what is in it, weighed by time", () => {
    const channels = createChannels(3);
    channels.length = 3;
    channels.time_s.set([0, 1, 4]);
    channels.motorSpeed_radps.set([0, 1000 * RADPS_PER_RPM, 1040 * RADPS_PER_RPM]);
    channels.motorTorque_Nm.set([0, 20, 24]);
    const [point, ...others] = timeByPoint(channels, 45_000, 180);
    expect(others).toEqual([]);
    expect(point?.time_s).toBe(4);
    expect(point?.speed_rpm).toBeCloseTo(1030, 9);
    expect(point?.torque_Nm).toBeCloseTo(23, 9);
  });
});
