import { readFileSync } from "node:fs";
import { randomNormal } from "d3-random";
import type { Job } from "../../shared/job/job.ts";
import { adjustModel, type Change, noChange } from "../../sim/plan/measured/adjustModel.ts";
import { createChannels } from "../../sim/step/channels.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { run } from "../../sim/step/run.ts";
import { resample } from "../../sim/trace/resample.ts";
import { cycleTrace } from "../../sim/trace/standardCycles.ts";
import type { Trace } from "../../sim/trace/trace.ts";
import { seeded } from "./logMaker.ts";

/** A car that is built otherwise than its job says, and loggers that spoil what they write. */
export interface BuiltCar {
  readonly change: Partial<Change>;
  /** What the ammeter shows of a true ampere. */
  readonly gain_ratio?: number;
  readonly zero_A?: number;
  readonly sign?: 1 | -1;
  /** Clock of volts and amps behind that of the motion. */
  readonly behind_s?: number;
  readonly seed: number;
  readonly speedNoise_mps?: number;
  readonly heightNoise_m?: number;
  /** Speed and height as a good cleaning leaves them: errors that die away over seconds, none of them white; no motion at rest. */
  readonly isCleaned?: boolean;
  /** Time between rows of volts and amps. */
  readonly interval_s?: number;
}

/** What the two loggers wrote, each on its own clock. */
export interface BuiltLog {
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  readonly elevation_m: Float64Array;
  readonly electricTime_s: Float64Array;
  readonly voltage_V: Float64Array;
  readonly current_A: Float64Array;
}

const cycleText = (id: string) => readFileSync(new URL(`../../cycles/${id}.csv`, import.meta.url), "utf8");

/** Forty minutes of town, country road and hill from rest to rest: two published cycles one after another over invented hills. */
export function mixedDrive(): Trace {
  const texts = { "wltc-class-3b": cycleText("wltc-class-3b"), udds: cycleText("udds") };
  const long = resample(cycleTrace("wltc-class-3b", texts), 1);
  const town = resample(cycleTrace("udds", texts), 1);
  const rest = new Float64Array(40);
  // The town part up to a rest of its own.
  let end = 560;
  while (town.speed_mps[end] > 0) end++;
  const speed_mps = Float64Array.from([
    ...rest,
    ...long.speed_mps,
    ...town.speed_mps.slice(0, end + 1),
    ...rest.slice(0, 20),
  ]);
  const time_s = Float64Array.from(speed_mps, (_, i) => i);
  const distance_m = Float64Array.from({ length: 320 }, (_, i) => 100 * i);
  const elevation_m = distance_m.map((at_m) => 40 + 28 * Math.sin(at_m / 1700) + 9 * Math.sin(at_m / 430));
  return { id: "mixed", title: "mixed drive", time_s, speed_mps, profile: { distance_m, elevation_m } };
}

/** Some eighteen minutes of it, up to a rest. */
export function shortDrive(): Trace {
  const whole = mixedDrive();
  let end = 1060;
  while (whole.speed_mps[end] > 0) end++;
  const tail = 15;
  const cut = (column: Float64Array) => column.slice(0, end + tail);
  const speed_mps = cut(whole.speed_mps).map((speed, i) => (i > end ? 0 : speed));
  return { ...whole, time_s: cut(whole.time_s), speed_mps };
}

/** Sampling of the truth, finer than any log's. */
const FINE_s = 0.2;

/** What is left of a receiver's noise of speed after cleaning. Assumed. */
const CLEANED_mps = 0.06;

/** What loggers would write of a drive of a car with hidden changes. */
export function drivenAndLogged(job: Job, packIndex: number, trace: Trace, built: BuiltCar, date_s = 0): BuiltLog {
  const { seed, gain_ratio = 1, zero_A = 0, sign = 1, behind_s = 0, speedNoise_mps = 0.1, heightNoise_m = 1 } = built;
  const model = adjustModel(prepare(job, job.packs[packIndex]), { ...noChange, ...built.change });
  const fine = rounded(resample(trace, FINE_s));
  const channels = createChannels(fine.time_s.length);
  run(model, fine, channels);
  const draw = randomNormal.source(seeded(seed))(0, 1);
  const rows = Math.floor(channels.time_s[channels.length - 1]);
  const at = (column: Float64Array, time_s: number) =>
    column[Math.min(channels.length - 1, Math.round(time_s / FINE_s))];
  const time_s = Float64Array.from({ length: rows + 1 }, (_, i) => date_s + i);
  let slow_mps = 0;
  const speed_mps = Float64Array.from(time_s, (_, i) => {
    const true_mps = at(channels.speed_mps, i);
    slow_mps = 0.75 * slow_mps + Math.sqrt(1 - 0.75 ** 2) * CLEANED_mps * draw();
    if (built.isCleaned) return true_mps > 0 ? Math.max(0, true_mps + slow_mps) : 0;
    return Math.max(0, true_mps > 0 ? true_mps + speedNoise_mps * draw() : Math.abs(0.3 * speedNoise_mps * draw()));
  });
  let wander_m = heightNoise_m * draw();
  const keep = Math.exp(-1 / 60);
  const hills = smoothError(draw, heightNoise_m);
  const elevation_m = Float64Array.from(time_s, (_, i) => {
    if (built.isCleaned) return at(channels.elevation_m, i) + hills(at(channels.speed_mps, i) > 0);
    wander_m = keep * wander_m + Math.sqrt(1 - keep * keep) * heightNoise_m * draw();
    return at(channels.elevation_m, i) + wander_m;
  });
  const step_s = built.interval_s ?? 1;
  const electric = Math.floor(rows / step_s);
  const electricTime_s = Float64Array.from({ length: electric }, (_, k) => date_s + k * step_s + 0.4 - behind_s);
  const moment = (k: number) => k * step_s + 0.4;
  const voltage_V = Float64Array.from(electricTime_s, (_, k) =>
    round(at(channels.battery_V, moment(k)) + 0.1 * draw(), 0.1),
  );
  const current_A = Float64Array.from(electricTime_s, (_, k) =>
    round(sign * (gain_ratio * at(channels.battery_A, moment(k)) + zero_A + 0.3 * draw()), 0.1),
  );
  return { time_s, speed_mps, elevation_m, electricTime_s, voltage_V, current_A };
}

/** A trace with its corners rounded: no driver changes the pull of a car from one instant to the next, as a table of seconds would. */
function rounded(trace: Trace): Trace {
  const around = Math.round(1 / FINE_s);
  const pass = (speed_mps: Float64Array) =>
    speed_mps.map((own, i) => {
      if (i < around || i >= speed_mps.length - around) return own;
      let sum = 0;
      for (let k = i - around; k <= i + around; k++) sum += speed_mps[k];
      return sum < 1e-9 ? 0 : sum / (2 * around + 1);
    });
  return { ...trace, speed_mps: pass(pass(trace.speed_mps)) };
}

/** How long an error of height lasts that smoothing left, while the car moves: so long as those of receivers' heights do once cleaned. */
const HEIGHT_LASTS_s = 35;

/** An error of height as smoothing leaves it, second by second: noise through two lags one after the other. A car that stands keeps it. */
function smoothError(draw: () => number, size_m: number): (isMoving: boolean) => number {
  const keep = Math.exp(-1 / HEIGHT_LASTS_s);
  let [first, second] = [0, 0];
  const next = () => {
    first = keep * first + Math.sqrt(1 - keep * keep) * draw();
    second = keep * second + (1 - keep) * first;
  };
  for (let i = 0; i < 10 * HEIGHT_LASTS_s; i++) next();
  return (isMoving) => {
    if (isMoving) next();
    // Two equal lags leave half of the variance of one.
    return size_m * Math.SQRT2 * second;
  };
}

function round(value: number, to: number): number {
  return Math.round(value / to) * to;
}

/** The motion as a table. */
export function motionCsv({ time_s, speed_mps, elevation_m }: BuiltLog): string {
  const rows = Array.from(time_s, (at, i) => `${at},${(3.6 * speed_mps[i]).toFixed(2)},${elevation_m[i].toFixed(1)}`);
  return ["time_s,speed (km/h),altitude (m)", ...rows, ""].join("\n");
}

/** Volts and amps as a table. */
export function packCsv({ electricTime_s, voltage_V, current_A }: BuiltLog): string {
  const rows = Array.from(
    electricTime_s,
    (at, i) => `${at.toFixed(1)},${voltage_V[i].toFixed(1)},${current_A[i].toFixed(1)}`,
  );
  return ["time_s,Pack voltage (V),Pack current (A)", ...rows, ""].join("\n");
}
