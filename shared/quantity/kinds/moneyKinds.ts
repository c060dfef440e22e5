import { L_PER_GALLON_IMPERIAL, L_PER_GALLON_US } from "../../units.ts";
import { kind, type QuantityKindInfo } from "./defineKind.ts";
import { KM_PER_MILE } from "./unitSizes.ts";

/** Prices, in the job's currency whatever that is, and carbon. */
export const moneyKinds = {
  money: { ...kind("an amount of money", "", "", -1e8, 1e8, [1, 1e6], []), units: {} },
  fuelPrice: {
    ...kind("a price of fuel", "perl", "/l", 0, 100_000, [0.2, 10], ["/l", "/gal", "/gal US"]),
    units: {
      "/l": 1,
      "/litre": 1,
      "/liter": 1,
      "/gal": 1 / L_PER_GALLON_IMPERIAL,
      "/galimp": 1 / L_PER_GALLON_IMPERIAL,
      "/gallon": 1 / L_PER_GALLON_IMPERIAL,
      "/galus": 1 / L_PER_GALLON_US,
      "/usgal": 1 / L_PER_GALLON_US,
    },
  },
  /** From one year to the next, as a share of the year before. */
  rate: { ...kind("a rate a year", "frac", "%", -0.5, 1, [-0.05, 0.2], ["%"]), units: {} },
  gridCarbon: {
    ...kind("carbon dioxide of a kWh", "gpkWh", "g/kWh", 0, 3000, [5, 1200], ["g/kWh", "kg/kWh"]),
    units: { "g/kwh": 1, "kg/kwh": 1000 },
    slips: ["kg/kwh"],
  },
  carbon: {
    ...kind("carbon dioxide", "gpkm", "g/km", 0, 10_000, [5, 1000], ["g/km"]),
    units: { "g/km": 1, "g/mile": 1 / KM_PER_MILE },
  },
} as const satisfies Record<string, QuantityKindInfo>;
