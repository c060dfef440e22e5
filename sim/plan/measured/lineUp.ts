import { inputError } from "../../../shared/problems.ts";
import { S_PER_H } from "../../../shared/units.ts";
import { bestLag, correlationAt, type Lag, type Samples } from "../../math/bestLag.ts";
import type { PackLog } from "../../trace/packLog.ts";
import { isCharging } from "./checkPackLog.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";

/** How the clock of volts and amps was laid on that of the motion. */
export interface LinedUp {
  /** Added to the times of volts and amps. */
  readonly offset_s: number;
  readonly how: "found" | "given";
  /** Of measured with predicted power at this offset, positive: the sign of the current is taken out of it. */
  readonly correlation: number;
  /** 1 where the amps, as the log counts them, leave the pack when the car works; -1 where they must be turned round. */
  readonly sign: 1 | -1;
}

/** Clocks of one file differ by what its loggers buffer; those of two files by what their owners set. Assumed. */
const SAME_CLOCK_s = 60;
const DATED_CLOCK_s = 900;
/** Local times and UTC lie so far apart at most. */
const ZONES_s = 15 * S_PER_H;
/** Below this the power does not follow the motion. A good pair has 0.8 and more; assumed. */
const LEAST_CORRELATION = 0.45;
const LEAST_SAMPLES = 25;

/**
 * Finds by how much the clock of volts and amps must be moved so that the power they make follows what the motion asks for.
 * Throws InputError where power never changes, the two have no time in common, or no offset makes them go together.
 */
export function lineUp(drive: DrivenAsMeasured, log: PackLog, given_s?: number): LinedUp {
  const series = { time_s: drive.time_s, values: drive.power_W };
  const samples = powerSamples(log);
  const [first_W] = samples.values;
  if (samples.values.every((power_W) => power_W === first_W)) {
    const power = `found ${Math.round(Math.abs(first_W))} W in every row of volts and amps`;
    throw inputError(
      "not-together",
      log.file,
      `${power}: a charge, or no drive; power that changes as the car works is wanted`,
    );
  }
  const least = Math.min(LEAST_SAMPLES, Math.ceil(samples.time_s.length / 2));
  if (given_s !== undefined) {
    const correlation = correlationAt(series, samples, given_s, least);
    if (correlation === 0) throw noOverlap(drive, log, given_s);
    return { offset_s: given_s, how: "given", correlation: Math.abs(correlation), sign: signOf(correlation) };
  }
  const found = searched(series, samples, log, least);
  if (found.correlation === 0) throw noOverlap(drive, log, 0);
  if (Math.abs(found.correlation) < LEAST_CORRELATION) {
    if (isCharging(log)) {
      const flows = "found amps that flow one way while volts rise, and no drive in them: a log of charging";
      throw inputError(
        "charging",
        log.file,
        `${flows}; the drive's own log is wanted, or by itself with the socket meter's reading for the charger's efficiency`,
      );
    }
    const best = Math.abs(found.correlation).toFixed(2);
    const message = `found power that follows the motion at no offset of the clocks (best correlation ${best}, ${LEAST_CORRELATION} wanted): another drive, another car, or amps of something else than the pack`;
    throw inputError("not-together", log.file, message);
  }
  return {
    offset_s: found.lag_s,
    how: "found",
    correlation: Math.abs(found.correlation),
    sign: signOf(found.correlation),
  };
}

function searched(series: Samples, samples: Samples, { clock }: PackLog, least: number): Lag {
  const first_s = series.time_s[0];
  const last_s = series.time_s[series.time_s.length - 1];
  const [begin_s, end_s] = [samples.time_s[0], samples.time_s[samples.time_s.length - 1]];
  if (clock === "free") {
    // Half of the shorter one must meet the other: a few seconds of overlap always correlate somehow.
    const shorter_s = Math.min(last_s - first_s, end_s - begin_s);
    const part = shorter_s / Math.max(1, end_s - begin_s);
    const meets = Math.max(least, Math.floor(0.5 * part * samples.time_s.length));
    const [from_s, to_s] = [first_s - end_s + shorter_s / 2, last_s - begin_s - shorter_s / 2];
    return bestLag(series, samples, { from_s, to_s, step_s: stepFor(to_s - from_s), least: meets });
  }
  const around_s = clock === "same" ? SAME_CLOCK_s : DATED_CLOCK_s;
  const near = bestLag(series, samples, { from_s: -around_s, to_s: around_s, step_s: 1, least });
  if (clock === "same" || Math.abs(near.correlation) >= LEAST_CORRELATION) return near;
  const overlap = Math.max(least, Math.floor(samples.time_s.length / 3));
  const far = bestLag(series, samples, { from_s: -ZONES_s, to_s: ZONES_s, step_s: 4, least: overlap });
  return Math.abs(far.correlation) > Math.abs(near.correlation) ? far : near;
}

/** Some ten thousand tries at most; a peak is some seconds wide. */
function stepFor(width_s: number): number {
  return Math.max(1, Math.min(4, width_s / 10_000));
}

function signOf(correlation: number): 1 | -1 {
  return correlation < 0 ? -1 : 1;
}

/** Power of the rows that have volts and amps, in watts. */
export function powerSamples({ time_s, voltage_V, current_A }: PackLog): Samples {
  const rows: number[] = [];
  for (let i = 0; i < time_s.length; i++) if (!Number.isNaN(voltage_V[i] + current_A[i])) rows.push(i);
  return {
    time_s: Float64Array.from(rows, (i) => time_s[i]),
    values: Float64Array.from(rows, (i) => voltage_V[i] * current_A[i]),
  };
}

function noOverlap(drive: DrivenAsMeasured, log: PackLog, offset_s: number) {
  const n = log.time_s.length - 1;
  const moves = `${clockOf(drive.time_s[0])} to ${clockOf(drive.time_s[drive.count - 1])}`;
  const pack = `${clockOf(log.time_s[0] + offset_s)} to ${clockOf(log.time_s[n] + offset_s)}`;
  const message = `found volts and amps from ${pack} and motion from ${moves}: they have no time in common`;
  return inputError("no-overlap", log.file, message);
}

/** Before this a log has no date of its own: its time counts from its start. */
const DATED_FROM_s = 1e8;

function clockOf(time_s: number): string {
  if (time_s < DATED_FROM_s) return `${Math.round(time_s)} s`;
  return `${new Date(1000 * time_s).toISOString().slice(0, 16).replace("T", " ")}`;
}
