/** What charges the capacitors of a controller before the main contactor closes. */
export interface Circuit {
  readonly source_V: number;
  readonly resistance_ohm: number;
  readonly capacitance_F: number;
  /** Drawn on the controller's side from `loadWakes_V` on, the same power at any voltage: a converter awake. */
  readonly load_W: number;
  readonly loadWakes_V: number;
}

/** What a pre-charge comes to. */
export interface PreCharge {
  /** Where it settles. */
  readonly settles_V: number;
  readonly settles_frac: number;
  /** To the share at which the contactor may close; absent where it never gets there. */
  readonly time_s?: number;
  /** Turned to heat in the resistor until then, or in the first five time constants where it never gets there. */
  readonly energy_J: number;
  /** At the first moment. */
  readonly peak_W: number;
  /** For as long as it lasts, once settled: only a load makes it. */
  readonly lasting_W: number;
}

/** Within this share of the pack's volts the main contactor may close: three time constants. Common practice, no source. */
export const CLOSE_frac = 0.95;
const CONSTANTS = 5;

/**
 * Charging a capacitor through a resistor from a source of constant voltage U:
 *
 *   V(t) = U (1 − e^(−t/RC)),  t to a share x: RC ln 1/(1 − x),  heat until then: ½ C U² (1 − (1 − x)²)
 *
 * A converter that draws P beside the capacitor leaves (U − V)/R − P/V for it. That is nothing at V = (U ± √(U² − 4 P R)) / 2: the greater
 * is where it settles; below the smaller, or where P is above U²/4R, the converter takes all and it stays where the converter wakes. Between the two,
 *
 *   t = RC / (V₂ − V₁) · [V₁ ln(V − V₁) − V₂ ln(V₂ − V)]      (partial fractions)
 *
 * Sizes are above nought.
 */
export function preCharge(circuit: Circuit): PreCharge {
  const { source_V: u, resistance_ohm: r, capacitance_F: c, load_W } = circuit;
  const wakes_V = Math.min(circuit.loadWakes_V, u);
  const tau_s = r * c;
  const goal_V = CLOSE_frac * u;
  const peak_W = (u * u) / r;
  const free_s = (to_V: number) => tau_s * Math.log(u / (u - to_V));
  const settles_V = settles(circuit, wakes_V);
  const base = { settles_V, settles_frac: settles_V / u, peak_W, lasting_W: (u - settles_V) ** 2 / r };
  if (load_W === 0 || goal_V <= wakes_V)
    return { ...base, time_s: free_s(goal_V), energy_J: 0.5 * c * u * u * (1 - (1 - CLOSE_frac) ** 2) };
  if (settles_V <= goal_V) return { ...base, energy_J: heat_J(circuit, wakes_V, CONSTANTS * tau_s) };
  const root = Math.sqrt(u * u - 4 * load_W * r);
  const [low_V, high_V] = [(u - root) / 2, (u + root) / 2];
  const at = (v: number) => low_V * Math.log(v - low_V) - high_V * Math.log(high_V - v);
  const time_s = free_s(wakes_V) + (tau_s / root) * (at(goal_V) - at(wakes_V));
  return { ...base, time_s, energy_J: heat_J(circuit, wakes_V, time_s) };
}

function settles({ source_V: u, resistance_ohm: r, load_W }: Circuit, wakes_V: number): number {
  if (load_W === 0) return u;
  const squared = u * u - 4 * load_W * r;
  if (squared <= 0) return wakes_V;
  const root = Math.sqrt(squared);
  return wakes_V <= (u - root) / 2 ? wakes_V : (u + root) / 2;
}

/**
 * Heat in the resistor over a time with a load: what the source gave, less what the load and the capacitor took. By equal steps of the
 * midpoint rule, fine enough for three digits.
 */
function heat_J(
  { source_V: u, resistance_ohm: r, capacitance_F: c, load_W }: Circuit,
  wakes_V: number,
  time_s: number,
) {
  const steps = 2000;
  const dt_s = time_s / steps;
  const slope = (v: number) => {
    const net_A = (u - v) / r - (v >= wakes_V && v > 0 ? load_W / v : 0);
    return (v >= wakes_V ? Math.max(net_A, -((v - wakes_V) * c) / dt_s) : net_A) / c;
  };
  let v = 0;
  let sum_J = 0;
  for (let k = 0; k < steps; k++) {
    const middle_V = v + 0.5 * dt_s * slope(v);
    sum_J += ((u - middle_V) ** 2 / r) * dt_s;
    v = Math.min(u, Math.max(0, v + dt_s * slope(middle_V)));
  }
  return sum_J;
}
