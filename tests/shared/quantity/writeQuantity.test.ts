import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type QuantityKind, quantityKinds } from "../../../shared/quantity/kinds/kinds.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { readQuantity } from "../../../shared/quantity.ts";

const kinds = Object.keys(quantityKinds) as QuantityKind[];
const habits: readonly UnitHabit[] = ["metric", "british", "american"];

describe("a quantity for people", () => {
  it.each<[QuantityKind, number, UnitHabit, string]>([
    ["mass", 723.93, "metric", "724 kg"],
    ["mass", 723.93, "british", "1600 lb"],
    ["mass", 20, "british", "44.1 lb"],
    ["mass", 723.93, "american", "1600 lb"],
    ["speed", 83.685888, "british", "52 mph"],
    ["speed", 83.685888, "metric", "83.7 km/h"],
    ["torque", 165.41, "british", "122 lb ft"],
    ["power", 44.742, "british", "60 bhp"],
    ["power", 44.742, "metric", "44.7 kW"],
    ["power", 44.742, "american", "60 hp"],
    ["electricPower", 44.742, "british", "44.7 kW"],
    ["electricPower", 44.742, "american", "44.7 kW"],
    ["gradient", 1 / 6, "british", "1 in 6"],
    ["gradient", -1 / 6, "british", "1 in 6 down"],
    ["gradient", 0, "british", "level"],
    ["gradient", 1 / 6, "metric", "16.7 %"],
    ["pressure", 2.0684, "british", "30 psi"],
    ["fuelUse", 10.8647, "british", "26 mpg"],
    ["fuelUse", 10.8647, "american", "21.6 mpg (US)"],
    ["temperature", 20, "american", "68 °F"],
    ["temperature", 20, "british", "20 °C"],
    ["fraction", 0.8512, "metric", "85.1 %"],
    ["finalDrive", 41 / 9, "metric", "4.56"],
    ["distance", 100, "british", "62.1 miles"],
    ["count", 1234, "metric", "1234"],
    ["energyUse", 155.34, "british", "250 Wh/mile"],
    ["mass", Number.NaN, "metric", "-"],
    ["fuelUse", 0, "british", "-"],
  ])("%s %f, %s: %s", (kind, value, habit, words) => expect(writeQuantity(kind, value, habit)).toBe(words));

  it("reads back to the figures it was written with", () => {
    let compared = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.constantFrom(...habits),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (kind, habit, share) => {
          const [low, high] = quantityKinds[kind].usual;
          const value = kind === "count" ? Math.round(low + share * (high - low)) : low + share * (high - low);
          const text = writeQuantity(kind, value, habit, 9);
          if (text === "level" || text.startsWith("1 in ")) return true;
          const reading = readQuantity(kind, text, {
            gallon: "imperial",
            cwt: "112",
          });
          if (!reading.ok) return false;
          compared++;
          // nine figures of a number that a shift (temperature) may have made up to ten times larger
          return !reading.unknown && Math.abs(reading.value - value) <= 5e-8 * Math.max(Math.abs(value), 30);
        },
      ),
      { numRuns: 3000, seed: 5 },
    );
    expect(compared).toBeGreaterThan(2500);
  });
});

describe("a number in so many figures", () => {
  it.each<[number, number, string]>([
    [723.93, 3, "724"],
    [1484, 3, "1480"],
    [0.015, 3, "0.015"],
    [99.96, 3, "100"],
    [-0.0001, 3, "-0.0001"],
    [-0, 3, "0"],
    [4.5, 3, "4.5"],
    [1e-7, 3, "1e-7"],
    [123456.789, 12, "123456.789"],
    [1480.5, 12, "1480.5"],
  ])("%f in %i: %s", (value, digits, text) => expect(formatNumber(value, digits)).toBe(text));
});
