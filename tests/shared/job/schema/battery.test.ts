import { expect, it } from "vitest";
import { faultsOf } from "../../../support/faultsOf.ts";

it.each<[Record<string, unknown>, string]>([
  [
    { "module.discharge": { continuous_A: 100, peak_A: 90, peak_s: 10 } },
    "module.discharge.peak_A: found 90 A, continuous_A (100 A) or more wanted",
  ],
  [
    { "module.coldCharge": { none_degC: 5, full_degC: 5 } },
    "module.coldCharge.full_degC: found 5 degC, above none_degC (5 degC) wanted",
  ],
  [{ "module.cellMax_V": 2, "module.cellMin_V": 2.5 }, "module.cellMax_V: found 2 V, above cellMin_V (2.5 V) wanted"],
  [
    { "module.openCircuit": { soc_frac: [0.1, 1], cell_V: [3, 4] } },
    "module.openCircuit.soc_frac: found 0.1 to 1, 0 to 1 wanted",
  ],
  [
    { "module.openCircuit": { soc_frac: [0, 1], cell_V: [4, 3] } },
    "module.openCircuit.cell_V.1: found 3 V after 4 V, open-circuit voltage may not fall as charge rises",
  ],
  [
    { "packs.0.ceiling_frac": 0.2, "packs.0.floor_frac": 0.3, "packs.0.regenTo_frac": undefined },
    "packs.0.ceiling_frac: found 0.2, above floor_frac (0.3) wanted",
  ],
  [
    { "packs.0.regenTo_frac": 0.3, "packs.0.floor_frac": 0.3 },
    "packs.0.regenTo_frac: found 0.3, above floor_frac (0.3) wanted",
  ],
])("refuses %j", (changes, sentence) => {
  expect(faultsOf(changes)).toEqual([sentence]);
});
