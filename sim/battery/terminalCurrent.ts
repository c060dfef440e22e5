/**
 * Current a pack passes for a given power at its terminals. Positive discharges.
 *
 *   R·I² − V·I + P = 0, the smaller root        (Kirchhoff: P = I·(V − R·I))      [LarminieLowry2012, eq. 2.20]
 *
 * Written 2P / (V + √(V² − 4RP)): the school form (V − √…)/2R subtracts two nearly equal numbers when P is small;
 * this one keeps all digits, and serves for charging (P < 0) and R = 0 as it stands.
 *
 * Beyond P = V²/4R, the most a pack can give, there is no such current, and 2P/V is returned: V/2R at that peak and rising on with
 * the power, so that a search for what the pack can do sees by how much a try is beyond it. Callers limit power.
 */
export function terminalCurrent_A(power_W: number, openCircuit_V: number, resistance_ohm: number): number {
  const discriminant = openCircuit_V * openCircuit_V - 4 * resistance_ohm * power_W;
  return (2 * power_W) / (openCircuit_V + Math.sqrt(Math.max(discriminant, 0)));
}

/**
 * Most power the terminals give within a current and a lowest voltage. Never beyond the peak V²/4R, never negative.
 *
 *   I = min(I_max, (V − V_min)/R, V/2R);  P = I·(V − R·I)
 *
 * The resistance is above zero: `preparePack` sees to that.
 */
export function greatestDischarge_W(
  openCircuit_V: number,
  resistance_ohm: number,
  current_A: number,
  lowest_V: number,
): number {
  const byVoltage_A = Math.min(openCircuit_V - lowest_V, 0.5 * openCircuit_V) / resistance_ohm;
  const allowed_A = Math.max(0, Math.min(current_A, byVoltage_A));
  return allowed_A * (openCircuit_V - resistance_ohm * allowed_A);
}

/** Most power the terminals take within a current and a highest voltage, as a number not above zero; the resistance is above zero. */
export function greatestCharge_W(
  openCircuit_V: number,
  resistance_ohm: number,
  current_A: number,
  highest_V: number,
): number {
  const allowed_A = Math.max(0, Math.min(current_A, (highest_V - openCircuit_V) / resistance_ohm));
  return -allowed_A * (openCircuit_V + resistance_ohm * allowed_A);
}
