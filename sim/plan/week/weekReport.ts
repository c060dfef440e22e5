import type { Weekday } from "../../../shared/job/weekdays.ts";
import type { Message } from "../../../shared/quantity/message.ts";

/** A trip as one pack drove it. Hours count from Monday 0:00. */
export interface DrivenTrip {
  /** Places in the lists of the job's week. */
  readonly day: number;
  readonly trip: number;
  readonly weekday: Weekday;
  readonly leaves_h: number;
  /** Later than by the clock where the road takes longer. */
  readonly arrives_h: number;
  readonly asked_km: number;
  readonly driven_km: number;
  /** Not driven since the pack was empty. */
  readonly short_km: number;
  /** Not driven since the car fell behind its road, its pack not empty. */
  readonly missed_km: number;
  /** By how much the road takes longer than the clock gives it. */
  readonly late_h: number;
  readonly leaves_frac: number;
  readonly arrives_frac: number;
  /** Net, from the cells. */
  readonly drawn_kWh: number;
}

/** The car parked between two trips, or from the last trip to the first of the next week. */
export interface Parking {
  readonly from_h: number;
  readonly to_h: number;
  /** Where it was plugged in. */
  readonly supply?: string;
  readonly from_frac: number;
  readonly to_frac: number;
  readonly wall_kWh: number;
  /** In the job's currency, by the hours of the clock in quarters of an hour; absent where no price is known. */
  readonly cost?: number;
  /** What the charger gave to pack and car. */
  readonly given_kWh: number;
  /** What the car took of that itself. */
  readonly car_kWh: number;
  /** Into the cells; the rest of what was given is their heat and that of the leads. */
  readonly stored_kWh: number;
  /** How long the charger waited since the cells took no current, and whether that was for cold. */
  readonly waited_h: number;
  readonly isCold: boolean;
  /** Why it was not charged there at all. */
  readonly stop?: Message;
  /** Of the cells at the end. */
  readonly pack_degC: number;
}

/** A weekday whose trips the pack does not drive to the end. */
export interface FailingDay {
  readonly weekday: Weekday;
  /** In the client's words. */
  readonly name?: string;
  readonly short_km: number;
  /** When the pack was empty first. */
  readonly emptyAt_h: number;
}

/** One pack through the week in one condition, from its ceiling at the first departure to the same departure a week later. */
export interface PackWeek {
  readonly name: string;
  readonly condition: string;
  readonly ceiling_frac: number;
  readonly floor_frac: number;
  readonly trips: readonly DrivenTrip[];
  readonly parkings: readonly Parking[];
  readonly lowest: { readonly soc_frac: number; readonly at_h: number };
  /** How much further it would have gone from its lowest point by what the week draws for a kilometre; nothing where it draws nothing. */
  readonly reserve_km?: number;
  readonly failingDays: readonly FailingDay[];
  readonly driven_km: number;
  readonly wall_kWh: number;
  /** In the job's currency; absent where a price is not known. */
  readonly cost?: number;
  readonly stored_kWh: number;
  readonly drawn_kWh: number;
  /** At the first departure of the week after. */
  readonly ends_frac: number;
  /** For drawing: straight lines between. */
  readonly course: { readonly at_h: readonly number[]; readonly soc_frac: readonly number[] };
}

/** Every pack of a job through its week, in each of its conditions; by pack, then by condition. */
export interface WeekReport {
  readonly packs: readonly PackWeek[];
  /** The job knows winter by a factor, which no week is driven by. */
  readonly isWinterAFactor: boolean;
}
