import type { PackLog } from "../../trace/packLog.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import type { LinedUp } from "./lineUp.ts";

/** What the pack gave, laid on the drive: samples at most one a second, each with the time it stands for. */
export interface PackSamples {
  readonly count: number;
  /** On the motion's clock. */
  readonly time_s: Float64Array;
  readonly power_W: Float64Array;
  readonly current_A: Float64Array;
  readonly voltage_V: Float64Array;
  /** Time that the sample stands for; gaps stand for nothing. */
  readonly weight_s: Float64Array;
  /** Row of the drive before it, never the last one, and the share of the way to the next. */
  readonly row: Int32Array;
  readonly part_frac: Float64Array;
  /** Time from sample to sample, the middle one. */
  readonly interval_s: number;
  /** Share of the drive's time that samples stand for. */
  readonly cover_frac: number;
}

/** A logger that falls silent for so many of its intervals has a gap. */
const GAP_ratio = 2.5;

/**
 * Volts and amps of a log, lined up, turned the right way, their zero taken out and averaged to a second where they are finer, for the
 * time that the motion is known. The amps of a sample are leaving the pack where positive.
 */
export function packSamples(
  drive: DrivenAsMeasured,
  log: PackLog,
  { offset_s, sign }: LinedUp,
  zero_A: number,
  leftOut: readonly { readonly from_s: number; readonly to_s: number }[] = [],
): PackSamples {
  const binned = binnedToSeconds(log, offset_s, sign, zero_A);
  const steps = binned.time_s
    .slice(1)
    .map((time, k) => time - binned.time_s[k])
    .sort();
  const interval_s = steps.length > 0 ? steps[steps.length >> 1] : 1;
  const { time_s, part, count } = drive;
  const kept: { k: number; row: number; part_frac: number; weight_s: number }[] = [];
  let row = 0;
  binned.time_s.forEach((at_s, k) => {
    while (row < count - 2 && time_s[row + 1] <= at_s) row++;
    const part_frac = (at_s - time_s[row]) / (time_s[row + 1] - time_s[row]);
    // Half a second before the first row's middle is still of the drive.
    if (part_frac < -0.5 || part_frac > 1.5 || part[row] !== part[row + 1]) return;
    if (leftOut.some(({ from_s, to_s }) => at_s >= from_s && at_s <= to_s)) return;
    const before_s = k > 0 ? at_s - binned.time_s[k - 1] : interval_s;
    const after_s = k < binned.time_s.length - 1 ? binned.time_s[k + 1] - at_s : interval_s;
    const of = (step_s: number) => (step_s > GAP_ratio * interval_s ? 0.5 * interval_s : 0.5 * step_s);
    kept.push({ k, row, part_frac: Math.min(1, Math.max(0, part_frac)), weight_s: of(before_s) + of(after_s) });
  });
  const pick = (column: Float64Array) => Float64Array.from(kept, ({ k }) => column[k]);
  const weight_s = Float64Array.from(kept, ({ weight_s: each }) => each);
  return {
    count: kept.length,
    time_s: pick(binned.time_s),
    power_W: pick(binned.power_W),
    current_A: pick(binned.current_A),
    voltage_V: pick(binned.voltage_V),
    weight_s,
    row: Int32Array.from(kept, ({ row: each }) => each),
    part_frac: Float64Array.from(kept, ({ part_frac }) => part_frac),
    interval_s,
    cover_frac: Math.min(1, weight_s.reduce((sum, each) => sum + each, 0) / Math.max(1, count)),
  };
}

/** What a column of the drive is at a sample. */
export function atSample({ row, part_frac }: PackSamples, column: Float64Array, k: number): number {
  const i = row[k];
  return column[i] + part_frac[k] * (column[i + 1] - column[i]);
}

function binnedToSeconds(log: PackLog, offset_s: number, sign: 1 | -1, zero_A: number) {
  const time: number[] = [];
  const power: number[] = [];
  const current: number[] = [];
  const voltage: number[] = [];
  let second = Number.NaN;
  let inBin = 0;
  for (let i = 0; i < log.time_s.length; i++) {
    const volts = log.voltage_V[i];
    const amps = sign * log.current_A[i] - zero_A;
    if (Number.isNaN(volts + amps)) continue;
    const at_s = log.time_s[i] + offset_s;
    const last = time.length - 1;
    if (Math.floor(log.time_s[i]) !== second) {
      second = Math.floor(log.time_s[i]);
      inBin = 0;
      time.push(at_s);
      power.push(volts * amps);
      current.push(amps);
      voltage.push(volts);
    } else {
      const mean = (column: number[], value: number) => {
        column[last] += (value - column[last]) / (inBin + 1);
      };
      mean(time, at_s);
      mean(power, volts * amps);
      mean(current, amps);
      mean(voltage, volts);
    }
    inBin++;
  }
  return {
    time_s: Float64Array.from(time),
    power_W: Float64Array.from(power),
    current_A: Float64Array.from(current),
    voltage_V: Float64Array.from(voltage),
  };
}
