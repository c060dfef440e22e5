import type { Job } from "../../../shared/job/job.ts";
import { inputError } from "../../../shared/problems.ts";
import type { PackModel } from "../../battery/packModel.ts";
import { preparePack } from "../../battery/preparePack.ts";
import type { PackLog } from "../../trace/packLog.ts";

/** Volts outside of a pack's window by more than this share are of another pack. Assumed: cells at rest and under load lie within it. */
const BEYOND_frac = 0.12;
/** A 12 V system never shows more, charging. Common practice, no source. */
const HIGHEST_12_V = 16;
const LEAST_ROWS = 20;

/**
 * Makes sure that a log's volts and amps can be those of a job's pack. Throws InputError with one sentence where they cannot: too few rows,
 * amps all nought, columns swapped, volts of another pack (naming the pack of the job that they fit).
 */
export function checkPackLog(log: PackLog, job: Job, packIndex: number): void {
  const { file, voltage_V, current_A } = log;
  const both = Array.from(voltage_V, (_, i) => i).filter((i) => !Number.isNaN(voltage_V[i] + current_A[i]));
  if (both.length < LEAST_ROWS)
    throw inputError("pack-rows", file, `found ${both.length} rows with volts and amps, at least ${LEAST_ROWS} wanted`);
  const volts = rangeOf(both.map((i) => voltage_V[i]));
  const amps = rangeOf(both.map((i) => current_A[i]));
  if (amps.high === amps.low && Math.abs(amps.high) < 1e-9) {
    const message = `found amps of 0 in all ${both.length} rows: the clamp or shunt was not connected, or the column is another one`;
    throw inputError("amps-zero", file, message);
  }
  const packs = job.packs.map((pack) => preparePack(pack, job.module));
  if (fits(volts, packs[packIndex])) return;
  if (fits(amps, packs[packIndex]) && volts.low < packs[packIndex].min_V * (1 - BEYOND_frac)) {
    const found = `found volts from ${n(volts.low)} to ${n(volts.high)} and amps from ${n(amps.low)} to ${n(amps.high)}`;
    throw inputError("swapped", file, `${found}: the two are swapped; exchange the names of the columns`);
  }
  const { min_V, max_V } = packs[packIndex];
  const wanted = `${job.packs[packIndex].name} has ${n(min_V)} to ${n(max_V)} V`;
  if (volts.high <= HIGHEST_12_V) {
    const [low, high] = [volts.low.toFixed(1), volts.high.toFixed(1)];
    const found = low === high ? `found ${low} V` : `found ${low} to ${high} V`;
    const message = `${found}, ${wanted}: the 12 V battery was logged; the volts between the pack's own terminals are wanted`;
    throw inputError("auxiliary", file, message);
  }
  const other = job.packs.find((_, i) => fits(volts, packs[i]));
  const hint = other === undefined ? "it is the log of another car" : `they are those of ${other.name}`;
  throw inputError("another-pack", file, `found volts from ${n(volts.low)} to ${n(volts.high)}, ${wanted}: ${hint}`);
}

function fits({ low, high }: { readonly low: number; readonly high: number }, { min_V, max_V }: PackModel): boolean {
  return low >= min_V * (1 - BEYOND_frac) && high <= max_V * (1 + BEYOND_frac);
}

/** The range of values but for one in a hundred at either end. */
function rangeOf(values: readonly number[]) {
  const sorted = [...values].sort((a, b) => a - b);
  const cut = Math.floor(sorted.length / 100);
  return { low: sorted[cut], high: sorted[sorted.length - 1 - cut] };
}

const n = (value: number) => `${Math.round(value)}`;

/** A car that moves less than this was charged or parked. */
const STILL_m = 100;

/**
 * Makes sure that there is a drive to compare with. Throws InputError where the car stood: charging, where the pack took charge.
 */
export function checkDriven(distance_m: number, log: PackLog): void {
  if (distance_m >= STILL_m) return;
  const moved = `found ${n(distance_m)} m of motion`;
  if (isCharging(log))
    throw inputError(
      "charging",
      log.file,
      `${moved} and volts that rise while amps flow: a log of charging, a drive is wanted; for the charger's efficiency give the socket meter's reading too`,
    );
  throw inputError("no-drive", log.file, `${moved}, a drive of at least ${STILL_m} m is wanted`);
}

/** Whether the pack is charged over a log: its volts end higher than they began, and amps flow one way all along. */
export function isCharging({ voltage_V, current_A }: PackLog): boolean {
  const rows = Array.from(voltage_V, (_, i) => i).filter((i) => !Number.isNaN(voltage_V[i] + current_A[i]));
  if (rows.length < LEAST_ROWS) return false;
  const sum_A = rows.reduce((sum, i) => sum + current_A[i], 0);
  const size_A = rows.reduce((sum, i) => sum + Math.abs(current_A[i]), 0);
  const tenth = Math.floor(rows.length / 10);
  const mean_V = (part: readonly number[]) => part.reduce((sum, i) => sum + voltage_V[i], 0) / part.length;
  const rises = mean_V(rows.slice(-tenth)) > mean_V(rows.slice(0, tenth));
  return size_A > 0 && Math.abs(sum_A) > 0.95 * size_A && rises;
}
