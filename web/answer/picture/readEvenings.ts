import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Evening, Evenings } from "./eveningDots.ts";

/**
 * What the year says of a pack at a place along the picture: "13 kWh, new: 212 of 241 driving days end with 20 km or more left; at ten
 * years 130". Nothing for a pack without a year.
 */
export function readEvenings(
  name: string,
  byPack: ReadonlyMap<string, Evenings>,
  at: number,
  units: UnitHabit,
): string | undefined {
  const evenings = byPack.get(name);
  if (!evenings) return undefined;
  const unit = units === "metric" ? "km" : "miles";
  const count = (days: readonly Evening[]) => days.filter(({ left }) => left >= at).length;
  const place =
    at === 0 ? "end at home" : at < 0 ? `end at most ${-at} ${unit} short` : `end with ${at} ${unit} left or more`;
  return `${name}, new: ${count(evenings.new)} of ${evenings.new.length} driving days ${place}; at ten years ${count(evenings.old)}.`;
}
