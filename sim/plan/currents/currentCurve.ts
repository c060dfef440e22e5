import type { Job } from "../../../shared/job/job.ts";
import { greatestRms } from "../../math/greatestRms.ts";
import type { Channels } from "../../step/channels.ts";
import type { Model } from "../../step/model.ts";
import { motorCurrent_A } from "./motorCurrent.ts";

/** Over how long currents are asked: what a contact, a fuse, a cable and a pack each feel. 0 is the peak. */
export const DURATIONS_s = [0, 2, 10, 60, 600] as const;

/** For drawing, closer together; from a second on, the step of most roads. */
const DRAWN_s = [1, 2, 3, 5, 10, 20, 30, 60, 120, 300, 600];

/** The greatest root mean square over any span of a duration: battery, and motor where its current is known, else its torque. */
export interface CurrentPoint {
  readonly duration_s: number;
  readonly battery_A: number;
  readonly motor_Nm: number;
  readonly motor_A?: number;
}

/** The currents of one drive. */
export interface CurrentCurve {
  readonly points: readonly CurrentPoint[];
  /** The same for drawing, battery alone. */
  readonly drawn: readonly { readonly duration_s: number; readonly battery_A: number }[];
  /** Over all of it. */
  readonly whole: CurrentPoint;
  /** The most that goes into the pack. */
  readonly charge_A: number;
  readonly duration_s: number;
}

/** The current-duration curve of a recorded drive. Shorter than a duration, it counts as driven again and again. */
export function currentCurve(job: Job, model: Model, channels: Channels): CurrentCurve {
  const { length } = channels;
  const time_s = channels.time_s.subarray(0, length);
  const battery_A = channels.battery_A.subarray(0, length);
  const torque_Nm = channels.motorTorque_Nm.subarray(0, length);
  const { fullCurrent_A, kind } = job.motor;
  const motor_A =
    fullCurrent_A === undefined
      ? undefined
      : torque_Nm.map((torque, i) =>
          motorCurrent_A(
            kind,
            model.motor.envelope,
            fullCurrent_A,
            torque,
            channels.motorSpeed_radps[i],
            channels.battery_V[i],
          ),
        );
  const duration_s = length > 1 ? time_s[length - 1] - time_s[0] : 0;
  const point = (window_s: number): CurrentPoint => ({
    duration_s: window_s,
    battery_A: greatestRms(time_s, battery_A, window_s),
    motor_Nm: greatestRms(time_s, torque_Nm, window_s),
    ...(motor_A && { motor_A: greatestRms(time_s, motor_A, window_s) }),
  });
  let charge_A = 0;
  for (const current_A of battery_A) charge_A = Math.max(charge_A, -current_A);
  return {
    points: DURATIONS_s.map(point),
    drawn: DRAWN_s.map((each_s) => ({ duration_s: each_s, battery_A: greatestRms(time_s, battery_A, each_s) })),
    whole: point(duration_s),
    charge_A,
    duration_s,
  };
}

/** At each duration the greater of several drives' currents. */
export function greatestOf(curves: readonly CurrentCurve[]): readonly CurrentPoint[] {
  const most = (of: readonly number[]) => Math.max(0, ...of);
  return DURATIONS_s.map((duration_s, i) => {
    const motors_A = curves.flatMap(({ points }) => points[i].motor_A ?? []);
    return {
      duration_s,
      battery_A: most(curves.map(({ points }) => points[i].battery_A)),
      motor_Nm: most(curves.map(({ points }) => points[i].motor_Nm)),
      ...(motors_A.length > 0 && { motor_A: most(motors_A) }),
    };
  });
}
