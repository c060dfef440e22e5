import { describe, expect, it } from "vitest";
import { batterySettings, converterSettings } from "../../../../sim/plan/settings/batterySettings.ts";
import { type BasisChanges, basisOf, rowOf } from "./basisByHand.ts";

const row = (key: string, changes: BasisChanges = {}) => rowOf(batterySettings(basisOf(changes)), key);

describe("battery management", () => {
  it("counts cells and strings; a pack given as a whole has none to count", () => {
    expect(row("cells")[0]).toBe("32 in series; iron phosphate, lithium ion");
    expect(row("cells", { pack: { parallelModules: 3 } })[0]).toBe(
      "32 in series, 3 strings; iron phosphate, lithium ion",
    );
    const whole = { energy_kWh: 10, nominal_V: 100, mass_kgpkWh: 8 };
    expect(row("cells", { pack: { parallelModules: 3, whole } })[0]).not.toMatch(/strings/);
    expect(row("cells", { module: { chemistry: "nickel" } })[0]).toMatch(/nickel \(manganese, cobalt\), lithium ion$/);
  });
  it("cuts at the cells' limits, and warns 0.2 V above the lower and 0.05 V below the upper", () => {
    expect(row("cellCuts")[0]).toBe("2.5 V and 3.65 V");
    expect(row("cellWarnings")[0]).toBe("2.7 V and 3.6 V");
  });
  it("balances from 0.15 V below full on iron phosphate, 0.1 V on nickel, to 10 mV", () => {
    expect(row("balance")[0]).toBe("from 3.5 V, down to 10 mV between cells");
    expect(row("balance", { module: { chemistry: "nickel" } })[0]).toMatch(/^from 3\.55 V/);
  });
  it("has the cells' temperatures as far as the job knows them", () => {
    expect(row("cellTemperatures")[0]).toBe("no charge at 0 °C; hot limits by the cells' sheet");
    const heat = { capacity_kJpK: 100, cooling_WpK: 10, derateFrom_degC: 45, derateTo_degC: 60 };
    expect(row("cellTemperatures", { module: { heat } })[0]).toBe(
      "no charge at 0 °C; less current from 45 °C, none at 60 °C",
    );
  });
  it("is told the capacity that was tested, never the label's", () => {
    expect(row("capacity").slice(0, 2)).toEqual(["100 Ah", "in the job: test it before it is entered"]);
    expect(row("capacity", { pack: { parallelModules: 2 } })[0]).toBe("200 Ah");
    expect(row("capacity", { module: { condition: "reclaimed" } })[1]).toBe(
      "as tested, the weakest module's; never the label's",
    );
  });
  it("sets the state of charge at full, more so where the curve is flat", () => {
    expect(row("socReset")[0]).toMatch(/never in mid-charge: the curve is flat there$/);
    expect(row("socReset", { module: { chemistry: "nickel" } })[0]).toMatch(/never in mid-charge$/);
  });
});

describe("the DC-DC converter", () => {
  const converter = (key: string, changes: BasisChanges = {}) => rowOf(converterSettings(basisOf(changes)), key);
  const item = (power_W: number, supply: "12V" | "pack") => ({ name: "a", power_W, duty_frac: 1, supply });
  it("is sized by all loads of 12 V together", () => {
    const items = [item(240, "12V"), item(1500, "pack"), item(100, "12V")];
    expect(converter("converterVolts", { accessories: { standing_W: 60, items } })[0]).toBe(
      "13.8 to 14.2 V; 0.4 kW with everything on",
    );
  });
  it("cuts off at the lowest pack voltage: the cells' or the controller's", () => {
    expect(converter("converterCut")[0]).toBe("80 V");
    expect(converter("converterCut", { controller: { min_V: 90 } })[0]).toBe("90 V");
  });
  it("is warned of where it keeps the capacitors from charging", () => {
    expect(converter("converterEnabled")[2]).toBe("");
    expect(converter("converterEnabled", { load_W: 300 })[2]).toBe(
      "As it is wired it keeps the capacitors from charging: see the currents.",
    );
    // A load so small that they charge all the same.
    expect(converter("converterEnabled", { load_W: 1 })[2]).toBe("");
  });
});
