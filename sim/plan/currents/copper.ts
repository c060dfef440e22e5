/** Resistivity of annealed copper at 20 degC, 1/58 ohm mm2/m, as resistance of a metre of one square millimetre. [IEC60028, 3.1] */
const COPPER_ohmpm = 1 / 58;
/** Change of its resistance for each kelvin at 20 degC, the mass being constant. [IEC60028, 3.1] */
const COEFFICIENT_perK = 0.00393;
const AT_degC = 20;

/**
 * A flexible conductor's strands are drawn thin and laid in turns: the most that class 5 of IEC 60228 allows at 20 degC is 1.10 to 1.14
 * of the ideal wire's between 16 and 120 mm2 [IEC60228, table 3], from memory.
 */
export const STRANDED_ratio = 1.12;

/**
 * Resistance of a metre of copper wire, in ohms: R' = ρ20 (1 + α20 (T − 20)) / A. [IEC60028, 3.1]
 * `section_mm2` is that of the metal.
 */
export function copper_ohmpm(section_mm2: number, temperature_degC: number): number {
  return (COPPER_ohmpm * (1 + COEFFICIENT_perK * (temperature_degC - AT_degC))) / section_mm2;
}
