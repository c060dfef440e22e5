import { describe, expect, it } from "vitest";
import {
  arrhenius25,
  ironPhosphate_V,
  nickelRich_V,
  olderPolymer_V,
  soc_frac,
} from "../../shared/parts/openCircuitCurves.ts";

const { tanh, exp } = Math;

/** Voltage of the positive electrode against lithium at stoichiometry y. [Chen2020, eq. 8] */
function positive_V(y: number): number {
  return (
    -0.809 * y +
    4.4875 -
    0.0428 * tanh(18.5138 * (y - 0.5542)) -
    17.7326 * tanh(15.789 * (y - 0.3117)) +
    17.5842 * tanh(15.9308 * (y - 0.312))
  );
}

/** Voltage of the negative electrode against lithium at stoichiometry x. [Chen2020, eq. 9] */
function negative_V(x: number): number {
  return (
    1.9793 * exp(-39.3631 * x) +
    0.2482 -
    0.0909 * tanh(29.8538 * (x - 0.1234)) -
    0.04478 * tanh(14.9159 * (x - 0.2769)) -
    0.0205 * tanh(30.4444 * (x - 0.6103))
  );
}

/** The cell between its ends; the four stoichiometries are from memory, the voltages at the ends (2.5, 4.2 V) agree. */
function chen2020_V(soc: number): number {
  return positive_V(0.9084 + (0.2661 - 0.9084) * soc) - negative_V(0.0279 + (0.9014 - 0.0279) * soc);
}

/** [ChenRinconMora2006, eq. 2] */
function chenRinconMora_V(soc: number): number {
  return -1.031 * exp(-35 * soc) + 3.685 + 0.2156 * soc - 0.1178 * soc ** 2 + 0.3201 * soc ** 3;
}

/** Voltage of a table of ours at a state of charge that is one of its own. */
function at(curve_V: readonly number[], soc: number): number {
  const i = soc_frac.findIndex((value) => Math.abs(value - soc) < 1e-9);
  expect(i).toBeGreaterThanOrEqual(0);
  return curve_V[i];
}

// Half of the last digit our tables print; wider than that would hide a slip of a digit.
const tableTolerance_V = 0.00005 + 1e-9;

describe("the nickel-rich curve", () => {
  it("is the published electrode equations at every 5 % of charge", () => {
    expect(nickelRich_V).toHaveLength(21);
    soc_frac.forEach((soc, i) => {
      expect(Math.abs(nickelRich_V[i] - chen2020_V(soc)), `at ${soc}`).toBeLessThanOrEqual(tableTolerance_V);
    });
  });

  it("agrees to 1 mV with values worked out from the paper", () => {
    // Volts at shares of charge, worked out independently of this code. 1 mV is what the stated windows can carry.
    const worked: [number, number][] = [
      [0, 2.4977],
      [0.05, 3.0728],
      [0.1, 3.2577],
      [0.2, 3.4493],
      [0.3, 3.5483],
      [0.4, 3.6343],
      [0.5, 3.7078],
      [0.6, 3.8089],
      [0.7, 3.9236],
      [0.8, 4.0215],
      [0.9, 4.0941],
      [1, 4.1929],
    ];
    for (const [soc, cell_V] of worked) {
      expect(Math.abs(at(nickelRich_V, soc) - cell_V)).toBeLessThan(0.001);
      expect(Math.abs(chen2020_V(soc) - cell_V)).toBeLessThan(0.001);
    }
  });

  it("comes from electrodes of 0.13309 V and 3.97196 V at half stoichiometry", () => {
    // To half of the last digit of the values worked out.
    expect(Math.abs(negative_V(0.5) - 0.1330855)).toBeLessThan(5e-8);
    expect(Math.abs(positive_V(0.5) - 3.9719587)).toBeLessThan(5e-8);
  });
});

describe("the older polymer curve", () => {
  it("is the published equation at every 5 % of charge", () => {
    expect(olderPolymer_V).toHaveLength(21);
    soc_frac.forEach((soc, i) => {
      expect(Math.abs(olderPolymer_V[i] - chenRinconMora_V(soc)), `at ${soc}`).toBeLessThanOrEqual(tableTolerance_V);
    });
  });

  it("agrees to 1 mV with values worked out from the paper", () => {
    const worked: [number, number][] = [
      [0, 2.654],
      [0.05, 3.5164],
      [0.1, 3.6746],
      [0.2, 3.725],
      [0.3, 3.7477],
      [0.5, 3.8034],
      [0.7, 3.888],
      [0.8, 3.946],
      [0.9, 4.017],
      [1, 4.1029],
    ];
    for (const [soc, cell_V] of worked) expect(Math.abs(at(olderPolymer_V, soc) - cell_V)).toBeLessThan(0.001);
  });
});

describe("the iron phosphate curve", () => {
  it("changes by less than 0.10 V from 30 to 80 % of charge", () => {
    const change_V = at(ironPhosphate_V, 0.8) - at(ironPhosphate_V, 0.3);
    expect(change_V).toBeGreaterThan(0);
    expect(change_V).toBeLessThan(0.1);
  });

  it("passes through the bands commonly drawn, from memory", () => {
    const bands: [number, number, number][] = [
      [0, 2.5, 2.8],
      [0.1, 3.2, 3.2],
      [0.2, 3.22, 3.22],
      [0.3, 3.25, 3.25],
      [0.4, 3.28, 3.3],
      [0.5, 3.28, 3.3],
      [0.6, 3.28, 3.3],
      [0.7, 3.32, 3.33],
      [0.8, 3.32, 3.33],
      [0.9, 3.33, 3.34],
      [1, 3.4, 3.4],
    ];
    expect(ironPhosphate_V).toHaveLength(21);
    for (const [soc, low_V, high_V] of bands) {
      expect(at(ironPhosphate_V, soc), `at ${soc}`).toBeGreaterThanOrEqual(low_V);
      expect(at(ironPhosphate_V, soc), `at ${soc}`).toBeLessThanOrEqual(high_V);
    }
  });
});

describe("resistance by temperature", () => {
  const GAS_CONSTANT = 8.314; // J/(mol K)
  const inverse_perK = (temperature_degC: number) => 1 / (temperature_degC + 273.15) - 1 / 298.15;

  it("is Arrhenius' law with 25 kJ/mol at every entry", () => {
    arrhenius25.temperature_degC.forEach((temperature_degC, i) => {
      const law = exp((25_000 / GAS_CONSTANT) * inverse_perK(temperature_degC));
      // Half of the last digit the table prints.
      expect(Math.abs(arrhenius25.resistance_ratio[i] - law)).toBeLessThanOrEqual(tableTolerance_V);
    });
    expect(arrhenius25.temperature_degC).toHaveLength(7);
  });

  it("is 2.52 at 0, 3.824 at -10 and 0.617 at 40 degC", () => {
    const ratioAt = (temperature_degC: number) =>
      arrhenius25.resistance_ratio[arrhenius25.temperature_degC.indexOf(temperature_degC)];
    expect(Math.abs(ratioAt(0) - 2.52)).toBeLessThan(0.005);
    expect(Math.abs(ratioAt(-10) - 3.824)).toBeLessThan(0.0005);
    expect(Math.abs(ratioAt(40) - 0.617)).toBeLessThan(0.0005);
    expect(ratioAt(25)).toBe(1);
  });

  it("at 0 degC lies inside the 1.8 to 3 times that are commonly found", () => {
    const cold = arrhenius25.resistance_ratio[arrhenius25.temperature_degC.indexOf(0)];
    expect(cold).toBeGreaterThan(1.8);
    expect(cold).toBeLessThan(3);
  });
});
