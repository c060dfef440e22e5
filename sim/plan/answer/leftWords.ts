import { bare, type Message, message, whole, wholeNumber } from "../../../shared/quantity/message.ts";
import { inUnits, type UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Band } from "./band.ts";

/**
 * What is left of a day, for a table: "26 to 38", "2 short to 5", "9 to 13 short", whole and without unit. Rounded down throughout, so
 * that no more is promised than there is and what falls short, by however little, reads as short.
 */
export function leftCell({ low, high }: Band, units: UnitHabit, isAtLeast = false): string {
  const [from, to] = [low, high].map((left_km) => wholeNumber(inUnits("distance", left_km, units).number, "down"));
  if (from === to) return `${isAtLeast ? "at least " : ""}${leftNumber(from)}`;
  if (to < 0) return `${-to} to ${-from} short`;
  return `${isAtLeast ? "at least " : ""}${leftNumber(from)} to ${to}`;
}

function leftNumber(left: number): string {
  return left < 0 ? `${-left} short` : `${left}`;
}

/** What is left in a sentence: "about 32 km left", "about 2 km short". */
export function leftPhrase(left_km: number, isAtLeast = false): Message {
  return [...leftAmount(left_km, isAtLeast, false), left_km < 0 ? " short" : " left"];
}

/** The amount alone: "about 32 km", without its unit where asked. The word "short" is the caller's. */
export function leftAmount(left_km: number, isAtLeast: boolean, isBare: boolean): Message {
  const about = isAtLeast ? "at least" : "about";
  const amount = left_km < 0 ? whole("distance", -left_km, "up") : whole("distance", left_km, "down");
  return message`${about} ${isBare ? bare(amount) : amount}`;
}

/** From the worst to the best that may be left: "between 2 km short and 5 km left". */
export function leftBetween(band: Band): Message {
  return message`between ${exactly(band.low)} and ${exactly(band.high)}`;
}

function exactly(left_km: number): Message {
  return left_km < 0
    ? message`${whole("distance", -left_km, "up")} short`
    : message`${whole("distance", left_km, "down")} left`;
}
