import { S_PER_H } from "../../../shared/units.ts";
import type { ChargePlan, PlanJob } from "./chargePlan.ts";
import { type DayByHour, dayByHour } from "./dayByHour.ts";
import { usualSocket } from "./usualSocket.ts";

const MOST_h = 24;

/**
 * The usual day of each pack by the clock, charged at the first supply; nothing for a pack that is not charged there and for a car that does not
 * drive its road, is empty before it is home, or drives for longer than a day has hours. `road` is one pass over it: the day is as fast as that.
 */
export function usualDays(
  job: PlanJob,
  { rows }: Pick<ChargePlan, "rows">,
  road: { readonly distance_km: number; readonly duration_s: number },
): (DayByHour | undefined)[] {
  const [supply = usualSocket(job.units)] = job.supplies;
  const driving_h = ((job.usualDay_km / road.distance_km) * road.duration_s) / S_PER_H;
  return job.packs.map((pack, i) => {
    const usualDay = rows[i]?.[0]?.usualDay;
    return usualDay && !usualDay.isMoreThanPack && driving_h <= MOST_h
      ? dayByHour(supply, usualDay, pack.ceiling_frac, driving_h)
      : undefined;
  });
}
