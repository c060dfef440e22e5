import { describe, expect, it } from "vitest";
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

describe("what the model makes of the same seconds", () => {
  const model = quantitiesOf(drive, samples, "model");
  it("is its own power, volts and amps at the samples", () => {
    expect(model.discharge_kWh).toBeCloseTo((15_000 + 600) / 3.6e6, 12);
    expect(model.net_Ah).toBeCloseTo(156 / 3600, 12);
    expect(model.lowest_V).toBe(104);
    expect(model.peak_A).toBe(15);
  });
  it("has its fastest motor and the charge from the first sample's row to the last's", () => {
    expect(model.motor_rpm).toBeCloseTo(3000, 4);
    expect(model.socUsed_frac).toBeCloseTo(0.19, 12);
    const later = samplesOf(times(5, 100), times(5, 1), { row: Int32Array.of(2, 3, 4, 5, 12) });
    expect(quantitiesOf(drive, later, "model").socUsed_frac).toBeCloseTo(0.1, 12);
  });
});
