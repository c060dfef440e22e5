import { J_PER_WH, ZERO_CELSIUS_K } from "../../units.ts";
import { kind, type QuantityKindInfo } from "./defineKind.ts";
import { J_PER_KJ } from "./unitSizes.ts";

/** Temperatures and what goes with them. */
export const heatKinds = {
  temperature: {
    ...kind("a temperature", "degC", "°C", -60, 200, [-40, 140], ["°C", "°F", "K"]),
    units: {
      c: 1,
      degc: 1,
      deg: 1,
      degree: 1,
      celsius: 1,
      degcelsius: 1,
      centigrade: 1,
      f: { shift: -32, factor: 5 / 9 },
      degf: { shift: -32, factor: 5 / 9 },
      fahrenheit: { shift: -32, factor: 5 / 9 },
      k: { shift: -ZERO_CELSIUS_K, factor: 1 },
      kelvin: { shift: -ZERO_CELSIUS_K, factor: 1 },
    },
    slips: ["k", "f"],
  },
  heatCapacity: {
    ...kind("a heat capacity", "kJpK", "kJ/K", 0.01, 5000, [1, 500], ["kJ/K", "J/K", "Wh/K"]),
    units: { "kj/k": 1, "j/k": 1e-3, "wh/k": J_PER_WH / J_PER_KJ, "kj/degc": 1 },
  },
  heatLoss: {
    ...kind("a heat loss", "WpK", "W/K", 0, 1000, [0.1, 100], ["W/K"]),
    units: { "w/k": 1, "w/degc": 1, "kw/k": 1000 },
  },
} as const satisfies Record<string, QuantityKindInfo>;
