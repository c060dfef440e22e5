import { expect, it } from "vitest";
import { faultsOf } from "../../../support/faultsOf.ts";

const map = {
  kind: "efficiencyMap",
  speed_rpm: [0, 1000, 2000],
  torque_Nm: [0, 50, 100],
  efficiency_frac: [
    [0, 0, 0],
    [0, 0.8, 0.85],
    [0, 0.85, 0.9],
  ],
};

it("takes a map whose efficiencies mean nothing at no speed and no torque", () => {
  expect(faultsOf({ "motor.loss": map })).toEqual([]);
});

it.each<[Record<string, unknown>, string]>([
  [
    { "motor.loss": { ...map, efficiency_frac: map.efficiency_frac.slice(1) } },
    "motor.loss.efficiency_frac: found 2 values, 3 wanted: one for each of speed_rpm",
  ],
  [
    { "motor.loss": { ...map, efficiency_frac: [...map.efficiency_frac.slice(0, 2), [0, 0.85]] } },
    "motor.loss.efficiency_frac.2: found 2 values, 3 wanted: one for each of torque_Nm",
  ],
  [
    { "motor.loss": { ...map, efficiency_frac: [...map.efficiency_frac.slice(0, 2), [0, 0.005, 0.9]] } },
    "motor.loss.efficiency_frac.2.1: found 0.005, 0.01 to 1 allowed",
  ],
  [
    { "motor.loss": { kind: "lossTable", speed_rpm: [0, 1000], torque_Nm: [0, 50], loss_W: [[0, 1]] } },
    "motor.loss.loss_W: found 1 value, 2 wanted: one for each of speed_rpm",
  ],
  [
    { "motor.heat": { capacity_kJpK: 20, cooling_WpK: 5, derateFrom_degC: 140, derateTo_degC: 140 } },
    "motor.heat.derateTo_degC: found 140 degC, above derateFrom_degC (140 degC) wanted",
  ],
])("refuses what contradicts itself", (changes, sentence) => {
  expect(faultsOf(changes)).toEqual([sentence]);
});

it("asks for two speeds above none in a map", () => {
  const thin = { ...map, speed_rpm: [0, 1000], efficiency_frac: map.efficiency_frac.slice(0, 2) };
  expect(faultsOf({ "motor.loss": thin })).toEqual(["motor.loss.speed_rpm: found 1, at least 2 speeds above 0 wanted"]);
});
