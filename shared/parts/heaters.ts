import type { CabinHeat, Weather } from "../job/schema/conditions.ts";

/** A way to keep a car's people warm. Common practice, no source. */
export interface Heater {
  readonly id: string;
  readonly words: string;
  readonly heat: CabinHeat;
}

const cabin = { kind: "thermostat", cabin_degC: 18, isPreheated: false, trip_km: 10 } as const;
/** A demister blows on the windscreen alone: it heats no cabin, and is on by the hour. */
export const heaters: readonly [Heater, Heater, Heater, ...Heater[]] = [
  { id: "none", words: "Not at all: coat and rug", heat: { kind: "none" } },
  { id: "demister", words: "The windscreen only: demister, 0.3 kW", heat: { kind: "byHour", power_kW: 0.3 } },
  {
    id: "small",
    words: "Electric heater in a small cabin, 1.5 kW",
    heat: { ...cabin, power_kW: 1.5, capacity_kJpK: 45, loss_WpK: 60 },
  },
  {
    id: "large",
    words: "Electric heater in a large cabin, 3 kW",
    heat: { ...cabin, power_kW: 3, capacity_kJpK: 90, loss_WpK: 110 },
  },
  {
    id: "fuel",
    words: "Heater that burns fuel, its fan 40 W",
    heat: { kind: "fuel", power_kW: 2, fan_W: 40, fuel: "diesel", efficiency_frac: 0.8 },
  },
];

/** A winter's day of a country with frost, wet and dark, before anybody has said otherwise: common practice, no source. */
export function usualWinter(heat: CabinHeat): Weather {
  return {
    temperature_degC: 0,
    heat,
    isDark: true,
    drag_ratio: 1,
    rolling_ratio: 1.05,
    usable_frac: 0.95,
    resistance_ratio: 1,
    wind_kmh: 0,
  };
}
