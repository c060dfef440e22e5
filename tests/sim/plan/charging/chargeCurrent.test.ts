import { describe, expect, it } from "vitest";
import { preparePack } from "../../../../sim/battery/preparePack.ts";
import { chargePoint } from "../../../../sim/plan/charging/chargeCurrent.ts";
import { chargeSetting } from "../../../../sim/plan/charging/chargeSetting.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";
import { socketOf, straightPack } from "../../../support/chargeable.ts";

/** Half charged: 60 V open-circuit, 80 V held at the end, 0.1 ohm of cells and so much of leads. */
function at(changes: Changes, { soc_frac = 0.5, temperature_K = 298.15, current_A = 100 } = {}) {
  const job = bareJob({ ...straightPack, ...changes, module: { ...straightPack.module, ...changes.module } });
  return chargePoint(
    chargeSetting(job, preparePack(job.packs[0], job.module), socketOf(current_A)),
    soc_frac,
    temperature_K,
  );
}
const wide = { charge: { continuous_A: 1000, peak_A: 1000, peak_s: 0 } };

describe("the current into the pack is the least of", () => {
  it("what the charger's power leaves after the car's own draw, at the terminals", () => {
    const { current_A, terminal_V, limit } = at({ charger: { power_kW: 0.75, carDraw_W: 130 }, module: wide });
    // 620 W = 10 A at 62 V with 0.2 ohm; here 0.1 ohm: I (60 + 0.1 I) = 620.
    expect(current_A * (60 + 0.1 * current_A)).toBeCloseTo(620, 9);
    expect(terminal_V).toBeCloseTo(60 + 0.1 * current_A, 12);
    expect(limit).toBe("power");
  });
  it("what its current leaves after that", () => {
    // 120 W at 60 V are 2 A.
    const found = at({ charger: { maxDc_A: 9, carDraw_W: 120 }, module: wide });
    expect(found).toMatchObject({ current_A: 7, terminal_V: 60.7, limit: "current" });
  });
  it("what the cells take, less where they are cold or hot", () => {
    const heat = { capacity_kJpK: 10, cooling_WpK: 0, derateFrom_degC: 40, derateTo_degC: 60 };
    const module = { charge: { continuous_A: 30, peak_A: 90, peak_s: 10 }, heat };
    const current_A = (temperature_degC: number) => at({ module }, { temperature_K: 273.15 + temperature_degC });
    expect(current_A(25)).toMatchObject({ current_A: 30, limit: "cells" });
    expect(current_A(55).current_A).toBeCloseTo(7.5, 9);
    const cold = at(
      { module: { ...module, coldCharge: { none_degC: 0, full_degC: 10 } } },
      { temperature_K: 273.15 + 4 },
    );
    expect(cold.current_A).toBeCloseTo(12, 9);
  });
  it("what brings the terminals to the set voltage", () => {
    // 1 V below it, over 0.1 ohm.
    const found = at({ module: wide }, { soc_frac: 0.975 });
    expect(found).toMatchObject({ limit: "voltage", terminal_V: 80 });
    expect(found.current_A).toBeCloseTo(10, 6);
    expect(found.held_A).toBe(found.current_A);
  });
});

it("is none where the cells are above the set voltage, and none where the car draws all", () => {
  const above = at({ module: { ...wide, cellMax_V: 3 } }, { soc_frac: 0.6 });
  expect(above).toMatchObject({ current_A: 0, limit: "voltage", terminal_V: 64 });
  expect(above.held_A).toBeCloseTo(-40, 6);
  expect(at({ charger: { power_kW: 0.1, carDraw_W: 130 }, module: wide }).current_A).toBe(0);
});

it("meets the cells' resistance when charging, warm or cold, and the leads', which do not warm the cells", () => {
  const module = {
    ...wide,
    charging_ratio: 1.5,
    resistanceByTemperature: { temperature_degC: [5, 25], resistance_ratio: [2, 1] },
  };
  const pack = { ...straightPack.pack, leads_mohm: 100 };
  const cold = at({ module, pack, charger: { maxDc_A: 10 } }, { temperature_K: 278.15 });
  // 0.1 x 2 x 1.5 ohm of cells and 0.1 of leads.
  expect(cold.terminal_V).toBeCloseTo(60 + 10 * 0.4, 9);
  expect(cold.cellsShare_frac).toBeCloseTo(0.75, 9);
});
