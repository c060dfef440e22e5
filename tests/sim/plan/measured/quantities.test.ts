import { describe, expect, it } from "vitest";
import type { DrivenAsMeasured } from "../../../../sim/plan/measured/driveAsMeasured.ts";
import type { PackSamples } from "../../../../sim/plan/measured/packSamples.ts";
import { quantitiesOf } from "../../../../sim/plan/measured/quantities.ts";
import { driveOf, samplesOf, times } from "./logsByHand.ts";

// Ten seconds at 10 m/s, then standing: the log draws 20 A of 100 V, then gives 5 A back; a sample at each row's middle.
const speeds = [...times(10, 10), ...times(11, 0)];

const amps = [...times(10, 20), ...times(10, -5)];

const drive = driveOf(speeds, {
  power_W: [...times(10, 1500), ...times(11, 60)],
  current_A: [...times(10, 15), ...times(11, 0.6)],
  voltage_V: [...times(19, 110), 104, 110],
  motor_radps: [...times(9, 200), 314.159265, ...times(11, 0)],
  soc_frac: speeds.map((_, i) => 0.9 - 0.01 * i),
});

const samples = samplesOf(times(20, 100), amps);

const logged = (extras = {}, of: PackSamples = samples, on: DrivenAsMeasured = drive) =>
  quantitiesOf(on, of, "log", extras);

describe("what a log comes to", () => {
  it("is what was drawn, what came back, and the difference, each with the time that its sample stands for", () => {
    // 2000 W for 10 s and -500 W for 10 s.
    expect(logged().discharge_kWh).toBeCloseTo(20_000 / 3.6e6, 12);
    expect(logged().regen_kWh).toBeCloseTo(5000 / 3.6e6, 12);
    expect(logged().net_kWh).toBeCloseTo(15_000 / 3.6e6, 12);
    expect(logged().net_Ah).toBeCloseTo(150 / 3600, 12);
    const slow = { ...samples, weight_s: Float64Array.from(times(20, 3)) };
    expect(logged({}, slow).discharge_kWh).toBeCloseTo(60_000 / 3.6e6, 12);
    expect(logged({}, slow).regen_kWh).toBeCloseTo(15_000 / 3.6e6, 12);
    expect(logged({}, slow).net_Ah).toBeCloseTo(450 / 3600, 12);
  });
  it("is over the whole distance, in watt-hours a kilometre", () => {
    expect(logged().distance_km).toBeCloseTo(0.1, 12);
    expect(logged().use_Whpkm).toBeCloseTo(15_000 / 3600 / 0.1, 9);
  });
  it("has its highest current each way and its lowest voltage", () => {
    const { peak_A, charge_A, lowest_V } = logged({}, samplesOf([...times(19, 100), 97], amps));
    expect({ peak_A, charge_A, lowest_V }).toEqual({ peak_A: 20, charge_A: 5, lowest_V: 97 });
  });
  it("has no current the other way where none flowed", () => {
    expect(logged({}, samplesOf(times(20, 100), times(20, 3))).charge_A).toBe(0);
    expect(logged({}, samplesOf(times(20, 100), times(20, -3))).peak_A).toBe(0);
  });
  it("leaves two samples in a thousand out of its extremes: noise alone makes peaks", () => {
    const still = driveOf(times(1001, 0));
    const spiky = [999, 999, ...times(998, 20)];
    expect(logged({}, samplesOf(times(1000, 100), spiky), still).peak_A).toBe(20);
    expect(logged({}, samplesOf(times(1000, 100), [999, 999, 999, ...times(997, 20)]), still).peak_A).toBe(999);
  });
  it("has motor speed and charge used only where the logger counted them", () => {
    expect(logged().motor_rpm).toBeNaN();
    expect(logged().socUsed_frac).toBeNaN();
    const extras = logged({ motor_radps: 314.159265, socUsed_frac: 0.2 });
    expect(extras.motor_rpm).toBeCloseTo(3000, 4);
    expect(extras.socUsed_frac).toBe(0.2);
  });
});

describe("what is drawn standing", () => {
  it("is the mean of the rows that stand for two seconds before and three after", () => {
    // It stands from the 11th second on: of the rows 10 to 19, those from 12 on have two standing ones before them.
    const ramp = samplesOf(times(20, 100), [...times(10, 20), 9, 8, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
    expect(logged({}, ramp).standing_W).toBeCloseTo(50, 9);
    // Started from: rows 0 to 9 stand, those up to 6 have three standing ones after them.
    const starting = driveOf([...times(10, 0), ...times(10, 10)]);
    const ahead = samplesOf(times(20, 100), [...times(7, 0.5), ...times(13, 9)]);
    expect(logged({}, ahead, starting).standing_W).toBeCloseTo(50, 9);
    const early = samplesOf(times(20, 100), [...times(6, 0.5), ...times(14, 9)]);
    expect(logged({}, early, starting).standing_W).toBeCloseTo((6 * 50 + 900) / 7, 9);
  });
  it("is weighed by the time that samples stand for", () => {
    const still = driveOf(times(4, 0));
    const of = samplesOf(times(4, 100), [1, 1, 4, 4], { weight_s: Float64Array.of(3, 3, 1, 1) });
    expect(logged({}, of, still).standing_W).toBeCloseTo((6 * 100 + 2 * 400) / 8, 9);
  });
  it("counts a receiver's noise below 0.3 m/s as standing, and is nothing where the car never stood", () => {
    expect(logged({}, samples, driveOf(times(20, 0.29))).standing_W).not.toBeNaN();
    expect(logged({}, samples, driveOf(times(20, 0.3))).standing_W).toBeNaN();
  });
});

describe("the distance", () => {
  const part = (cover_frac: number) => ({ ...samplesOf(times(5, 100), times(5, 10)), cover_frac });
  it("is the whole drive's where samples cover it but for half a per cent, else that of their own seconds", () => {
    expect(logged({}, part(0.996)).distance_km).toBeCloseTo(0.1, 12);
    expect(logged({}, part(0.99)).distance_km).toBeCloseTo(0.05, 12);
  });
  it("is never more than was driven", () => {
    const long = { ...part(0.9), weight_s: Float64Array.from(times(5, 3)) };
    expect(logged({}, long).distance_km).toBeCloseTo(0.1, 12);
  });
});
