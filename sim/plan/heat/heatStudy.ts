import type { Job } from "../../../shared/job/job.ts";
import { M_PER_KM, MPS_PER_KMH, W_PER_KW, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { greatestRms } from "../../math/greatestRms.ts";
import { sineOf } from "../../math/slope.ts";
import type { Channels } from "../../step/channels.ts";
import type { Model } from "../../step/model.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";
import { type LongHill, longHillOf } from "../currents/courses.ts";
import { type RatingVerdict, ratingVerdict } from "../hills/climb.ts";
import { drivenAgain, shaftPower } from "./drivenAgain.ts";
import { hotDay_degC, onHotDay } from "./hotDay.ts";

/** What a course does to motor and pack. */
export interface HeatCourse {
  readonly name: "road" | "hill";
  /** How often it was driven, the last time perhaps not to its end. */
  readonly times: number;
  readonly isEmpty: boolean;
  /** Hottest; absent where nothing is known of their heat. */
  readonly motor_degC?: number;
  readonly pack_degC?: number;
  /** How long heat of motor or pack held the car back. */
  readonly heldBack_s: number;
  /** How long it was behind by more than anybody would overlook. */
  readonly behind_s: number;
  /** The greatest mean power at the shaft over half an hour, and over as long as the maker's peak may last. */
  readonly continuous_kW: number;
  readonly peak_kW?: number;
  /** What the maker's rating says of the two; absent where there is none. */
  readonly continuousRating?: RatingVerdict;
  readonly peakRating?: RatingVerdict;
}

/** Motor and pack on a hot day: on the road, and on the long hill up and down again and again. */
export interface HeatStudy {
  readonly hot_degC: number;
  readonly hill: LongHill;
  /** Whether the charged car keeps up on the hill, if need be slower than named; what the hill does to it says little otherwise. */
  readonly isClimbed: boolean;
  readonly courses: readonly HeatCourse[];
}

/** A load that goes on this long counts as continuous. Common practice, no source; half an hour is one of the usual short-time duties. */
export const CONTINUOUS_s = 1800;
/** The long hill is climbed so often, or until the pack is empty. Assumed. */
export const CLIMBS = 5;
/** Where the car does not hold the hill's speed, it is climbed slower by this, down to that. Assumed. */
const SLOWER_kmh = 5;
const SLOWEST_kmh = 10;
const BEHIND_frac = 0.02;

/** Drives both courses on the hot day, each from a charged pack and a motor as warm as the air. */
export function heatStudy(job: Job, packIndex: number, trace: Trace): HeatStudy {
  const model = prepare(onHotDay(job), job.packs[packIndex]);
  const asked = longHillOf(job);
  const speed_kmh = climbableAt_kmh(model, asked);
  const hill = { ...asked, speed_kmh: speed_kmh ?? SLOWEST_kmh };
  return {
    hot_degC: hotDay_degC(job),
    hill,
    isClimbed: speed_kmh !== undefined,
    courses: [heatCourse(job, model, "road", trace, 1), heatCourse(job, model, "hill", upAndDown(hill), CLIMBS)],
  };
}

function heatCourse(job: Job, model: Model, name: HeatCourse["name"], trace: Trace, most: number): HeatCourse {
  const { heat, rating } = job.motor;
  const { passes, totals } = drivenAgain(model, trace, most);
  const { time_s, shaft_W, heldBack_s } = shaftPower(passes);
  const continuous_kW = greatestMean_W(time_s, shaft_W, CONTINUOUS_s) / W_PER_KW;
  const peak_kW = rating?.peak_s === undefined ? undefined : greatestMean_W(time_s, shaft_W, rating.peak_s) / W_PER_KW;
  const continuousRating = ratingVerdict(rating, continuous_kW, CONTINUOUS_s);
  const peakRating = peak_kW === undefined ? undefined : ratingVerdict(rating, peak_kW, rating?.peak_s ?? 0);
  return {
    name,
    times: passes.length,
    isEmpty: totals.reachedFloor,
    ...(heat && { motor_degC: hottest_degC(passes, "motor_K") }),
    ...(job.module.heat && { pack_degC: hottest_degC(passes, "pack_K") }),
    heldBack_s,
    behind_s: totals.behind_s,
    continuous_kW,
    ...(peak_kW !== undefined && { peak_kW }),
    ...(continuousRating && { continuousRating }),
    ...(peakRating && { peakRating }),
  };
}

/** The highest speed, the hill's own at most, at which the charged car does not fall behind on the way up and down; undefined where none is. */
function climbableAt_kmh(model: Model, hill: LongHill): number | undefined {
  for (let speed_kmh = hill.speed_kmh; speed_kmh >= SLOWEST_kmh; speed_kmh -= SLOWER_kmh) {
    const course = upAndDown({ ...hill, speed_kmh });
    const { behind_s } = run(model, course).totals;
    if (behind_s <= BEHIND_frac * course.time_s[course.time_s.length - 1]) return speed_kmh;
  }
  return undefined;
}

/** The long hill up and down again at its speed, from rest and to rest, a sample a second. */
export function upAndDown({ grade_ratio, length_km, speed_kmh }: LongHill): Trace {
  const speed_mps = speed_kmh * MPS_PER_KMH;
  const length_m = length_km * M_PER_KM;
  // Pulling away and stopping at 1 m/s² take as long as the speed has metres a second, and half of that way.
  const seconds = Math.max(2, Math.round((2 * length_m) / speed_mps + speed_mps));
  return {
    id: "long-hill-repeated",
    title: "the long hill, up and down",
    time_s: Float64Array.from({ length: seconds + 1 }, (_, i) => i),
    speed_mps: Float64Array.from({ length: seconds + 1 }, (_, i) => Math.max(0, Math.min(speed_mps, i, seconds - i))),
    profile: {
      distance_m: Float64Array.of(0, length_m, 2 * length_m),
      elevation_m: Float64Array.of(0, length_m * sineOf(grade_ratio), 0),
    },
  };
}

/** The greatest mean over a window: the greatest mean square of the root. A course shorter than that counts as driven on and on. */
function greatestMean_W(time_s: readonly number[], power_W: readonly number[], window_s: number): number {
  return greatestRms(time_s, power_W.map(Math.sqrt), window_s) ** 2;
}

function hottest_degC(passes: readonly Channels[], channel: "motor_K" | "pack_K"): number {
  const most_K = passes.reduce(
    (most, each) => each[channel].subarray(0, each.length).reduce((a, b) => Math.max(a, b), most),
    0,
  );
  return most_K - ZERO_CELSIUS_K;
}
