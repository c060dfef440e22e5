import { RADPS_PER_RPM } from "../../../../shared/units.ts";
import type { Channels } from "../../../../sim/index.ts";

/** A place in the plane of motor speed and torque, and the seconds a run spends there. */
export interface TimedPoint {
  readonly speed_rpm: number;
  readonly torque_Nm: number;
  readonly time_s: number;
}

const FIELDS_ALONG_SPEED = 45;
const FIELDS_ALONG_TORQUE = 18; // on either side of zero
/** More levels of torque than a column of fields has, so that a number tells a field. */
const LEVELS = 2 ** 20;

/**
 * Time spent in each field of speed and torque, told at the time-weighted mean of what is in the field. Standing still is
 * left out. Fields are a 45th of `most_rpm` wide and an 18th of `most_Nm` high.
 */
export function timeByPoint(channels: Channels, most_rpm: number, most_Nm: number): TimedPoint[] {
  const { time_s, motorSpeed_radps, motorTorque_Nm, length } = channels;
  const alongSpeed = FIELDS_ALONG_SPEED / (most_rpm || 1);
  const alongTorque = FIELDS_ALONG_TORQUE / (most_Nm || 1);
  const fields = new Map<number, { total_s: number; speedTime: number; torqueTime: number }>();
  for (let i = 1; i < length; i++) {
    const speed_rpm = (motorSpeed_radps[i] as number) / RADPS_PER_RPM;
    if (!(speed_rpm > 0)) continue;
    const torque_Nm = motorTorque_Nm[i] as number;
    const long_s = (time_s[i] as number) - (time_s[i - 1] as number);
    const place = Math.floor(speed_rpm * alongSpeed) * LEVELS + Math.floor(torque_Nm * alongTorque);
    const field = fields.get(place) ?? { total_s: 0, speedTime: 0, torqueTime: 0 };
    fields.set(place, field);
    field.total_s += long_s;
    field.speedTime += speed_rpm * long_s;
    field.torqueTime += torque_Nm * long_s;
  }
  return [...fields.values()]
    .filter(({ total_s }) => total_s > 0)
    .map(({ total_s, speedTime, torqueTime }) => ({
      speed_rpm: speedTime / total_s,
      torque_Nm: torqueTime / total_s,
      time_s: total_s,
    }));
}
