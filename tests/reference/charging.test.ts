import { describe, expect, it } from "vitest";
import type { Charger } from "../../shared/job/schema/charger.ts";
import { J_PER_WH, S_PER_H } from "../../shared/units.ts";
import { chargerFeed } from "../../sim/plan/charging/chargerFeed.ts";
import { circuit_A, pilotDuty_frac } from "../../sim/plan/charging/pilot.ts";
import { charged, flatPack, socketOf, straightPack } from "../support/chargeable.ts";
import { comparedWith } from "../support/comparedWith.ts";

const charger: Charger = { name: "any", efficiency_frac: 0.9 };

describe("taper at constant voltage, in closed form", () => {
  // I = I0 exp(-t k/R): 40 V over 60 Ah is k = 1.85185e-4 V/C, with 0.1 ohm a time constant of 540 s. Computed from the definition.
  // At 77 V 30 A bring the terminals to the 80 V that are held; 3 A are a twentieth of 60 Ah.
  const charge = charged(straightPack, socketOf(32), (77 - 40) / 40);

  it("takes 1243.40 s and 4.050 Ah from 30 A to 3 A", () => {
    expect(charge.end).toBe("full");
    comparedWith("taper time", charge.time_s, 1243.4, { withinShare_frac: 0.001 });
    comparedWith("taper charge", (charge.end_frac - 37 / 40) * 60, 4.05, { withinShare_frac: 0.001 });
    expect(charge.taper_s).toBeCloseTo(charge.time_s, 6);
  });

  it("follows the exponential at every moment", () => {
    const { time_s, current_A } = charge.course;
    time_s.forEach((at_s, i) => {
      comparedWith("taper current", current_A[i], 30 * Math.exp(-at_s / 540), { withinShare_frac: 0.001 });
    });
  });

  it("loses the integral of I²R between terminals and cells", () => {
    // R I0² tau/2 (1 - 0.01) = 0.1 x 900 x 270 x 0.99
    comparedWith("taper heat", charge.terminal_J - charge.stored_J, 24_057, { withinShare_frac: 0.001 });
    comparedWith("taper energy", charge.terminal_J, 80 * 4.05 * 3600, { withinShare_frac: 0.001 });
  });
});

describe("currents and powers of outlets", () => {
  // A table of outlets by a report on charging at home, and volts times amps.
  it.each([
    [230, 10, 2.3],
    [230, 8, 1.84],
    [230, 16, 3.68],
    [230, 32, 7.36],
    [240, 32, 7.68],
    [120, 12, 1.44],
  ])("%f V and %f A are %f kW", (voltage_V, current_A, expected_kW) => {
    const { supply_W } = chargerFeed(socketOf(current_A, { voltage_V }), charger);
    comparedWith("power of an outlet", supply_W / 1000, expected_kW, { within: 0.005 });
  });

  it("a circuit stands 125 % of a load of hours", () => {
    // [NEC2017, 625.41]: circuits of 15, 20, 30, 40, 50 and 60 A.
    expect([12, 16, 24, 32, 40, 48].map(circuit_A)).toEqual([15, 20, 30, 40, 50, 60]);
  });

  it("230 V, 10 A and a charger of 0.9 give 2.07 kW, and 20 kWh take 9.66 h at that", () => {
    const supply = socketOf(10);
    comparedWith("power behind the charger", chargerFeed(supply, charger).power_W, 2070, { within: 5 });
    const charge = charged({ ...flatPack(20), charger: { efficiency_frac: 0.9 } }, supply, 0);
    comparedWith("hours of 20 kWh", charge.time_s / S_PER_H, 9.66, { within: 0.005 });
    expect(charge.wall_J / J_PER_WH).toBeCloseTo(20_000 / 0.9, 6);
  });
});

describe("control pilot", () => {
  // [IEC61851-1, Annex A], as the manual of a test adapter has it; the same in SAE J1772.
  it.each([
    [6, 10],
    [9.6, 16],
    [15, 25],
    [30, 50],
    [51, 85],
    [65, 90],
    [80, 96],
    [16, 26.7],
    [32, 53.3],
  ])("tells %f A by a duty of %f %%", (current_A, duty_percent) => {
    comparedWith("pilot duty", 100 * (pilotDuty_frac(current_A) ?? 0), duty_percent, { within: 0.05 });
  });

  it("cannot tell less than 6 A or more than 80 A", () => {
    expect([5.9, 80.1].map(pilotDuty_frac)).toEqual([undefined, undefined]);
  });
});

describe("common practice, no source", () => {
  const hoursAt = (current_A: number, kWh: number, power_kW: number, efficiency_frac: number) =>
    charged({ ...flatPack(kWh), charger: { efficiency_frac, power_kW } }, socketOf(current_A), 0).time_s / S_PER_H;

  it("26.5 kWh at 6.6 kW take four to five hours", () => {
    const full_h = hoursAt(32, 26.5, 6.6, 0.94);
    expect(full_h).toBeGreaterThan(4);
    expect(full_h).toBeLessThan(5);
  });

  it("from a household socket at 13 A eight to ten, by the share that is used", () => {
    for (const used of [0.85, 1]) {
      const time_h = hoursAt(13, 26.5 * used, 6.6, 0.93);
      expect(time_h).toBeGreaterThanOrEqual(8);
      expect(time_h).toBeLessThanOrEqual(10);
    }
  });

  it("and at 10 A about 13", () => {
    expect(Math.round(hoursAt(10, 26.5, 6.6, 0.9))).toBe(13);
  });
});
