import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { type Answer, conditionNames } from "../../../sim/index.ts";
import { marksOf } from "./marks.ts";

/**
 * What the picture says of one pack at a place along it: "13 kWh, 20 km left or more: new yes, winter no, ten years, winter no".
 * "Perhaps" where only part of the band reaches it.
 */
export function readAnswer({ packs }: Answer, index: number, at: number, units: UnitHabit): string {
  const pack = packs[index];
  if (!pack) return "";
  if (pack.stop) return `${pack.name}: stop.`;
  const marks = marksOf(pack, units);
  if (marks.length === 0) return `${pack.name}: the car does not drive this road.`;
  const unit = units === "metric" ? "km" : "miles";
  const place = at === 0 ? "home" : at < 0 ? `at most ${-at} ${unit} short` : `home with ${at} ${unit} left or more`;
  const each = marks.map(({ condition, band }) => {
    const word = Math.floor(band.low) >= at ? "yes" : Math.floor(band.high) < at ? "no" : "perhaps";
    return `${conditionNames[condition]}: ${word}`;
  });
  return `${pack.name}, ${place}: ${each.join("; ")}.`;
}
