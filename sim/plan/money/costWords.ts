import type { Running } from "../../../shared/job/schema/costs.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { moneyBetween, roundedEnds, writeMoney } from "../../../shared/quantity/money.ts";
import type { CostPlan, PackCosts, YearlyCosts } from "./costPlan.ts";
import type { Span } from "./span.ts";

/** Beyond this no old car is driven in a year: said as "more than". Assumed. */
const MOST_km = 100_000;
/** Years after which cells may want replacing; common practice, no source. */
const CELLS_years = 10;

/** What a pack costs, what it saves and whether it pays back, sentence by sentence, at the first of the yearly distances. */
export function costSentences(plan: CostPlan, pack: PackCosts): readonly Message[] {
  const { quote, missing, yearly } = pack;
  const [first] = yearly;
  const price = quote.total ? [priceSentence(plan, pack, quote.total)] : [];
  if (!first || !plan.running) return [...price, ...missing];
  return [...price, savingSentence(plan, first), paybackSentence(plan.running, pack, first)];
}

/** What people pay for besides money: words, no number. */
export const BESIDES: Message = [
  "Quiet, no smoke and access to towns that keep old engines out are not in these figures.",
];

function priceSentence({ currency, against }: CostPlan, { quote, extra }: PackCosts, total: Span): Message {
  const costs = message`${quote.pack} costs ${moneyBetween(total, currency)}`;
  if (against.isAsItIs || !extra) return message`${costs}.`;
  return message`${costs}, ${compared(extra, currency)} than the alternative (${against.name}).`;
}

function savingSentence({ currency }: CostPlan, { saves, distance_km }: YearlyCosts): Message {
  const at = message`At ${q("distance", distance_km)} a year it`;
  const { low, high } = roundedEnds(saves, 2);
  if (low >= 0 && high > 0) return message`${at} saves ${ends(saves, currency, 2)} a year.`;
  if (high <= 0 && low < 0) return message`${at} costs ${ends(turned(saves), currency, 2)} more a year to run.`;
  if (low === 0) return message`${at} costs as much to run.`;
  return message`${at} saves up to ${writeMoney(high, currency, 2)} a year, or costs up to ${writeMoney(-low, currency, 2)} more.`;
}

function compared(extra: Span, currency: string): string {
  const { low, high } = roundedEnds(extra);
  if (low >= 0 && high > 0) return `${ends(extra, currency)} more`;
  if (high <= 0 && low < 0) return `${ends(turned(extra), currency)} less`;
  if (low === 0) return "no more";
  return `between ${writeMoney(-low, currency)} less and ${writeMoney(high, currency)} more`;
}

/** Both ends, or "up to" where the low one is nothing. */
function ends(amount: { low: number; high: number }, currency: string, digits = 3): string {
  const { low, high } = roundedEnds(amount, digits);
  return low === 0 ? `up to ${writeMoney(high, currency, digits)}` : moneyBetween(amount, currency, digits);
}

/** When it has paid for itself; where it has not within the years, from which yearly distance it would. */
function paybackSentence({ years }: Running, pack: PackCosts, yearly: YearlyCosts): Message {
  const { value_years, early_years, late_years } = yearly.payback;
  if (late_years !== undefined) return message`It pays back ${within(early_years ?? 0, late_years)}.`;
  if (value_years !== undefined)
    return message`It pays back ${after(value_years)}, but not within ${inYears(years)} if everything turns out badly.`;
  const never = message`It does not pay back within ${inYears(years)}`;
  const unless =
    early_years === undefined ? never : message`${never} unless everything turns out well (then ${after(early_years)})`;
  return message`${unless}${wouldFrom(pack.paysFrom_km, yearly.distance_km)}`;
}

function wouldFrom(from_km: number | undefined, distance_km: number): Message {
  if (from_km === undefined) return message`; driving more does not change that, as driving itself costs no less.`;
  if (from_km > MOST_km) return message`; it would only at more than ${q("distance", MOST_km)} a year.`;
  // Where the two lie close together, more digits, so that they do not read alike.
  return message`; it would from about ${q("distance", from_km, from_km < 1.1 * distance_km ? 3 : 2)} a year.`;
}

function within(early_years: number, late_years: number): string {
  const [from, to] = [Math.round(early_years), Math.round(late_years)];
  if (to === 0) return "within the first year";
  if (from === to) return `in about ${inYears(to)}`;
  return from === 0 ? `within ${inYears(to)}` : `in ${from} to ${inYears(to)}`;
}

function after(value_years: number): string {
  const years = Math.round(value_years);
  return years === 0 ? "within the first year" : `in about ${inYears(years)}`;
}

function inYears(count: number): string {
  return count === 1 ? "1 year" : `${count} years`;
}

function turned({ low, high }: Span): { low: number; high: number } {
  return { low: -high, high: -low };
}

/** What the figures assume, and what is not in them. */
export function costNotes({ running, against }: CostPlan): readonly Message[] {
  if (!running) return [];
  const { years, discount_frac, fuelDrift, electricityDrift } = running;
  const isFlat = [fuelDrift, electricityDrift].every(
    ({ low_frac, high_frac = low_frac }) => low_frac === 0 && high_frac === 0,
  );
  return [
    message`The band is everything at its low end at once to everything at its high end at once; the line is the middle.`,
    message`Compared with ${against.name}${against.isAsItIs ? ", as no alternative is marked as needed anyway" : ""}.`,
    message`Electricity is what the wall gives for a usual day, with the winter’s energy on none to half of the days (assumed).`,
    isFlat
      ? message`Prices stay as they are today; a drift of prices can be entered.`
      : message`Prices of fuel and electricity drift as entered; servicing and road charges stay.`,
    discount_frac === undefined || discount_frac === 0
      ? message`Later money counts in full; a discount rate can be entered.`
      : message`Later money counts ${q("fraction", discount_frac)} less for each year, paid at the end of each year.`,
    message`Resale value, loans and taxes on income are not counted${years > CELLS_years ? ", nor are new cells, which so many years may want" : ""}.`,
  ];
}
