import type { Job } from "../../../shared/job/job.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { sineOf } from "../../math/slope.ts";
import { type Channels, createChannels } from "../../step/channels.ts";
import type { Model } from "../../step/model.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";

/** The long hill where the job names none: a pass of six in a hundred for eight kilometres. Assumed. */
const LONG_ratio = 0.06;
const LONG_km = 8;
/** It is climbed at this speed, or as fast as the car goes. Assumed. */
const CLIMB_kmh = 50;
/** From rest to that speed. Assumed. */
const PULL_AWAY_mps2 = 1;
/** Currents are greatest where volts are low: driven from a third of the window left, or from what the road takes. Assumed. */
const LOW_frac = 1 / 3;
/** What is put on top of what the road takes, so that it does not end on the way. */
const SPARE_ratio = 1.1;

export interface LongHill {
  readonly grade_ratio: number;
  readonly length_km: number;
  readonly speed_kmh: number;
  /** The job names neither its gradient nor its length. */
  readonly isAssumed: boolean;
}

/** The long hill of a job. */
export function longHillOf({ requirement }: Pick<Job, "requirement">): LongHill {
  const { longHill_ratio, longHill_km } = requirement;
  return {
    grade_ratio: longHill_ratio ?? LONG_ratio,
    length_km: longHill_km ?? LONG_km,
    speed_kmh: CLIMB_kmh,
    isAssumed: longHill_ratio === undefined && longHill_km === undefined,
  };
}

/** The long hill as a trace: from rest to its speed, at that speed to where its length would end, a sample a second. */
export function hillTrace({ grade_ratio, length_km, speed_kmh }: LongHill): Trace {
  const speed_mps = speed_kmh * MPS_PER_KMH;
  const length_m = length_km * M_PER_KM;
  const seconds = Math.max(2, Math.ceil(length_m / speed_mps));
  return {
    id: "long-hill",
    title: "the long hill",
    time_s: Float64Array.from({ length: seconds + 1 }, (_, i) => i),
    speed_mps: Float64Array.from({ length: seconds + 1 }, (_, i) => Math.min(speed_mps, i * PULL_AWAY_mps2)),
    profile: {
      distance_m: Float64Array.of(0, 2 * length_m),
      elevation_m: Float64Array.of(0, 2 * length_m * sineOf(grade_ratio)),
    },
  };
}

/** A trace driven from a pack that is low, but holds enough to get to its end where that can be. */
export function drivenLow(model: Model, trace: Trace): Channels {
  const { ceiling_frac, floor_frac } = model.pack;
  const once = run(model, trace);
  const used_frac = ceiling_frac - once.endSoc_frac;
  const left_frac = Math.max(LOW_frac * (ceiling_frac - floor_frac), SPARE_ratio * used_frac);
  const channels = createChannels(trace.time_s.length);
  run(model, trace, channels, Math.min(ceiling_frac, floor_frac + left_frac));
  return channels;
}
