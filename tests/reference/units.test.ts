import { describe, expect, it } from "vitest";
import type { QuantityKind } from "../../shared/quantity/kinds/kinds.ts";
import { readQuantity } from "../../shared/quantity.ts";

function read(kind: QuantityKind, text: string): number {
  const reading = readQuantity(kind, text, { min: -1e9, max: 1e9 });
  if (!reading.ok || reading.unknown) throw new Error(`${text} did not read as ${kind}`);
  return reading.value;
}

// Exact by definition [SIBrochure9, tables 1, 6 and 8; NIST811, appendix B.8, factors in bold]. Nothing is rounded in them,
// so the tolerance is that of double arithmetic, a few parts in 1e16.
const exact: readonly [QuantityKind, string, number][] = [
  ["mass", "1 lb", 0.45359237],
  ["mass", "1 t", 1000],
  ["mass", "1 cwt (112 lb)", 50.80234544],
  ["mass", "1 cwt (100 lb)", 45.359237],
  ["mass", "1 ton", 1016.0469088],
  ["mass", "1 short ton", 907.18474],
  ["length", "1 in", 25.4],
  ["length", "1 ft", 304.8],
  ["length", "1 yd", 914.4],
  ["length", "1 m", 1000],
  ["distance", "1 mile", 1.609344],
  ["speed", "1 mph", 1.609344],
  ["speed", "1 m/s", 3.6],
  ["speed", "1 knot", 1.852],
  ["area", "1 ft²", 0.09290304],
  ["area", "1 in²", 6.4516e-4],
  ["force", "1 kgf", 9.80665],
  ["torque", "1 kgf m", 9.80665],
  ["pressure", "1 kPa", 0.01],
  ["airPressure", "1 atm", 101.325],
  ["airPressure", "1 mbar", 0.1],
  ["pressure", "1 kgf/cm²", 0.980665],
  ["energy", "1 MJ", 1 / 3.6],
  ["energy", "1 Wh", 0.001],
  ["energyUse", "1 MJ/km", 1000 / 3.6],
  ["charge", "3600 coulomb", 1],
  ["duration", "1 h", 3600],
  ["duration", "1 day", 86_400],
  ["temperature", "0 K", -273.15],
  ["temperature", "32 °F", 0],
  ["temperature", "212 °F", 100],
  ["temperature", "-40 °F", -40],
  ["volume", "1 imp gal", 4.54609],
  ["volume", "1 US gal", 3.785411784],
  ["angle", "1 rad", 180 / Math.PI],
  ["resistance", "1 ohm", 1000],
];

// Factors printed to seven figures [NIST811, appendix B.8]: half a unit of the last figure.
const printed: readonly [QuantityKind, string, number, number][] = [
  ["force", "1 lbf", 4.448222, 5e-7],
  ["torque", "1 lb ft", 1.355818, 5e-7],
  ["torque", "1 lb in", 0.1129848, 5e-8],
  ["power", "1000 bhp", 745.6999, 5e-5],
  ["power", "1000 PS", 735.4988, 5e-5],
  ["airPressure", "1 psi", 6.894757, 5e-7],
  ["airPressure", "1 inHg", 3.386389, 5e-7],
  ["airPressure", "1 mmHg", 0.1333224, 5e-8],
  ["inertia", "1 lb ft²", 0.04214011, 5e-9],
  ["inertia", "1 lb in²", 2.926397e-4, 5e-11],
  ["rotation", "1 rad/s", 60 / (2 * Math.PI), 1e-12],
  ["mass", "1 st", 6.350293, 5e-7],
  // miles per gallon to litres for 100 km: divide 235.215 by the number (US), 282.481 (imperial)
  ["fuelUse", "1 mpg US", 235.215, 5e-4],
  ["fuelUse", "1 mpg imp", 282.481, 5e-4],
];

describe("conversions against the printed factors", () => {
  it.each(exact)("%s: %s is exactly %d", (kind, text, expected) => {
    expect(Math.abs(read(kind, text) - expected)).toBeLessThanOrEqual(4e-16 * Math.max(Math.abs(expected), 300));
  });

  it.each(printed)("%s: %s is %d to the printed figures", (kind, text, expected, half) => {
    expect(Math.abs(read(kind, text) - expected)).toBeLessThanOrEqual(half);
  });

  it("holds fifty factors", () => expect(exact.length + printed.length).toBe(50));
});
