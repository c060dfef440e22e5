import type { Job } from "../../../shared/job/job.ts";
import type { WeekDay } from "../../../shared/job/schema/week.ts";
import { type TimedTrip, timedTrips } from "../../../shared/job/weekTimes.ts";
import { J_PER_KWH, M_PER_KM, S_PER_H } from "../../../shared/units.ts";
import { prepareIn } from "../../step/prepare.ts";
import { createRunContext, type RunContext } from "../../step/runContext.ts";
import type { Trace } from "../../trace/trace.ts";
import { ageOf, type Condition, wintersOf } from "../conditions/condition.ts";
import { asked_m, driveTrip, type Mark, type WeekRoad, weekRoad } from "./driveTrip.ts";
import { park } from "./park.ts";
import type { DrivenTrip, FailingDay, PackWeek, Parking, WeekReport } from "./weekReport.ts";

/** Who is empty within so many metres of the end has arrived. */
const LEAST_m = 1;
/** What is lost of a road to falling behind by less than this share of it nobody notices. */
const NOTICED_frac = 0.01;

/** Roads made ready, by their ids. */
export type WeekRoads = ReadonlyMap<string, WeekRoad>;

/** The job's own weather with a new pack. */
const NEW: Condition = { name: "new" };

/** What a week is driven in: new, then winter new and at ten years where winter is driven, else at ten years in the job's own weather. */
export function weekConditions(job: Job): Condition[] {
  const winters = wintersOf(job);
  return winters ? [NEW, winters.winter, winters.tenYearsWinter] : [NEW, { name: "ten years", age: ageOf(job) }];
}

/** The roads of a week, made ready once for all packs and conditions. */
export function weekRoads(traces: ReadonlyMap<string, Trace>): WeekRoads {
  return new Map([...traces].map(([id, trace]) => [id, weekRoad(trace)]));
}

/** Packs of a job, all of them where none are named, through its week in each condition; nothing where no trip is in it. */
export function driveWeeks(
  job: Job,
  traces: ReadonlyMap<string, Trace>,
  packIndexes: readonly number[] = job.packs.map((_, i) => i),
): WeekReport | undefined {
  const roads = weekRoads(traces);
  const packs = packIndexes.flatMap((packIndex) =>
    weekConditions(job).flatMap((condition) => driveWeek(job, packIndex, roads, condition) ?? []),
  );
  return packs.length > 0 ? { packs, isWinterAFactor: wintersOf(job) === undefined } : undefined;
}

/**
 * One pack through the week of its job in one condition; nothing where no trip is in it. It begins at the week's first departure, charged to the
 * ceiling, and goes on with charge and temperatures from trip to parking to trip until the same departure a week later.
 *
 * Each road is driven from the departure on, at its own pace; until the arrival by the clock the car then stands on the way, without charging. Where the pack
 * is empty on the way, the rest of the trip is not driven, and the week goes on at its end with the empty pack: the car was brought there.
 */
export function driveWeek(
  job: Job,
  packIndex: number,
  roads: WeekRoads,
  condition: Condition = NEW,
): PackWeek | undefined {
  const { week, supplies } = job;
  const pack = job.packs[packIndex];
  const times = timedTrips(week?.days ?? []);
  if (week === undefined || times.length === 0) return undefined;
  const model = prepareIn(job, pack, condition);
  const context = createRunContext(model, model.pack.ceiling_frac);
  const course: { at_h: number[]; soc_frac: number[] } = {
    at_h: [times[0].leaves_h],
    soc_frac: [model.pack.ceiling_frac],
  };
  const mark: Mark = (at_h, soc_frac) => {
    const last = course.at_h.length - 1;
    if (course.at_h[last] === at_h && course.soc_frac[last] === soc_frac) return;
    course.at_h.push(at_h);
    course.soc_frac.push(soc_frac);
  };
  const trips: DrivenTrip[] = [];
  const parkings: Parking[] = [];
  const emptied = new Map<number, number>();
  for (const time of times) {
    const { parkedAt, road: roadId } = week.days[time.day].trips[time.trip];
    const road = roads.get(roadId);
    if (!road) throw new Error(`the week's road ${roadId} was not made ready`);
    const driven = drive(context, week.days, road, time, mark);
    if (driven.emptyAt_h !== undefined) emptied.set(trips.length, driven.emptyAt_h);
    trips.push(driven.trip);
    const supply = supplies.find(({ name }) => name === parkedAt);
    const from_h = Math.min(time.nextLeaves_h, driven.trip.arrives_h);
    parkings.push(park(context, job, supply, { from_h, to_h: time.nextLeaves_h, plugged_h: time.plugged_h }, mark));
  }
  return reportOf(pack.name, condition.name, model.pack, { trips, parkings, course, emptied, days: week.days });
}

/** One trip: driven over its road, and then stood on the way until its arrival. */
function drive(
  context: RunContext,
  days: readonly WeekDay[],
  road: WeekRoad,
  { day, trip, weekday, leaves_h, arrives_h }: TimedTrip,
  mark: Mark,
): { readonly trip: DrivenTrip; readonly emptyAt_h?: number } {
  const { model, state } = context;
  const leaves_frac = state.pack.soc_frac;
  const of = days[day].trips[trip];
  const wanted_m = asked_m(of, road);
  const totals = driveTrip(context, model, road, of, leaves_h, mark);
  const driven_h = leaves_h + totals.time_s / S_PER_H;
  const ends_h = Math.max(arrives_h, driven_h);
  mark(ends_h, state.pack.soc_frac);
  const left_m = Math.max(0, wanted_m - totals.distance_m);
  const isMissed = !totals.reachedFloor && left_m > NOTICED_frac * wanted_m;
  return {
    trip: {
      day,
      trip,
      weekday,
      leaves_h,
      arrives_h: ends_h,
      asked_km: wanted_m / M_PER_KM,
      driven_km: totals.distance_m / M_PER_KM,
      short_km: totals.reachedFloor && left_m >= LEAST_m ? left_m / M_PER_KM : 0,
      missed_km: isMissed ? left_m / M_PER_KM : 0,
      late_h: ends_h - arrives_h,
      leaves_frac,
      arrives_frac: state.pack.soc_frac,
      drawn_kWh: totals.ledger.total_J / J_PER_KWH,
    },
    ...(totals.reachedFloor && { emptyAt_h: driven_h }),
  };
}

interface Driven {
  readonly trips: readonly DrivenTrip[];
  readonly parkings: readonly Parking[];
  readonly course: PackWeek["course"];
  /** When the pack was empty, by trip. */
  readonly emptied: ReadonlyMap<number, number>;
  readonly days: readonly WeekDay[];
}

function reportOf(
  name: string,
  condition: string,
  { ceiling_frac, floor_frac }: { readonly ceiling_frac: number; readonly floor_frac: number },
  { trips, parkings, course, emptied, days }: Driven,
): PackWeek {
  const sum = <T>(list: readonly T[], of: (entry: T) => number) => list.reduce((total, each) => total + of(each), 0);
  const least = course.soc_frac.reduce((at, soc_frac, i) => (soc_frac < course.soc_frac[at] ? i : at), 0);
  const lowest = { soc_frac: course.soc_frac[least], at_h: course.at_h[least] };
  const driven_km = sum(trips, (trip) => trip.driven_km);
  const perKm_frac = sum(trips, ({ leaves_frac, arrives_frac }) => leaves_frac - arrives_frac) / driven_km;
  return {
    name,
    condition,
    ceiling_frac,
    floor_frac,
    trips,
    parkings,
    lowest,
    ...(perKm_frac > 0 && { reserve_km: Math.max(0, lowest.soc_frac - floor_frac) / perKm_frac }),
    failingDays: failingDays(trips, emptied, days),
    driven_km,
    wall_kWh: sum(parkings, ({ wall_kWh }) => wall_kWh),
    ...(parkings.every(({ cost }) => cost !== undefined) && { cost: sum(parkings, ({ cost = 0 }) => cost) }),
    stored_kWh: sum(parkings, ({ stored_kWh }) => stored_kWh),
    drawn_kWh: sum(trips, ({ drawn_kWh }) => drawn_kWh),
    ends_frac: parkings[parkings.length - 1].to_frac,
    course,
  };
}

/** What is short of a weekday's trips, together. */
function failingDays(
  trips: readonly DrivenTrip[],
  emptied: ReadonlyMap<number, number>,
  days: readonly WeekDay[],
): FailingDay[] {
  const failing: FailingDay[] = [];
  trips.forEach(({ weekday, day, short_km }, i) => {
    if (short_km <= 0) return;
    const last = failing[failing.length - 1];
    if (last?.weekday === weekday) {
      failing[failing.length - 1] = { ...last, short_km: last.short_km + short_km };
      return;
    }
    const { name } = days[day];
    failing.push({
      weekday,
      ...(name !== undefined && name !== "" && { name }),
      short_km,
      emptyAt_h: emptied.get(i) ?? 0,
    });
  });
  return failing;
}
