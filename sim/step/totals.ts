import { LIMITS } from "./limits.ts";
import type { State } from "./state.ts";

/** Joules by where they went, sums over a run. Each entry from its own force or power; none is a remainder. */
export interface Ledger {
  aero_J: number;
  rolling_J: number;
  climb_J: number;
  /** Kinetic energy of car, wheels and rotor: what is left in them at the end. */
  speed_J: number;
  driveline_J: number;
  motor_J: number;
  packHeat_J: number;
  accessories_J: number;
  frictionBrake_J: number;
  /** Net energy drawn from the cells. */
  total_J: number;
}

/** What a run adds up: the ledger, and what else a report needs. */
export interface Totals {
  readonly ledger: Ledger;
  time_s: number;
  distance_m: number;
  /** Distance the trace asked for. */
  target_m: number;
  wheelPositive_J: number;
  terminal_J: number;
  regen_J: number;
  shed_J: number;
  /** Of the accessories' energy, what a heater with a thermostat took. */
  heater_J: number;
  /** Integral of the squared pack current, for its root mean square. */
  current_A2s: number;
  behind_s: number;
  /** Seconds each limit held the car back, by index into LIMITS. */
  readonly limited_s: Float64Array;
  dischargePeak_A: number;
  chargePeak_A: number;
  motorPeak_Nm: number;
  motorPeak_W: number;
  motorPeak_radps: number;
  lowest_V: number;
  lowestSoc_frac: number;
  hottestMotor_K: number;
  hottestPack_K: number;
  reachedFloor: boolean;
}

/** The totals as they stand, for a run that goes on. */
export function copyTotals(totals: Totals): Totals {
  return { ...totals, ledger: { ...totals.ledger }, limited_s: totals.limited_s.slice() };
}

/** Totals of nothing yet, for a car that begins in a state. */
export function createTotals({ motor_K, pack }: State): Totals {
  return {
    ledger: {
      aero_J: 0,
      rolling_J: 0,
      climb_J: 0,
      speed_J: 0,
      driveline_J: 0,
      motor_J: 0,
      packHeat_J: 0,
      accessories_J: 0,
      frictionBrake_J: 0,
      total_J: 0,
    },
    time_s: 0,
    distance_m: 0,
    target_m: 0,
    wheelPositive_J: 0,
    terminal_J: 0,
    regen_J: 0,
    shed_J: 0,
    heater_J: 0,
    current_A2s: 0,
    behind_s: 0,
    limited_s: new Float64Array(LIMITS.length),
    dischargePeak_A: 0,
    chargePeak_A: 0,
    motorPeak_Nm: 0,
    motorPeak_W: 0,
    motorPeak_radps: 0,
    lowest_V: Number.POSITIVE_INFINITY,
    lowestSoc_frac: pack.soc_frac,
    hottestMotor_K: motor_K,
    hottestPack_K: pack.temperature_K,
    reachedFloor: false,
  };
}

/** Makes of totals what `createTotals` makes, in the same memory. */
export function resetTotals(totals: Totals, { motor_K, pack }: State): void {
  const { ledger } = totals;
  ledger.aero_J = 0;
  ledger.rolling_J = 0;
  ledger.climb_J = 0;
  ledger.speed_J = 0;
  ledger.driveline_J = 0;
  ledger.motor_J = 0;
  ledger.packHeat_J = 0;
  ledger.accessories_J = 0;
  ledger.frictionBrake_J = 0;
  ledger.total_J = 0;
  totals.time_s = 0;
  totals.distance_m = 0;
  totals.target_m = 0;
  totals.wheelPositive_J = 0;
  totals.terminal_J = 0;
  totals.regen_J = 0;
  totals.shed_J = 0;
  totals.heater_J = 0;
  totals.current_A2s = 0;
  totals.behind_s = 0;
  totals.limited_s.fill(0);
  totals.dischargePeak_A = 0;
  totals.chargePeak_A = 0;
  totals.motorPeak_Nm = 0;
  totals.motorPeak_W = 0;
  totals.motorPeak_radps = 0;
  totals.lowest_V = Number.POSITIVE_INFINITY;
  totals.lowestSoc_frac = pack.soc_frac;
  totals.hottestMotor_K = motor_K;
  totals.hottestPack_K = pack.temperature_K;
  totals.reachedFloor = false;
}

/**
 * Makes sure the ledger closes: what left the cells is where the entries say, to 1e-9 of their absolute sum
 * (of a joule where less than that passed). An error of ours otherwise, with the figures in it.
 */
export function checkLedger(ledger: Ledger): void {
  const { total_J, ...entries } = ledger;
  let sum_J = 0;
  let throughput_J = 0;
  for (const entry_J of Object.values(entries)) {
    sum_J += entry_J;
    throughput_J += Math.abs(entry_J);
  }
  if (!(Math.abs(sum_J - total_J) <= 1e-9 * Math.max(throughput_J, 1))) {
    throw new Error(`the ledger does not close: ${JSON.stringify(ledger)}, off by ${sum_J - total_J} J`);
  }
}
