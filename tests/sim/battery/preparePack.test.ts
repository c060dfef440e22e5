import { expect, it } from "vitest";
import type { Module, Pack } from "../../../shared/job/schema/battery.ts";
import { preparePack } from "../../../sim/battery/preparePack.ts";
import { lookUp } from "../../../sim/math/uniformTable.ts";
import { bareJob } from "../../support/bareCar.ts";

const { packs, module } = bareJob();
const made = (pack: Partial<Pack>, of: Partial<Module> = {}) =>
  preparePack({ ...packs[0], seriesModules: 5, parallelModules: 3, ...pack }, { ...module, ...of });

it("brings temperatures to kelvin, for resistance and for charging in the cold", () => {
  const pack = made(
    {},
    {
      resistanceByTemperature: { temperature_degC: [-20, 25], resistance_ratio: [3, 1] },
      coldCharge: { none_degC: 0, full_degC: 10 },
    },
  );
  expect(lookUp(pack.resistance_ratio, 253.15)).toBeCloseTo(3, 9);
  expect(lookUp(pack.resistance_ratio, 298.15)).toBeCloseTo(1, 9);
  expect(pack.coldChargeNone_K).toBeCloseTo(273.15, 9);
  expect(pack.coldChargeFull_K).toBeCloseTo(283.15, 9);
});

it("has the heat of all modules together, and none where a module has no word of it", () => {
  const heat = { capacity_kJpK: 12, cooling_WpK: 1.5, derateFrom_degC: 45, derateTo_degC: 60 };
  const { heat: whole } = made({}, { heat });
  expect(1 / whole.perCapacity_KpJ).toBeCloseTo(15 * 12_000, 6);
  expect(whole.cooling_WpK).toBeCloseTo(15 * 1.5, 9);
  expect([whole.derateFrom_K, whole.derateTo_K]).toEqual([318.15, 333.15]);
  expect(made({}).heat.perCapacity_KpJ).toBe(0);
});

it("takes braking up to the ceiling, unless it is told another charge", () => {
  expect(made({ ceiling_frac: 0.9, floor_frac: 0.2 })).toMatchObject({
    ceiling_frac: 0.9,
    regenTo_frac: 0.9,
    floor_frac: 0.2,
  });
  expect(made({ ceiling_frac: 0.9, regenTo_frac: 0.97 })).toMatchObject({ ceiling_frac: 0.9, regenTo_frac: 0.97 });
});

it("charges and discharges by each module's own currents, times the strings", () => {
  const pack = made(
    {},
    {
      discharge: { continuous_A: 80, peak_A: 160, peak_s: 10 },
      charge: { continuous_A: 20, peak_A: 40, peak_s: 30 },
      charging_ratio: 1.4,
    },
  );
  expect([pack.discharge.continuous_A, pack.discharge.peak_A]).toEqual([240, 480]);
  expect([pack.charge.continuous_A, pack.charge.peak_A]).toEqual([60, 120]);
  expect(pack.charging_ratio).toBe(1.4);
});

it("never has a resistance of nothing, by which a voltage would be divided", () => {
  const pack = made({}, { resistance: { soc_frac: [0, 1], module_mohm: [0, 0] } });
  expect(lookUp(pack.resistance_ohm, 0.5)).toBeGreaterThan(0);
  expect(lookUp(pack.resistance_ohm, 0.5)).toBeLessThan(1e-9);
});
