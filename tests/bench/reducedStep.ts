/**
 * One step of a car that follows its trace, reduced to what every run pays for: road load, torque at the motor, four-term loss, the
 * pack's terminals by the quadratic, state of charge. Written three times, here, in reducedStep.c and in reducedStep.py, to see what
 * the language costs and not what the physics does; the project's own step is sim/step. The three agree to 1e-9.
 */
export interface ReducedCar {
  readonly mass_kg: number;
  readonly inertia_ratio: number;
  readonly gravity_mps2: number;
  readonly rolling_coeff: number;
  /** Half of air density times drag area. */
  readonly drag_Npmps2: number;
  /** Motor speed over road speed. */
  readonly motor_radpm: number;
  readonly efficiency_frac: number;
  readonly copper_coeff: number;
  readonly iron_coeff: number;
  readonly windage_coeff: number;
  readonly constant_W: number;
  readonly accessories_W: number;
  readonly capacity_C: number;
  readonly startSoc_frac: number;
}

/** Open-circuit voltage and resistance at 65 even states of charge from 0 to 1. */
export interface ReducedPack {
  readonly openCircuit_V: Float64Array;
  readonly resistance_ohm: Float64Array;
}

/** What a recorded run keeps; each column as long as the trace. */
export interface ReducedColumns {
  readonly distance_m: Float64Array;
  readonly force_N: Float64Array;
  readonly motor_radps: Float64Array;
  readonly torque_Nm: Float64Array;
  readonly loss_W: Float64Array;
  readonly current_A: Float64Array;
  readonly terminal_V: Float64Array;
  readonly soc_frac: Float64Array;
}

/** A run's energy from the pack's terminals and the charge it ends with. */
export interface ReducedTotals {
  energy_J: number;
  soc_frac: number;
}

const PIECES = 64;

export function createColumns(rows: number): ReducedColumns {
  const column = () => new Float64Array(rows);
  return {
    distance_m: column(),
    force_N: column(),
    motor_radps: column(),
    torque_Nm: column(),
    loss_W: column(),
    current_A: column(),
    terminal_V: column(),
    soc_frac: column(),
  };
}

/** Drives the car of mass `mass_kg` once over target speeds `dt_s` apart; records every step where columns are given. */
export function reducedRun(
  car: ReducedCar,
  pack: ReducedPack,
  mass_kg: number,
  speed_mps: Float64Array,
  dt_s: number,
  totals: ReducedTotals,
  columns?: ReducedColumns,
): void {
  const { motor_radpm, efficiency_frac, copper_coeff, iron_coeff, windage_coeff, constant_W } = car;
  const { accessories_W, drag_Npmps2 } = car;
  const { openCircuit_V, resistance_ohm } = pack;
  const rolls_N = mass_kg * car.gravity_mps2 * car.rolling_coeff;
  const inertia_kg = mass_kg * car.inertia_ratio;
  const socPerAmpere = dt_s / car.capacity_C;
  const rows = speed_mps.length;
  let soc_frac = car.startSoc_frac;
  let energy_J = 0;
  let distance_m = 0;
  let before_mps = speed_mps[0];
  for (let i = 1; i < rows; i++) {
    const after_mps = speed_mps[i];
    const mean_mps = 0.5 * (before_mps + after_mps);
    let force_N = 0;
    let torque_Nm = 0;
    let loss_W = 0;
    const motor_radps = mean_mps * motor_radpm;
    if (mean_mps > 0) {
      const accel_mps2 = (after_mps - before_mps) / dt_s;
      force_N = rolls_N + drag_Npmps2 * mean_mps * mean_mps + inertia_kg * accel_mps2;
      torque_Nm = force_N >= 0 ? force_N / (motor_radpm * efficiency_frac) : (force_N * efficiency_frac) / motor_radpm;
      loss_W =
        copper_coeff * torque_Nm * torque_Nm +
        motor_radps * (iron_coeff + windage_coeff * motor_radps * motor_radps) +
        constant_W;
    }
    const power_W = torque_Nm * motor_radps + loss_W + accessories_W;
    const place = soc_frac * PIECES;
    const piece = Math.min(PIECES - 1, Math.trunc(place));
    const share = place - piece;
    const open_V = openCircuit_V[piece] + share * (openCircuit_V[piece + 1] - openCircuit_V[piece]);
    const inner_ohm = resistance_ohm[piece] + share * (resistance_ohm[piece + 1] - resistance_ohm[piece]);
    const current_A = (2 * power_W) / (open_V + Math.sqrt(Math.max(open_V * open_V - 4 * inner_ohm * power_W, 0)));
    soc_frac -= current_A * socPerAmpere;
    energy_J += power_W * dt_s;
    distance_m += mean_mps * dt_s;
    before_mps = after_mps;
    if (columns) {
      columns.distance_m[i] = distance_m;
      columns.force_N[i] = force_N;
      columns.motor_radps[i] = motor_radps;
      columns.torque_Nm[i] = torque_Nm;
      columns.loss_W[i] = loss_W;
      columns.current_A[i] = current_A;
      columns.terminal_V[i] = open_V - inner_ohm * current_A;
      columns.soc_frac[i] = soc_frac;
    }
  }
  totals.energy_J = energy_J;
  totals.soc_frac = soc_frac;
}
