import type { Job } from "../../../shared/job/job.ts";
import { J_PER_KWH, W_PER_KW, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { sineOf } from "../../math/slope.ts";
import { createChannels } from "../../step/channels.ts";
import type { Model } from "../../step/model.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";

/** A hill without a bend: its slope as rise over run, and its length along the road. */
export interface Hill {
  readonly grade_ratio: number;
  readonly length_m: number;
}

/** A hill climbed at a steady speed, from a charged pack and a motor as warm as the day. */
export interface Climb {
  readonly speed_mps: number;
  readonly duration_s: number;
  /** Mean power at the motor shaft. */
  readonly shaft_kW: number;
  readonly energy_kWh: number;
  /** The motor at the top; absent where nothing is known of its heat. */
  readonly motorTop_degC?: number;
  /** Along the hill, where the car falls below nine tenths of the speed; absent where it keeps it. */
  readonly slowsAfter_m?: number;
  /** What the maker's rating says; absent where none is given. */
  readonly rating?: RatingVerdict;
}

export type RatingVerdict = "holds" | "holdsShort" | "tooLong" | "tooMuch";

/** A row a second would be many on a long hill; heat and charge change slowly. */
const ROWS = 400;
/** Below this share of the speed the car counts as slowed. */
const KEPT_frac = 0.9;

/** Drives the hill at one speed, from that speed. */
export function climbHill(job: Job, model: Model, { grade_ratio, length_m }: Hill, speed_mps: number): Climb {
  const duration_s = length_m / speed_mps;
  const sinSlope = sineOf(grade_ratio);
  const rows = ROWS + 1;
  const trace: Trace = {
    id: "hill",
    title: "the hill",
    time_s: Float64Array.from({ length: rows }, (_, i) => (i * duration_s) / ROWS),
    speed_mps: new Float64Array(rows).fill(speed_mps),
    profile: { distance_m: Float64Array.of(0, length_m), elevation_m: Float64Array.of(0, sinSlope * length_m) },
  };
  const channels = createChannels(rows);
  const { totals } = run(model, trace, channels);
  let shaft_J = 0;
  let slow: number | undefined;
  for (let i = 1; i < channels.length; i++) {
    shaft_J += channels.motorTorque_Nm[i] * channels.motorSpeed_radps[i] * (duration_s / ROWS);
    if (channels.speed_mps[i] < KEPT_frac * speed_mps) slow ??= i;
  }
  const shaft_kW = shaft_J / duration_s / W_PER_KW;
  const rating = ratingVerdict(job.motor.rating, shaft_kW, duration_s);
  return {
    speed_mps,
    duration_s,
    shaft_kW,
    energy_kWh: totals.terminal_J / J_PER_KWH,
    ...(job.motor.heat && { motorTop_degC: channels.motor_K[channels.length - 1] - ZERO_CELSIUS_K }),
    ...(slow !== undefined && { slowsAfter_m: channels.distance_m[slow] }),
    ...(rating && { rating }),
  };
}

/** Whether the maker's rating covers a power for a time. */
export function ratingVerdict(
  rating: Job["motor"]["rating"],
  shaft_kW: number,
  duration_s: number,
): RatingVerdict | undefined {
  if (rating === undefined) return undefined;
  const { continuous_kW, peak_kW, peak_s } = rating;
  if (shaft_kW <= continuous_kW) return "holds";
  if (peak_kW === undefined || peak_s === undefined || shaft_kW > peak_kW) return "tooMuch";
  return duration_s <= peak_s ? "holdsShort" : "tooLong";
}
