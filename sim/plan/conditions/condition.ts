import type { Job } from "../../../shared/job/job.ts";
import type { Weather } from "../../../shared/job/schema/conditions.ts";
import { FUEL_PER_LITRE_kWh } from "../../constants.ts";
import type { DrivenIn } from "../../step/prepare.ts";

/** What of a job says in which conditions its packs are driven. */
export type WithConditions = Pick<Job, "conditions" | "allowance">;

/** A condition as it is driven: its name, and what is other in it than new and in the job's own weather. */
export interface Condition extends DrivenIn {
  readonly name: string;
}

/** What ten years make of a pack: the capacity of the allowance, and a resistance of its own where the job says one. */
export function ageOf({ conditions, allowance }: WithConditions): NonNullable<DrivenIn["age"]> {
  return {
    capacity_frac: allowance.aged_frac,
    resistance_ratio: conditions?.old.resistance_ratio ?? 1,
  };
}

/** Winter with a new pack and with an old one; nothing where a job knows winter by a factor alone. */
export function wintersOf(
  job: WithConditions,
): { readonly winter: Condition; readonly tenYearsWinter: Condition } | undefined {
  const weather = job.conditions?.winter;
  if (weather === undefined) return undefined;
  return {
    winter: { name: "new, winter", weather },
    tenYearsWinter: { name: "ten years, winter", weather, age: ageOf(job) },
  };
}

/** The conditions of the workshop's own. */
export function othersOf(job: WithConditions): Condition[] {
  return (job.conditions?.others ?? []).map(({ name, isOld, ...weather }) => ({
    name,
    weather,
    ...(isOld && { age: ageOf(job) }),
  }));
}

/** Where the deciding day is driven: ten years old, in winter; nothing where that is a factor. For whoever varies what is not known. */
export function decidingCondition(job: WithConditions): Condition | undefined {
  return wintersOf(job)?.tenYearsWinter;
}

/** Fuel that a heater burns while driving, in litres an hour; none for an electric one. */
export function fuelPerHour_l({ heat }: Pick<Weather, "heat">): number {
  if (heat.kind !== "fuel") return 0;
  return heat.power_kW / (FUEL_PER_LITRE_kWh[heat.fuel] * heat.efficiency_frac);
}
