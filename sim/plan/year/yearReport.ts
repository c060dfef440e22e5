import type { DayOfYear } from "./days.ts";

/** A day that would not get home. */
export interface FailingDay {
  readonly date: string;
  readonly distance_km: number;
  readonly temperature_degC: number;
  readonly kind: DayOfYear["kind"];
  readonly short_km: number;
}

/** The evenings of one pack in one year of its life. */
export interface PackYear {
  readonly name: string;
  readonly age_years: number;
  /** Left on coming home, below nought where it does not; on a day on which the car stands, all that one charge goes. */
  readonly evenings_km: readonly number[];
  readonly failingDays: readonly FailingDay[];
}

/** How far a pack goes on one charge in one year of its life, at each temperature driven. */
export interface PackRanges {
  readonly name: string;
  readonly age_years: number;
  readonly ranges_km: readonly number[];
}

interface Driven {
  /** Temperatures at which the packs were driven, rising; days between them lie on straight lines. */
  readonly driven_degC: readonly number[];
  /** By how much days that were driven at their own temperature differ from those lines at most. */
  readonly largestError_km: number;
  readonly confirmedDays: number;
}

/** The drives behind a year. */
export interface YearRanges extends Driven {
  readonly packs: readonly PackRanges[];
}

/** A year of driving with every pack, new and at ten years. */
export interface YearReport extends Driven {
  readonly days: readonly DayOfYear[];
  readonly packs: readonly PackYear[];
}

/** The two years of a pack's life that are driven. */
export const AGES_years = [0, 10] as const;
