import { packWith } from "../../battery/packModel.ts";
import { type Channels, createChannels } from "../../step/channels.ts";
import { type Model, modelWith } from "../../step/model.ts";
import { run } from "../../step/run.ts";
import type { Totals } from "../../step/totals.ts";
import type { DrivePart } from "./recording.ts";

/** A recorded drive driven by a model: one row a second of what it asks of the pack, parts one after another. */
export interface DrivenAsMeasured {
  readonly count: number;
  /** Middle of each row's second, on the clock of the motion. */
  readonly time_s: Float64Array;
  /** Means over the second. */
  readonly power_W: Float64Array;
  readonly current_A: Float64Array;
  readonly voltage_V: Float64Array;
  readonly motor_radps: Float64Array;
  readonly wheelForce_N: Float64Array;
  /** At the second's end. */
  readonly speed_mps: Float64Array;
  readonly target_mps: Float64Array;
  readonly distance_m: Float64Array;
  readonly elevation_m: Float64Array;
  readonly grade_ratio: Float64Array;
  readonly soc_frac: Float64Array;
  /** Of the pack. */
  readonly pack_K: Float64Array;
  /** Which part a row belongs to. */
  readonly part: Uint16Array;
  readonly totals: readonly Totals[];
}

/** Memory for driving the same parts many times over, as a fit does. */
export type Scratch = readonly Channels[];

/** Room for the channels of each part. */
export function scratchFor(parts: readonly DrivePart[]): Scratch {
  return parts.map(({ trace }) => createChannels(trace.time_s.length));
}

/**
 * The speed and height as recorded, driven by a model, charge going on from part to part. The pack has no floor here: the car did
 * drive on, so the model does too.
 */
export function driveAsMeasured(
  model: Model,
  parts: readonly DrivePart[],
  startSoc_frac: number,
  scratch: Scratch = scratchFor(parts),
): DrivenAsMeasured {
  const endless = modelWith(model, { pack: packWith(model.pack, { floor_frac: Number.NEGATIVE_INFINITY }) });
  const count = parts.reduce((sum, { trace }) => sum + trace.time_s.length - 1, 0);
  const column = () => new Float64Array(count);
  const out = {
    count,
    time_s: column(),
    power_W: column(),
    current_A: column(),
    voltage_V: column(),
    motor_radps: column(),
    wheelForce_N: column(),
    speed_mps: column(),
    target_mps: column(),
    distance_m: column(),
    elevation_m: column(),
    grade_ratio: column(),
    soc_frac: column(),
    pack_K: column(),
    part: new Uint16Array(count),
  };
  const totals: Totals[] = [];
  let soc_frac = startSoc_frac;
  let at = 0;
  let from_m = 0;
  parts.forEach(({ start_s, trace }, s) => {
    const channels = scratch[s];
    const result = run(endless, trace, channels, soc_frac);
    soc_frac = result.endSoc_frac;
    totals.push(result.totals);
    const rows = trace.time_s.length - 1;
    for (let i = 0; i < rows; i++) {
      out.time_s[at + i] = start_s + 0.5 * (trace.time_s[i] + trace.time_s[i + 1]);
      out.distance_m[at + i] = from_m + channels.distance_m[i + 1];
    }
    const put = (into: Float64Array, from: Float64Array) => into.set(from.subarray(1, rows + 1), at);
    put(out.power_W, channels.battery_W);
    put(out.current_A, channels.battery_A);
    put(out.voltage_V, channels.battery_V);
    put(out.motor_radps, channels.motorSpeed_radps);
    put(out.wheelForce_N, channels.wheelForce_N);
    put(out.speed_mps, channels.speed_mps);
    put(out.target_mps, channels.target_mps);
    put(out.elevation_m, channels.elevation_m);
    put(out.grade_ratio, channels.grade_ratio);
    put(out.soc_frac, channels.soc_frac);
    put(out.pack_K, channels.pack_K);
    out.part.fill(s, at, at + rows);
    from_m += channels.distance_m[rows];
    at += rows;
  });
  return { ...out, totals };
}
