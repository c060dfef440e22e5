import { expect, it } from "vitest";
import { Charger } from "../../../../shared/job/schema/charger.ts";

const plain = { name: "On board", efficiency_frac: 0.9 };
const byLoad = { load_frac: [0.1, 0.25, 1], efficiency_frac: [0.7, 0.85, 0.92] };

function faultsOf(charger: unknown): string[] {
  const result = Charger.safeParse(charger);
  return result.success ? [] : result.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
}

it("needs a name and one efficiency, as jobs had it before, and takes the rest where it is known", () => {
  expect(faultsOf(plain)).toEqual([]);
  expect(faultsOf({ ...plain, power_kW: 3.3, efficiencyByLoad: byLoad, isThreePhase: false, maxAc_A: 16 })).toEqual([]);
});

it("refuses an efficiency above one, alone and in the table", () => {
  expect(faultsOf({ ...plain, efficiency_frac: 1.04 }).join()).toMatch(/^efficiency_frac/);
  const above = { ...byLoad, efficiency_frac: [0.7, 0.85, 1.2] };
  expect(faultsOf({ ...plain, power_kW: 3.3, efficiencyByLoad: above }).join()).toMatch(
    /^efficiencyByLoad.efficiency_frac.2/,
  );
});

it("refuses a power of nothing", () => {
  expect(faultsOf({ ...plain, power_kW: 0 }).join()).toMatch(/^power_kW/);
});

it("refuses a table that gives more than it takes more for", () => {
  // At 0.2 of its load 0.2 / 0.4 = 0.5 is taken, at 0.4 of it 0.4 / 0.9 = 0.44.
  const leap = { load_frac: [0.2, 0.4], efficiency_frac: [0.4, 0.9] };
  expect(faultsOf({ ...plain, power_kW: 3.3, efficiencyByLoad: leap })).toEqual([
    "efficiencyByLoad.efficiency_frac.1: found 0.9 after 0.4: giving more, the charger would take less from the wall",
  ]);
});

it("refuses a table by load without the power that the load is a share of", () => {
  expect(faultsOf({ ...plain, efficiencyByLoad: byLoad })).toEqual([
    "power_kW: found none, the charger's power wanted: its efficiency goes by its share of that",
  ]);
});
