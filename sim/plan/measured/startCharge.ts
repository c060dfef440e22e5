import type { PackModel } from "../../battery/packModel.ts";
import { lookUp } from "../../math/uniformTable.ts";
import type { PackSamples } from "./packSamples.ts";

/** Rows of a log from which its first volts are taken. */
const FIRST_s = 30;

/** State of charge whose open-circuit voltage is this, by halving; the ends where it lies beyond. */
export function chargeAtVoltage_frac(pack: PackModel, openCircuit_V: number): number {
  let low = 0;
  let high = 1;
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    if (lookUp(pack.openCircuit_V, middle) < openCircuit_V) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The charge a drive began with: what the log says itself, or what the first volts show once the sag of their amps is put back.
 */
export function startCharge_frac(pack: PackModel, samples: PackSamples, soc_frac: Float64Array | undefined): number {
  const stated = soc_frac?.find((value) => value > 0 && value <= 1);
  if (stated !== undefined) return stated;
  const rested: number[] = [];
  for (let k = 0; k < samples.count && samples.time_s[k] - samples.time_s[0] <= FIRST_s; k++) {
    const resistance_ohm = lookUp(pack.resistance_ohm, 0.8) + pack.leads_ohm;
    rested.push(samples.voltage_V[k] + resistance_ohm * samples.current_A[k]);
  }
  rested.sort((a, b) => a - b);
  return rested.length === 0 ? pack.ceiling_frac : chargeAtVoltage_frac(pack, rested[rested.length >> 1]);
}
