/** State of charge in steps of 5 %: the axis of the curves below. */
export const soc_frac: number[] = [
  0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 1,
];

/**
 * Open-circuit voltage of one nickel-rich cell (NMC 811 on graphite with silicon), the difference of both electrodes'
 * equations [Chen2020, eqs. 8-9] between the stoichiometries x 0.0279 to 0.9014 and y 0.9084 to 0.2661 from empty to
 * full (these four from memory; the ends land on the cell's own 2.5 and 4.2 V).
 */
export const nickelRich_V: number[] = [
  2.4977, 3.0728, 3.2577, 3.3961, 3.4493, 3.4942, 3.5483, 3.5971, 3.6343, 3.6682, 3.7078, 3.7573, 3.8089, 3.8621,
  3.9236, 3.9713, 4.0215, 4.07, 4.0941, 4.1158, 4.1929,
];

/** Open-circuit voltage of one older polymer cell of the nickel and cobalt type [ChenRinconMora2006, eq. 2]. */
export const olderPolymer_V: number[] = [
  2.654, 3.5164, 3.6746, 3.7104, 3.725, 3.7364, 3.7477, 3.7597, 3.7729, 3.7873, 3.8034, 3.8212, 3.8411, 3.8633, 3.888,
  3.9155, 3.946, 3.9797, 4.017, 4.058, 4.1029,
];

/**
 * Rested voltage of one iron phosphate cell. No equation: points as commonly drawn, from memory, unconfirmed, with the
 * steps between them filled in by eye. What is sure is the shape: flat between 30 and 80 %.
 */
export const ironPhosphate_V: number[] = [
  2.65, 3.05, 3.2, 3.21, 3.22, 3.235, 3.25, 3.265, 3.28, 3.285, 3.29, 3.295, 3.3, 3.31, 3.32, 3.325, 3.33, 3.333, 3.337,
  3.345, 3.4,
];

/**
 * Resistance at a temperature over that at 25 degC: R / R25 = exp(Ea/Rgas (1/T - 1/298.15)) with an activation energy
 * of 25 kJ/mol, the middle of the 20 to 30 that are commonly found (from memory; a choice of model, not a law).
 */
export const arrhenius25: { temperature_degC: number[]; resistance_ratio: number[] } = {
  temperature_degC: [-20, -10, 0, 10, 25, 40, 60],
  resistance_ratio: [6.0062, 3.8244, 2.517, 1.7062, 1, 0.6169, 0.3466],
};
