import type { Job } from "../../../shared/job/job.ts";
import { J_PER_WH, M_PER_KM, MM_PER_M, MPS_PER_KMH, RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import { gradeOf_ratio, sineOf } from "../../math/slope.ts";
import type { Limit } from "../../step/limits.ts";
import type { Model } from "../../step/model.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import { characteristics } from "../../trace/characteristics.ts";
import { steepestPitch } from "../../trace/steepestPitch.ts";
import type { Trace } from "../../trace/trace.ts";
import { holdSpeed } from "../going/holdSpeed.ts";
import { standingStart, timeTo_s } from "../going/standingStart.ts";
import { startTorque, steepestStart } from "../going/startTorque.ts";
import { steepestHeld } from "../going/steepestHeld.ts";
import { type GearChoice, gearChoices, inOneGear } from "./oneGear.ts";

/** What the gears are held to: the client's steepest hill and his own top speed. */
export interface GearDemand {
  readonly hill_ratio?: number;
  readonly top_kmh: number;
}

/** What one gear does, the car left in it. */
export interface GearRow extends GearChoice {
  /** Motor speed over road speed: overall ratio. */
  readonly overall_ratio: number;
  /** Road speed at the motor's limit, and with a tenth of it in hand. */
  readonly top_kmh: number;
  readonly easy_kmh: number;
  /** Of the motor at the top speed asked for. */
  readonly motorAtTop_rpm: number;
  /** The steepest it starts on, as rise over run in per cent, and what bounds that. */
  readonly steepestStart_percent: number;
  readonly startLimit: Limit;
  /** On the steepest hill asked for; absent where none is known. */
  readonly hill?: {
    readonly grade_percent: number;
    readonly starts: boolean;
    readonly needed_Nm: number;
    readonly available_Nm: number;
    /** At hand beyond what is needed, as a share of it; negative where it does not start. */
    readonly spare_frac: number;
    /** How long the hill is climbed at that speed, from a charged pack and a cool motor, and whether until the pack is empty. */
    readonly climb_kmh: number;
    readonly held_s: number;
    readonly isHeldToEmpty: boolean;
  };
  /** The steepest that it climbs at that speed within the maker's rating; absent where none is known. */
  readonly rated?: {
    readonly climb_kmh: number;
    /** Continuous. */
    readonly continuous_percent: number;
    /** For so long as the maker's peak may last; absent where no peak is known. */
    readonly peak_percent?: number;
    readonly peak_s?: number;
  };
  readonly to50kmh_s?: number;
  /** On the road, from the pack; absent where the car does not move. */
  readonly battery_Whpkm?: number;
  /** Share of the road that it misses. */
  readonly missed_frac: number;
}

/** Steady running keeps below this share of the motor's top speed. Common practice, no source. */
export const EASY_frac = 0.9;
/** A hill is climbed at this speed, or at the easy speed of a lower gear. Assumed. */
export const CLIMB_kmh = 30;
const START_s = 120;
const START_STEP_s = 0.05;

/**
 * What is asked of the gears: the hill and the top speed that the client named, or else what the road itself asks, its top speed, and its
 * steepest pitch where its heights are known.
 */
export function demandOf(trace: Trace, { startHill_ratio, topSpeed_kmh }: Job["requirement"] = {}): GearDemand {
  const pitch = trace.profile && steepestPitch(trace.profile);
  const hill_ratio = startHill_ratio ?? pitch?.grade_ratio;
  const top_kmh = topSpeed_kmh ?? characteristics(trace).max_mps / MPS_PER_KMH;
  return { top_kmh, ...(hill_ratio !== undefined && { hill_ratio }) };
}

/** Each gear of a job's car in each range of its transfer box, the car left in it, with one of its packs aboard. */
export function gearTable(job: Job, packIndex: number, trace: Trace, demand: GearDemand): GearRow[] {
  return gearChoices(job).map((choice) => gearRow(inOneGear(job, choice), packIndex, trace, demand, choice));
}

function gearRow(job: Job, packIndex: number, trace: Trace, demand: GearDemand, choice: GearChoice): GearRow {
  const model = prepare(job, job.packs[packIndex]);
  const [gear] = model.gears;
  const { motor_radpm, top_mps } = gear;
  const steepestSine = steepestStart(model, gear);
  const { totals } = run(model, trace);
  const radius_m = job.vehicle.tyres.loadedRadius_mm / MM_PER_M;
  const starting = standingStart(model, START_s, START_STEP_s, job.controller.ramp_s);
  const to50kmh_s = timeTo_s(starting, 50 * MPS_PER_KMH);
  return {
    ...choice,
    overall_ratio: motor_radpm * radius_m,
    top_kmh: top_mps / MPS_PER_KMH,
    easy_kmh: (EASY_frac * top_mps) / MPS_PER_KMH,
    motorAtTop_rpm: (demand.top_kmh * MPS_PER_KMH * motor_radpm) / RADPS_PER_RPM,
    steepestStart_percent: 100 * gradeOf_ratio(steepestSine),
    startLimit: startTorque(model, gear, steepestSine).limit,
    ...(demand.hill_ratio !== undefined && { hill: hillOf(model, demand.hill_ratio) }),
    ...(job.motor.rating && { rated: ratedOf(model, job.motor.rating) }),
    ...(to50kmh_s !== undefined && { to50kmh_s }),
    ...(totals.distance_m > 0 && {
      battery_Whpkm: totals.terminal_J / J_PER_WH / (totals.distance_m / M_PER_KM),
    }),
    missed_frac: totals.target_m > 0 ? Math.max(0, 1 - totals.distance_m / totals.target_m) : 0,
  };
}

function hillOf(model: Model, hill_ratio: number): NonNullable<GearRow["hill"]> {
  const [gear] = model.gears;
  const sinSlope = sineOf(hill_ratio);
  const { needed_Nm, available_Nm } = startTorque(model, gear, sinSlope);
  const climb_mps = climbSpeed_mps(model);
  const climbing = holdSpeed(model, climb_mps, sinSlope);
  return {
    grade_percent: 100 * hill_ratio,
    starts: available_Nm >= needed_Nm,
    needed_Nm,
    available_Nm,
    spare_frac: available_Nm / needed_Nm - 1,
    climb_kmh: climb_mps / MPS_PER_KMH,
    held_s: climbing.held_s,
    isHeldToEmpty: climbing.isHeld,
  };
}

function ratedOf(
  model: Model,
  { continuous_kW, peak_kW, peak_s }: NonNullable<Job["motor"]["rating"]>,
): NonNullable<GearRow["rated"]> {
  const [gear] = model.gears;
  const climb_mps = climbSpeed_mps(model);
  const steepest_percent = (power_kW: number) =>
    100 * gradeOf_ratio(steepestHeld(model, gear, climb_mps, power_kW * W_PER_KW));
  return {
    climb_kmh: climb_mps / MPS_PER_KMH,
    continuous_percent: steepest_percent(continuous_kW),
    ...(peak_kW !== undefined && peak_s !== undefined && { peak_percent: steepest_percent(peak_kW), peak_s }),
  };
}

function climbSpeed_mps({ gears: [gear] }: Model): number {
  return Math.min(CLIMB_kmh * MPS_PER_KMH, EASY_frac * gear.top_mps);
}
