import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  AMERICAN,
  BRITISH,
  type FigureUnits,
  fromUnit,
  inUnit,
  METRIC,
  MILES,
} from "../../../../../web/charts/parts/figure/figureUnits.ts";

const habits = { METRIC, MILES, BRITISH, AMERICAN };

describe("units of a figure", () => {
  it.each<[keyof typeof habits, keyof FigureUnits, number, string, number]>([
    ["METRIC", "distance", 1500, "km", 1.5],
    ["METRIC", "speed", 10, "km/h", 36],
    ["METRIC", "temperature", 273.15, "°C", 0],
    ["METRIC", "power", 1500, "kW", 1.5],
    ["MILES", "distance", 1609.344, "miles", 1],
    ["MILES", "height", 0.3048, "ft", 1],
    ["MILES", "speed", 0.44704, "mph", 1],
    ["MILES", "consumption", 100, "Wh/mile", 160.9344],
    ["MILES", "torque", 1.3558179483, "lb ft", 1],
    ["MILES", "mass", 0.45359237, "lb", 1],
    ["MILES", "force", 4.4482216153, "lbf", 1],
    ["BRITISH", "force", 5, "N", 5],
    ["BRITISH", "power", 745.6998716, "bhp", 1],
    ["BRITISH", "electricPower", 1500, "kW", 1.5],
    ["BRITISH", "temperature", 293.15, "°C", 20],
    ["AMERICAN", "power", 745.6998716, "hp", 1],
    ["AMERICAN", "temperature", 273.15, "°F", 32],
    ["AMERICAN", "temperature", 373.15, "°F", 212],
  ])("%s: %s of %s in the base unit is shown in %s as %s", (habit, kind, base, sign, shown) => {
    const unit = habits[habit][kind];
    expect(unit.sign).toBe(sign);
    expect(inUnit(unit, base)).toBeCloseTo(shown, 8);
  });

  it("are read back as they are shown", () => {
    const units = Object.values(habits).flatMap((habit) => Object.values(habit));
    fc.assert(
      fc.property(fc.constantFrom(...units), fc.double({ min: -1e4, max: 1e4, noNaN: true }), (unit, base) => {
        expect(fromUnit(unit, inUnit(unit, base))).toBeCloseTo(base, 6);
      }),
    );
  });
});
