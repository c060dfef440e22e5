import { expect, it } from "vitest";
import { copper_ohmpm, STRANDED_ratio } from "../../../../sim/plan/currents/copper.ts";

it("has the resistance of annealed copper at 20 °C, 17.24 mΩ for a metre of a square millimetre [IEC60028, 3.1]", () => {
  expect(1000 * copper_ohmpm(1, 20)).toBeCloseTo(17.241, 3);
  expect(copper_ohmpm(50, 20)).toBeCloseTo(copper_ohmpm(1, 20) / 50, 15);
});

it("has 0.393 % more for each kelvin: of 25 mm² at 90 °C 0.879 mΩ a metre", () => {
  expect(1000 * copper_ohmpm(25, 90)).toBeCloseTo((17.2414 / 25) * (1 + 0.00393 * 70), 5);
  expect(copper_ohmpm(25, 10)).toBeLessThan(copper_ohmpm(25, 20));
});

it("is longer than its wire in a flexible conductor: at most 1.10 to 1.14 of it, from memory of [IEC60228, table 3]", () => {
  expect(STRANDED_ratio).toBeGreaterThanOrEqual(1.1);
  expect(STRANDED_ratio).toBeLessThanOrEqual(1.14);
});
