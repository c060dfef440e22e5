import { describe, expect, it } from "vitest";
import type { Channels } from "../../../../../sim/index.ts";
import {
  type ChannelKey,
  channelLabel,
  channelNamed,
  channelQuantities,
} from "../../../../../web/charts/parts/axes/channelQuantities.ts";
import { AMERICAN, BRITISH, type FigureUnits, METRIC } from "../../../../../web/charts/parts/figure/figureUnits.ts";

/** One sample, and a second place that holds nothing. */
const channels = {
  length: 1,
  time_s: [120, Number.NaN],
  distance_m: [1500, Number.NaN],
  speed_mps: [10, Number.NaN],
  grade_ratio: [0.05, Number.NaN],
  gear: [3, Number.NaN],
  motorSpeed_radps: [100 * Math.PI, Number.NaN],
  motorTorque_Nm: [50, Number.NaN],
  motorLoss_W: [1200, Number.NaN],
  controller_W: [16_000, Number.NaN],
  battery_V: [96, Number.NaN],
  soc_frac: [0.8, Number.NaN],
  motor_K: [373.15, Number.NaN],
} as unknown as Channels;

describe("a channel of a run", () => {
  it.each<[ChannelKey, FigureUnits, string, number]>([
    ["time", METRIC, "Time (min)", 2],
    ["distance", METRIC, "Distance (km)", 1.5],
    ["speed", METRIC, "Speed (km/h)", 36],
    ["gradient", METRIC, "Gradient (%)", 5],
    ["gear", METRIC, "Gear (number)", 3],
    ["motorSpeed", METRIC, "Motor speed (rpm)", 3000],
    // 50 Nm at 314.16 rad/s.
    ["motorPower", METRIC, "Motor shaft power (kW)", 15.70796327],
    ["motorPower", BRITISH, "Motor shaft power (bhp)", 21.06472555],
    ["motorLoss", BRITISH, "Motor and controller loss (kW)", 1.2],
    ["controllerPower", BRITISH, "Controller power (kW)", 16],
    ["batteryVoltage", METRIC, "Battery voltage (V)", 96],
    ["soc", METRIC, "State of charge (%)", 80],
    ["motorTemperature", AMERICAN, "Motor temperature (°F)", 212],
  ])("%s is shown in units of the reader", (key, units, label, shown) => {
    const quantity = channelNamed(key);
    expect(channelLabel(quantity, units)).toBe(label);
    const column = quantity.column(channels, units);
    expect(column).toHaveLength(1);
    expect(column[0]).toBeCloseTo(shown, 6);
  });
});

it("is found by its name only", () => {
  for (const quantity of channelQuantities) expect(channelNamed(quantity.key)).toBe(quantity);
  expect(() => channelNamed("none" as ChannelKey)).toThrow("no channel is called none");
});
