import { S_PER_MIN } from "../../shared/units.ts";
import type { PackLog } from "../trace/packLog.ts";
import type { LogFile } from "./log/logFile.ts";

/** Times that step back by more than this are of a logger that began anew, not of rows out of order. */
const RESET_s = 5 * S_PER_MIN;
/** Before this a log has no date of its own: its time counts from its start. */
const DATED_FROM_s = 1e8;

/** Whether a log holds the pack's volts and amps. */
export function hasPack({ fixes }: LogFile): boolean {
  return fixes.extras.packVoltage_V !== undefined && fixes.extras.packCurrent_A !== undefined;
}

/**
 * Volts, amps and what else a log has of the pack, in order of time: rows of one and the same time (a clock of whole minutes) are spread
 * evenly up to the next, and where the clock begins anew the longest run is taken; either is said. Where a row has one value only, the
 * others are its neighbours' on a straight line, not over more than a few rows.
 */
export function packLogOf(log: LogFile, isSameFile: boolean): PackLog {
  const { fixes, file } = log;
  const remarks: string[] = [];
  const run = longestRun(fixes.time_s);
  if (run.resets > 0) {
    const part = Math.round((100 * (run.to - run.from)) / fixes.count);
    const times = run.resets === 1 ? "once" : `${run.resets} times`;
    remarks.push(`Its clock begins anew ${times}; the longest part is used, ${part} % of its rows.`);
  }
  const rows: number[] = [];
  for (let i = run.from; i < run.to; i++) if (!Number.isNaN(fixes.time_s[i])) rows.push(i);
  rows.sort((a, b) => fixes.time_s[a] - fixes.time_s[b] || a - b);
  const written_s = Float64Array.from(rows, (i) => fixes.time_s[i]);
  const time_s = spread(written_s);
  if (time_s !== written_s)
    remarks.push("Several rows share a time of its clock; they are spread evenly up to the next.");
  const column = (values: Float64Array) =>
    filled(
      Float64Array.from(rows, (i) => values[i]),
      time_s,
    );
  const { packVoltage_V, packCurrent_A, motorSpeed_radps, temperature_K, soc_frac } = fixes.extras;
  const none = () => new Float64Array(fixes.count).fill(Number.NaN);
  const isFlipped = log.questions.some(({ name, guess }) => name === "currentSign" && guess === "-1");
  return {
    file,
    time_s,
    voltage_V: column(packVoltage_V ?? none()),
    current_A: column(packCurrent_A ?? none()),
    ...(motorSpeed_radps && { motor_radps: column(motorSpeed_radps) }),
    ...(temperature_K && { temperature_K: column(temperature_K) }),
    ...(soc_frac && { soc_frac: asShare(column(soc_frac)) }),
    fileSign: isFlipped ? -1 : 1,
    clock: isSameFile ? "same" : (time_s[0] ?? 0) > DATED_FROM_s ? "dated" : "free",
    ...(time_s !== written_s && { isClockCoarse: true }),
    remarks,
  };
}

/** The longest run of rows whose times do not begin anew, and how often they do. */
function longestRun(time_s: Float64Array) {
  let best = { from: 0, to: 0 };
  let from = 0;
  let resets = 0;
  let last_s = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= time_s.length; i++) {
    const isReset = i < time_s.length && time_s[i] < last_s - RESET_s;
    if (isReset || i === time_s.length) {
      if (i - from > best.to - best.from) best = { from, to: i };
      from = i;
      resets += isReset ? 1 : 0;
    }
    if (i < time_s.length && !Number.isNaN(time_s[i])) last_s = time_s[i];
  }
  return { ...best, resets };
}

/** Rows that share a time laid evenly up to the next one; the same array where none do. */
function spread(time_s: Float64Array): Float64Array {
  const n = time_s.length;
  let isShared = false;
  for (let i = 1; i < n; i++) isShared ||= time_s[i] === time_s[i - 1];
  if (!isShared) return time_s;
  const result = time_s.slice();
  let width_s = S_PER_MIN;
  for (let from = 0; from < n; ) {
    let to = from + 1;
    while (to < n && time_s[to] === time_s[from]) to++;
    if (to < n) width_s = Math.min(S_PER_MIN, time_s[to] - time_s[from]);
    for (let k = from; k < to; k++) result[k] = time_s[from] + (width_s * (k - from)) / (to - from);
    from = to;
  }
  return result;
}

/** Gaps of a column with one value a row are filled between neighbours so many rows, and seconds, apart. */
const NEAR = 12;
const NEAR_s = 40;

function filled(values: Float64Array, time_s: Float64Array): Float64Array {
  let last = -1;
  for (let i = 0; i < values.length; i++) {
    if (Number.isNaN(values[i])) continue;
    if (last >= 0 && i - last > 1 && i - last <= NEAR && time_s[i] - time_s[last] <= NEAR_s)
      for (let k = last + 1; k < i; k++) {
        const part = time_s[i] > time_s[last] ? (time_s[k] - time_s[last]) / (time_s[i] - time_s[last]) : 0;
        values[k] = values[last] + part * (values[i] - values[last]);
      }
    last = i;
  }
  return values;
}

/** A state of charge as a share: one that goes beyond 1 is written in per cent. */
function asShare(values: Float64Array): Float64Array {
  const isPercent = values.some((value) => value > 1.5);
  return isPercent ? values.map((value) => value / 100) : values;
}
