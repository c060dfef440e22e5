/**
 * Share of the time that the control pilot is high, by which a box in the lead or a wall unit tells the charger how many amperes of
 * each phase it may take; nothing for a current that it cannot tell (below 6 A, above 80 A).
 *
 *   6 to 51 A: I / 60;  above 51 to 80 A: I / 250 + 0.64        [IEC61851-1, Annex A]
 */
export function pilotDuty_frac(current_A: number): number | undefined {
  if (current_A < 6 || current_A > 80) return undefined;
  return current_A <= 51 ? current_A / 60 : current_A / 250 + 0.64;
}

/** Least rating of the circuit behind a load that lasts three hours and more, in amperes: 125 % of it  [NEC2017, 625.41]. */
export function circuit_A(load_A: number): number {
  return 1.25 * load_A;
}
