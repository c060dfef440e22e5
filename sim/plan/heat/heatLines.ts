import type { Job } from "../../../shared/job/job.ts";
import { W_PER_KW } from "../../../shared/units.ts";
import type { Channels } from "../../step/channels.ts";
import { prepare } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import type { LongHill } from "../currents/courses.ts";
import { drivenAgain, shaftPower } from "./drivenAgain.ts";
import { CLIMBS, CONTINUOUS_s, type HeatCourse, upAndDown } from "./heatStudy.ts";
import { onHotDay } from "./hotDay.ts";

/** How warm motor and pack get while a course is driven again and again: thinned, a value for each moment. */
export interface HeatLine {
  readonly name: HeatCourse["name"];
  readonly times: number;
  readonly isEmpty: boolean;
  readonly time_s: readonly number[];
  /** Absent where nothing is known of how it warms. */
  readonly motor_K?: readonly number[];
  readonly pack_K?: readonly number[];
  /**
   * Mean power of the shaft over the half hour before each moment, as a share of the maker's continuous rating; nothing was asked before the
   * start. Only where the rating is all that is known of the motor's heat.
   */
  readonly rated_frac?: readonly number[];
}

/** Points of a line, as fine as a figure shows. */
const POINTS = 240;

/**
 * The road and the long hill, each again and again on the hot day until the pack is empty or five times, from a charged pack and with motor
 * and pack as warm as the air. The hill is that of the study: at the speed which the car holds.
 */
export function heatLines(job: Job, packIndex: number, trace: Trace, hill: LongHill): HeatLine[] {
  const model = prepare(onHotDay(job), job.packs[packIndex]);
  const { heat, rating } = job.motor;
  const line = (name: HeatLine["name"], course: Trace): HeatLine => {
    const { passes, totals } = drivenAgain(model, course, CLIMBS);
    const { time_s, shaft_W } = shaftPower(passes);
    const rows = thinned(time_s.length);
    const pick = (values: readonly number[]) => rows.map((row) => values[row]);
    return {
      name,
      times: passes.length,
      isEmpty: totals.reachedFloor,
      time_s: pick(time_s),
      ...(heat && { motor_K: pick(joined(passes, "motor_K")) }),
      ...(job.module.heat && { pack_K: pick(joined(passes, "pack_K")) }),
      ...(!heat &&
        rating && {
          rated_frac: pick(meanBefore_W(time_s, shaft_W)).map((mean_W) => mean_W / (rating.continuous_kW * W_PER_KW)),
        }),
    };
  };
  return [line("road", trace), line("hill", upAndDown(hill))];
}

/** Rows to show of so many: evenly spread, the last one too. */
function thinned(count: number): number[] {
  const points = Math.min(count, POINTS);
  return Array.from({ length: points }, (_, k) => Math.round((k * (count - 1)) / Math.max(1, points - 1)));
}

/** A channel over all passes, whose first row is that of the start. */
function joined(passes: readonly Channels[], channel: "motor_K" | "pack_K"): number[] {
  return passes.flatMap((each, k) => Array.from(each[channel].subarray(k === 0 ? 0 : 1, each.length)));
}

/** Mean over the half hour before each moment, with nothing given before the first. */
function meanBefore_W(time_s: readonly number[], shaft_W: readonly number[]): number[] {
  const work_J = [0];
  for (let i = 1; i < time_s.length; i++) work_J.push(work_J[i - 1] + shaft_W[i] * (time_s[i] - time_s[i - 1]));
  let from = 0;
  return time_s.map((at_s, i) => {
    while (time_s[from + 1] <= at_s - CONTINUOUS_s) from++;
    // Of the row in which the half hour begins only what lies within it: power is that of the row's end, all along it.
    const cut_s = Math.max(0, at_s - CONTINUOUS_s - time_s[from]);
    return (work_J[i] - work_J[from] - cut_s * (shaft_W[from + 1] ?? 0)) / CONTINUOUS_s;
  });
}
