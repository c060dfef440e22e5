import { expect, it } from "vitest";
import { chargers } from "../../../shared/parts/chargers.ts";

it.each(chargers.map((charger) => [charger.id, charger] as const))("%s is as good as chargers are", (_, charger) => {
  // Common practice, no source: 0.85 to 0.92 older or small, 0.92 to 0.95 of today.
  const { low, high } = charger.origins["efficiency_frac"];
  expect(low).toBeGreaterThanOrEqual(0.85);
  expect(high).toBeLessThanOrEqual(0.95);
});

it("larger and newer ones waste no more than smaller and older ones", () => {
  const efficiencies = chargers.map(({ data }) => data.efficiency_frac);
  expect(efficiencies).toEqual([...efficiencies].sort((a, b) => a - b));
});
