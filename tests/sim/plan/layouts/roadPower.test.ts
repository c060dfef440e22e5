import { describe, expect, it } from "vitest";
import { powerOf } from "../../../../sim/plan/layouts/roadPower.ts";
import { createChannels } from "../../../../sim/step/channels.ts";

/** Channels of a run that drew these watts, one a second. */
function drew(battery_W: readonly number[]) {
  const channels = createChannels(battery_W.length + 1);
  channels.length = battery_W.length + 1;
  battery_W.forEach((power_W, i) => {
    channels.time_s[i + 1] = i + 1;
    channels.battery_W[i + 1] = power_W;
  });
  return powerOf(channels);
}

describe("what a road asks of a pack", () => {
  it("is its peak, the greatest mean over ten seconds and the root mean square", () => {
    const steady = drew(Array.from({ length: 60 }, () => 5000));
    expect(steady.peak_W).toBe(5000);
    expect(steady.tenSeconds_W).toBeCloseTo(5000, 9);
    expect(steady.rms_W).toBeCloseTo(5000, 9);
    // Five seconds of 30 kW in the midst of a minute at rest: 15 kW over ten, and 30 √(5/60) over all.
    const pulse = drew(Array.from({ length: 60 }, (_, i) => (i >= 20 && i < 25 ? 30_000 : 0)));
    expect(pulse.peak_W).toBe(30_000);
    expect(pulse.tenSeconds_W).toBeCloseTo(15_000, 9);
    expect(pulse.rms_W).toBeCloseTo(30_000 * Math.sqrt(5 / 60), 9);
  });
  it("counts braking in what warms the modules, and not in what it asks of them", () => {
    const braked = drew([...Array.from({ length: 20 }, () => -8000), ...Array.from({ length: 20 }, () => 2000)]);
    expect(braked.peak_W).toBe(2000);
    expect(braked.tenSeconds_W).toBeCloseTo(2000, 9);
    expect(braked.rms_W).toBeCloseTo(Math.sqrt((8000 ** 2 + 2000 ** 2) / 2), 9);
  });
  it("is the root mean square of a road of half a second too", () => {
    const channels = createChannels(2);
    channels.length = 2;
    channels.time_s[1] = 0.5;
    channels.battery_W[1] = 3000;
    expect(powerOf(channels).rms_W).toBeCloseTo(3000, 9);
  });
  it("is nothing of a road of no time", () => expect(drew([])).toEqual({ peak_W: 0, tenSeconds_W: 0, rms_W: 0 }));
});
