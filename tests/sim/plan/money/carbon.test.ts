import { describe, expect, it } from "vitest";
import { readQuantity } from "../../../../shared/quantity.ts";
import { fuelCarbon_gpl } from "../../../../sim/plan/money/carbon.ts";

describe("carbon dioxide of fuel", () => {
  // EPA-420-F-11-041: 8,887 g of a US gallon of petrol, 10,180 g of diesel; the gallon is 3.785411784 l.
  it("is that of the gallon, in litres", () => {
    expect(fuelCarbon_gpl("petrol")).toBeCloseTo(2347.7, 1);
    expect(fuelCarbon_gpl("diesel")).toBeCloseTo(2689.3, 1);
  });
  // 40 CFR 600, Appendix II: 0.868 of the test fuel's mass is carbon, 0.745 kg/l; molar masses 44.009 and 12.011.
  it("agrees with the carbon of the American test fuel to 1 %", () => {
    expect(fuelCarbon_gpl("petrol") / (1000 * 0.868 * 0.745 * (44.009 / 12.011))).toBeCloseTo(1, 1.7);
  });
  it("is 329 g for each kilometre at 14 l/100 km", () => {
    expect(0.14 * fuelCarbon_gpl("petrol")).toBeCloseTo(329, 0);
  });
});

describe("consumption as people write it", () => {
  // Exact arithmetic: 282.481 and 235.215 over miles to the gallon of 4.54609 and 3.785411784 l.
  it.each([
    ["38 mpg imp", 282.481 / 38],
    ["38 mpg US", 235.215 / 38],
    ["8.8 l/100 km", 8.8],
    ["11.4 km/l", 100 / 11.4],
  ])("%s", (text, used_l100km) => {
    const reading = readQuantity("fuelUse", text);
    expect(reading.ok && !reading.unknown ? reading.value : undefined).toBeCloseTo(used_l100km, 4);
  });
  it("a price of fuel by the litre or by the American gallon", () => {
    const reading = readQuantity("fuelPrice", "3.60 /gal US");
    expect(reading.ok && !reading.unknown ? reading.value : undefined).toBeCloseTo(3.6 / 3.785411784, 9);
  });
});
