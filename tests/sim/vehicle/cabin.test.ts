import { describe, expect, it } from "vitest";
import { createHeatFactors, left_frac, warmed_K } from "../../../sim/math/heatLump.ts";
import { cabinAtStart_K, heaterPower_W, prepareCabin } from "../../../sim/vehicle/cabin.ts";

const AMBIENT_K = 273.15;
const heat = {
  kind: "thermostat",
  power_kW: 1.2,
  cabin_degC: 18,
  capacity_kJpK: 45,
  loss_WpK: 60,
  isPreheated: false,
} as const;

/** Second by second with the heater that the thermostat allows: temperature, power and energy after a time. */
function warm(power_kW: number, time_s: number, dt_s = 1) {
  const cabin = prepareCabin({ ...heat, power_kW });
  if (!cabin) throw new Error("a thermostat makes a cabin");
  const factors = createHeatFactors();
  let cabin_K = cabinAtStart_K(cabin, AMBIENT_K);
  let energy_J = 0;
  let power_W = 0;
  for (let t = 0; t < time_s; t += dt_s) {
    power_W = heaterPower_W(cabin, cabin_K, AMBIENT_K, left_frac(factors, cabin.lump, dt_s));
    energy_J += power_W * dt_s;
    cabin_K = warmed_K(cabin.lump, factors, cabin_K, power_W, AMBIENT_K, dt_s);
  }
  return { rise_K: cabin_K - AMBIENT_K, power_W, energy_J };
}

// A lump with a steady heat in it, in closed form: T - T0 = P/G (1 - e^(-G t/C)); full from nought to T_w after
// t* = -C/G ln(1 - G (T_w - T0)/P), then G (T_w - T0) holds it.
describe("a cabin from cold", () => {
  it("follows the closed form while the heater gives all it has", () => {
    const { rise_K } = warm(1.2, 600);
    expect(rise_K).toBeCloseTo((1200 / 60) * (1 - Math.exp((-60 * 600) / 45_000)), 9);
  });

  it("stays at what the heater can hold where that is below what is wanted", () => {
    const { rise_K, power_W } = warm(0.9, 20_000);
    expect(rise_K).toBeCloseTo(900 / 60, 6);
    expect(power_W).toBe(900);
  });

  it("takes full power until it is warm and then what it loses: 3 kW by hand", () => {
    const warm_s = (-45_000 / 60) * Math.log(1 - (60 * 18) / 3000);
    const { rise_K, power_W, energy_J } = warm(3, 1800);
    expect(rise_K).toBeCloseTo(18, 9);
    expect(power_W).toBeCloseTo(60 * 18, 9);
    // The second in which it becomes warm is taken as a whole: less than 2 W s of 1.9 MJ.
    expect(Math.abs(energy_J - (3000 * warm_s + 60 * 18 * (1800 - warm_s)))).toBeLessThan(2000);
  });

  it("gives the same energy in steps of a second and of a minute, within what a minute of overshoot is", () => {
    expect(Math.abs(warm(3, 1800, 60).energy_J / warm(3, 1800).energy_J - 1)).toBeLessThan(0.005);
  });
});

it("begins warm where it was warmed from the socket, and never colder than the air", () => {
  const cabin = prepareCabin({ ...heat, isPreheated: true });
  if (!cabin) throw new Error("a thermostat makes a cabin");
  expect(cabinAtStart_K(cabin, AMBIENT_K)).toBe(AMBIENT_K + 18);
  expect(cabinAtStart_K(cabin, AMBIENT_K + 25)).toBe(AMBIENT_K + 25);
});

it("is none where no thermostat decides", () => {
  expect(prepareCabin(undefined)).toBeUndefined();
  expect(prepareCabin({ kind: "byHour", power_kW: 1 })).toBeUndefined();
});
