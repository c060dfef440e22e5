import type { PackWeek } from "./weekReport.ts";

/** What a week takes from the wall at one place. */
export interface PlaceOfWeek {
  readonly supply: string;
  readonly wall_kWh: number;
  /** In the job's currency, by the hours of the clock; absent where no price of the place is known. */
  readonly cost?: number;
}

/** The places at which a car is plugged in through its week, in the order in which it comes to them: energy from the wall, and its cost. */
export function placesOfWeek({ parkings }: Pick<PackWeek, "parkings">): PlaceOfWeek[] {
  const places = new Map<string, PlaceOfWeek>();
  for (const { supply, wall_kWh, cost } of parkings) {
    if (supply === undefined) continue;
    const before = places.get(supply) ?? { wall_kWh: 0, cost: 0 };
    const isPriced = before.cost !== undefined && cost !== undefined;
    places.set(supply, {
      supply,
      wall_kWh: before.wall_kWh + wall_kWh,
      ...(isPriced && { cost: before.cost + cost }),
    });
  }
  return [...places.values()];
}
