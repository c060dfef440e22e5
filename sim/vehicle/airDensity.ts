import { REFERENCE_AIR_K, REFERENCE_AIR_kgpm3, REFERENCE_AIR_Pa } from "../constants.ts";

/**
 * Density of dry air, by the gas law from the reference state of road-load work (1.189 kg/m3 at 20 degC, 100 kPa):
 *
 *   rho = 1.189 · (p / 100 kPa) · (293.15 K / T)      [GTR15, Annex 4, K2]
 *
 * so that coefficients at reference conditions come through unchanged. Within 0.06 % of the gas law with ISO 2533's constant.
 */
export function airDensity_kgpm3(temperature_K: number, pressure_Pa: number): number {
  return REFERENCE_AIR_kgpm3 * (pressure_Pa / REFERENCE_AIR_Pa) * (REFERENCE_AIR_K / temperature_K);
}

/**
 * Pressure of the standard atmosphere at a height above the sea, up to 11 km.
 *
 *   p = 101 325 · (1 - 0.0065 h / 288.15)^(g / (0.0065 R)),  g = 9.80665, R = 287.05287      [ISO2533, 2.7]
 */
export function standardPressure_Pa(altitude_m: number): number {
  const lapse = 0.0065;
  return 101_325 * (1 - (lapse * altitude_m) / 288.15) ** (9.80665 / (lapse * 287.05287));
}
