import type { DrivenAsMeasured } from "../../../../sim/plan/measured/driveAsMeasured.ts";
import type { LinedUp } from "../../../../sim/plan/measured/lineUp.ts";
import type { PackSamples } from "../../../../sim/plan/measured/packSamples.ts";
import type { PackLog } from "../../../../sim/trace/packLog.ts";

type Columns = Partial<Record<keyof DrivenAsMeasured, readonly number[]>>;

/** A drive as a model would have it, of as many seconds as speeds are given; what is not given is 0, its one part the first. */
export function driveOf(target_mps: readonly number[], columns: Columns = {}): DrivenAsMeasured {
  const count = target_mps.length;
  const column = (name: keyof DrivenAsMeasured) => Float64Array.from(columns[name] ?? target_mps.map(() => 0));
  let moved_m = 0;
  const along_m = target_mps.map((speed_mps) => {
    moved_m += speed_mps;
    return moved_m;
  });
  return {
    count,
    time_s: columns.time_s ? column("time_s") : Float64Array.from(target_mps, (_, i) => i + 0.5),
    power_W: column("power_W"),
    current_A: column("current_A"),
    voltage_V: column("voltage_V"),
    motor_radps: column("motor_radps"),
    wheelForce_N: column("wheelForce_N"),
    speed_mps: Float64Array.from(target_mps),
    target_mps: Float64Array.from(target_mps),
    distance_m: columns.distance_m ? column("distance_m") : Float64Array.from(along_m),
    elevation_m: column("elevation_m"),
    grade_ratio: column("grade_ratio"),
    soc_frac: column("soc_frac"),
    pack_K: column("pack_K"),
    part: Uint16Array.from(columns.part ?? target_mps.map(() => 0)),
    totals: [],
  };
}

/** Volts and amps once a second from 0.5 s on, each standing for a second at the middle of a row. */
export function samplesOf(
  voltage_V: readonly number[],
  current_A: readonly number[],
  changes: Partial<PackSamples> = {},
): PackSamples {
  const count = voltage_V.length;
  return {
    count,
    time_s: Float64Array.from(voltage_V, (_, k) => k + 0.5),
    power_W: Float64Array.from(voltage_V, (volts, k) => volts * current_A[k]),
    current_A: Float64Array.from(current_A),
    voltage_V: Float64Array.from(voltage_V),
    weight_s: new Float64Array(count).fill(1),
    row: Int32Array.from(voltage_V, (_, k) => k),
    part_frac: new Float64Array(count),
    interval_s: 1,
    cover_frac: 1,
    ...changes,
  };
}

/** A log of volts and amps, once a second from 0.5 s on where no times are given. */
export function packLogOf(
  voltage_V: readonly number[],
  current_A: readonly number[],
  changes: Partial<PackLog> = {},
): PackLog {
  return {
    file: "pack.csv",
    time_s: Float64Array.from(voltage_V, (_, k) => k + 0.5),
    voltage_V: Float64Array.from(voltage_V),
    current_A: Float64Array.from(current_A),
    fileSign: 1,
    clock: "same",
    remarks: [],
    ...changes,
  };
}

/** Clocks that agree. */
export const sameClock: LinedUp = { offset_s: 0, how: "found", correlation: 0.95, sign: 1 };

/** So many times the same. */
export const times = (count: number, value: number): number[] => Array.from({ length: count }, () => value);
