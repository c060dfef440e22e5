import { expect, it } from "vitest";
import { supplies } from "../../../shared/parts/supplies.ts";

const phases = { household: 1, singlePhase: 1, threePhase: 3 } as const;

const power_kW = (name: string) => {
  const supply = supplies.find(({ data }) => data.name === name)?.data;
  if (!supply) throw new Error(`no supply ${name}`);
  return (phases[supply.kind] * supply.voltage_V * supply.current_A) / 1000;
};

// Volts times amps, to the two decimals that tables of outlets give.
it.each([
  ["Household socket, 8 A", 1.84],
  ["Household socket, 10 A", 2.3],
  ["Household socket, 13 A", 2.99],
  ["Household socket, 120 V, 15 A circuit", 1.44],
  ["Wall unit, 16 A, mode 3", 3.68],
  ["Wall unit, 32 A, mode 3", 7.36],
  ["Wall unit, 240 V, 40 A circuit, mode 3", 7.68],
])("%s gives %f kW", (name, expected_kW) => {
  expect(Math.abs(power_kW(name) - expected_kW)).toBeLessThan(0.005);
});

it("a load of hours takes four fifths of its breaker", () => {
  // [NEC2017, 625.41]: the circuit stands at least 125 % of the load.
  const current_A = (breaker: string) => supplies.find(({ data }) => data.name.includes(breaker))?.data.current_A ?? 0;
  expect(current_A("15 A circuit") * 1.25).toBe(15);
  expect(current_A("40 A circuit") * 1.25).toBe(40);
});
