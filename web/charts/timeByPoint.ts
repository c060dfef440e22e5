import { rollup } from "d3-array";
import { RADPS_PER_RPM } from "../../shared/units.ts";
import type { Channels } from "../../sim/index.ts";

/** A place in the plane of motor speed and torque, and the seconds a run spends there. */
export interface TimedPoint {
  readonly speed_rpm: number;
  readonly torque_Nm: number;
  readonly time_s: number;
}

const FIELDS_ALONG_SPEED = 45;
const FIELDS_ALONG_TORQUE = 18; // on either side of zero

/**
 * Time spent in each field of speed and torque, told at the time-weighted mean of what is in the field. Standing still is
 * left out. Fields are a 45th of `most_rpm` wide and an 18th of `most_Nm` high.
 */
export function timeByPoint(channels: Channels, most_rpm: number, most_Nm: number): TimedPoint[] {
  const running: number[] = [];
  for (let i = 1; i < channels.length; i++) if ((channels.motorSpeed_radps[i] as number) > 0) running.push(i);
  const speed_rpm = (row: number) => (channels.motorSpeed_radps[row] as number) / RADPS_PER_RPM;
  const torque_Nm = (row: number) => channels.motorTorque_Nm[row] as number;
  const time_s = (row: number) => (channels.time_s[row] as number) - (channels.time_s[row - 1] as number);
  const column = (row: number) => Math.floor((speed_rpm(row) / (most_rpm || 1)) * FIELDS_ALONG_SPEED);
  const level = (row: number) => Math.floor((torque_Nm(row) / (most_Nm || 1)) * FIELDS_ALONG_TORQUE);
  const weigh = (rows: readonly number[]) => weighted(rows, speed_rpm, torque_Nm, time_s);
  return [...rollup(running, weigh, column, level).values()]
    .flatMap((levels) => [...levels.values()])
    .filter((point) => point.time_s > 0);
}

function weighted(
  rows: readonly number[],
  speed_rpm: (row: number) => number,
  torque_Nm: (row: number) => number,
  time_s: (row: number) => number,
): TimedPoint {
  let total_s = 0;
  let speedTime = 0;
  let torqueTime = 0;
  for (const row of rows) {
    total_s += time_s(row);
    speedTime += speed_rpm(row) * time_s(row);
    torqueTime += torque_Nm(row) * time_s(row);
  }
  return { speed_rpm: speedTime / total_s, torque_Nm: torqueTime / total_s, time_s: total_s };
}
