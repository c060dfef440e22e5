import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import { moneyBetween } from "../../../shared/quantity/money.ts";
import type { DaysFailed } from "./daysFailed.ts";
import { inSentence } from "./inSentence.ts";
import type { PackBeside } from "./packsBeside.ts";

/** Two packs whose masses or ranges differ by less than this are the same there: a kilogram, a kilometre. */
const SAME = 1;
/** Prices of cells are known to two figures at best. */
const DIGITS = 2;

/** What each pack that was asked for brings and costs beside the smallest that will do; `days` in the order of the packs, where the year is driven. */
export function packsBesideWords(
  packs: readonly PackBeside[],
  days: readonly DaysFailed[] | undefined,
  currency = "",
): Message[] {
  const at = packs.findIndex(({ roles }) => roles.includes("smallest"));
  return packs.flatMap((asked, i) => {
    if (!asked.roles.includes("asked for")) return [];
    const name = asked.pack.name;
    if (i === at) return [message`${name}, as asked for, is the smallest that will do.`];
    if (!asked.meets) return [message`${name}, as asked for, does not do it: ${inSentence(asked.why)}`];
    if (at < 0) return [];
    return [differenceWords(asked, packs[at], days && [days[i], days[at]], currency)];
  });
}

function differenceWords(
  asked: PackBeside,
  small: PackBeside,
  days: readonly [asked: DaysFailed, small: DaysFailed] | undefined,
  currency: string,
): Message {
  const mass_kg = asked.mass_kg - small.mass_kg;
  const range_km = asked.range_km - small.range_km;
  const weight =
    Math.abs(mass_kg) < SAME
      ? message`weighs as much`
      : message`weighs ${whole("mass", Math.abs(mass_kg), "nearest")} ${mass_kg > 0 ? "more" : "less"}`;
  const way =
    Math.abs(range_km) < SAME
      ? message`goes as far when new`
      : message`goes ${whole("distance", Math.abs(range_km), "nearest")} ${range_km > 0 ? "further" : "less far"} when new`;
  const smallName = small.pack.whole
    ? message`${small.pack.name}`
    : message`${small.pack.name} (${q("energy", small.nominal_kWh)})`;
  const year = days ? message` ${daysWords(...days)}` : message``;
  return message`Beside ${smallName}, ${asked.pack.name}, as asked for, ${weight} and ${way}.${year}${costWords(asked, small, currency)}`;
}

/** Days of the year at ten years, where the two differ most. */
function daysWords(asked: DaysFailed, small: DaysFailed): Message {
  const more = small.tenYears - asked.tenYears;
  if (small.tenYears === 0 && asked.tenYears === 0)
    return message`Both get home on every driving day of the year, at ten years too.`;
  if (more === 0) return message`At ten years both fail on ${dayCount(small.tenYears)} of ${small.driven} in the year.`;
  return message`At ten years it fails on ${dayCount(asked.tenYears)} of ${asked.driven} in the year, the smallest on ${dayCount(small.tenYears)}.`;
}

function costWords(asked: PackBeside, small: PackBeside, currency: string): Message {
  if (!asked.cost || !small.cost) return message``;
  const [low, high] = [asked.cost.low - small.cost.low, asked.cost.high - small.cost.high];
  if (low < 0 && high < 0)
    return message` Its cells cost ${moneyBetween({ low: -high, high: -low }, currency, DIGITS)} less.`;
  if (low < 0 || high < 0) return message` Which cells cost more is open.`;
  return message` Its cells cost ${moneyBetween({ low, high }, currency, DIGITS)} more.`;
}

function dayCount(count: number): string {
  return count === 0 ? "no day" : count === 1 ? "one day" : `${count} days`;
}
