import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import type { YearJob } from "./days.ts";
import { middleDay_km } from "./drivenDays.ts";

/** So many days at least before nothing is said of their being few: a working week. Assumed. */
const FEW = 5;
/** A day within this share of the usual one is as it was driven: kilometres are kept to a tenth. */
const SAME_frac = 0.005;

/** Where the driven days of a year come from, in sentences; nothing where it has no list of days. */
export function drivenDaysWords({ usualDay_km, longestDay_km, year }: Omit<YearJob, "longestDaysAYear">): Message[] {
  const days_km = year?.daysDriven_km;
  if (days_km === undefined) return [];
  const middle_km = middleDay_km(days_km);
  const ratio = usualDay_km / middle_km;
  const usual = q("distance", usualDay_km);
  if (days_km.length === 1)
    return [
      message`The list has one day, which gives nothing to distribute: every driven day is the usual one of ${usual}.`,
    ];
  const isSame = Math.abs(ratio - 1) < SAME_frac;
  const scaled = isSame
    ? message`as they were driven: their middle one is the usual day`
    : message`each times ${ratio.toFixed(2)}, so that their middle one, ${q("distance", middle_km)}, is the usual day of ${usual}`;
  const [least_km, most_km] = [Math.min(...days_km), Math.max(...days_km)];
  const long = days_km.filter((km) => longestDay_km !== undefined && ratio * km >= longestDay_km).length;
  return [
    message`Driven days are drawn evenly from the ${days_km.length} of the list, ${q("distance", least_km)} to ${q("distance", most_km)}, ${scaled}.`,
    ...(days_km.length < FEW ? [message`${days_km.length} days are few: they do not tell a week.`] : []),
    ...(long > 0
      ? [
          message`${long === 1 ? "One of them is" : `${long} of them are`} as long as the longest day and ${long === 1 ? "comes" : "come"} as often as in the list, beside it: remove what is not to come so often.`,
        ]
      : []),
  ];
}
