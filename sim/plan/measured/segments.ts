import { STANDARD_GRAVITY_mps2 } from "../../../shared/units.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";

/** What a car is doing; each shows another of its properties. */
export const doings = ["standing", "pulling away", "cruising", "climbing", "braking"] as const;
export type Doing = (typeof doings)[number];

/** A piece of a drive in which the car does one thing: rows from `from` up to, not including, `to`. */
export interface Segment {
  readonly doing: Doing;
  readonly from: number;
  readonly to: number;
}

/** Below this a car counts as standing: a receiver's noise at rest. Assumed. */
const STANDING_mps = 0.3;
/** Harder speeding up than this is pulling away. Assumed. */
const PULLING_mps2 = 0.25;
/** Steeper than this is a climb: 2 m in 100. Assumed. */
const CLIMB_ratio = 0.02;
/** Shorter pieces are part of what is before them. */
const SHORTEST_s = 5;
/** Longer ones are cut, so that each has a speed of its own. */
const LONGEST_s = 45;
/** Rows after a stop and before a start that do not show what standing draws. */
const AFTER_STOP = 3;
const BEFORE_START = 4;
/** Speed and slope are looked at over so many rows on either side. */
const AROUND = 2;

/**
 * A drive cut into pieces of standing, pulling away, cruising, climbing and braking, by speed and slope as recorded and not by what any
 * model makes of them. Braking is slowing harder than the road alone would, 0.2 m/s2 in steady traffic, or a descent that pushes.
 */
export function segmentsOf(drive: DrivenAsMeasured): Segment[] {
  const segments: Segment[] = [];
  const { count, part } = drive;
  const kinds = Array.from({ length: count }, (_, i) => doingAt(drive, i));
  let from = 0;
  for (let i = 1; i <= count; i++) {
    const isEnd = i === count || part[i] !== part[from];
    if (!isEnd && kinds[i] === kinds[from]) continue;
    const last = segments.at(-1);
    const joins = i - from < SHORTEST_s && last !== undefined && last.to === from && part[last.from] === part[from];
    // A short piece goes with what is before it; standing shows the accessories alone and takes nothing in.
    if (joins && (last.doing === "standing") === (kinds[from] === "standing"))
      segments[segments.length - 1] = { ...last, to: i };
    else segments.push({ doing: kinds[from], from, to: i });
    from = i;
  }
  return segments.flatMap(cut);
}

function cut({ doing, from, to }: Segment): Segment[] {
  const pieces = Math.max(1, Math.round((to - from) / LONGEST_s));
  const edge = (k: number) => from + Math.round(((to - from) * k) / pieces);
  return Array.from({ length: pieces }, (_, k) => ({ doing, from: edge(k), to: edge(k + 1) }));
}

/**
 * Standing, and some seconds before and after too: clocks that are a little off must not bring the last creep into it, nor the pull of a
 * start, which draws current before a speed shows.
 */
function isStandingAround(target_mps: Float64Array, part: Uint16Array, i: number): boolean {
  return !movesWithin(target_mps, part, i, i - AFTER_STOP, i) && !movesWithin(target_mps, part, i, i, i + BEFORE_START);
}

/** Whether the car moves in any row of the same part from one to another. */
function movesWithin(target_mps: Float64Array, part: Uint16Array, i: number, from: number, to: number): boolean {
  for (let k = from; k <= to; k++) if (part[k] === part[i] && target_mps[k] >= STANDING_mps) return true;
  return false;
}

function doingAt({ target_mps, time_s, part, grade_ratio, count }: DrivenAsMeasured, i: number): Doing {
  if (isStandingAround(target_mps, part, i)) return "standing";
  // At rest still, and about to start.
  if (target_mps[i] < STANDING_mps && movesWithin(target_mps, part, i, i, i + BEFORE_START)) return "pulling away";
  let low = i;
  let high = i;
  while (low > 0 && i - low < AROUND && part[low - 1] === part[i]) low--;
  while (high < count - 1 && high - i < AROUND && part[high + 1] === part[i]) high++;
  const slowing_mps2 = high > low ? (target_mps[high] - target_mps[low]) / (time_s[high] - time_s[low]) : 0;
  const grade = grade_ratio[i];
  // What of the slope counts as speeding up: the car works as hard for either.
  const asked_mps2 = slowing_mps2 + STANDARD_GRAVITY_mps2 * grade;
  if (asked_mps2 < -PULLING_mps2) return "braking";
  if (slowing_mps2 > PULLING_mps2) return "pulling away";
  return grade > CLIMB_ratio ? "climbing" : "cruising";
}
