import { L_PER_GALLON_US } from "../../../shared/units.ts";

/** Carbon dioxide of a US gallon burnt, in grams  [EPA-420-F-11-041, petrol 8,887 g, diesel 10,180 g]. Blends with alcohol or ester are lower. */
const perGallon = { petrol: 8887, diesel: 10_180 } as const;

/** Carbon dioxide of a litre of fuel burnt, in grams: petrol 2348, diesel 2689. Its making and bringing are not in it. */
export function fuelCarbon_gpl(fuel: keyof typeof perGallon): number {
  return perGallon[fuel] / L_PER_GALLON_US;
}
