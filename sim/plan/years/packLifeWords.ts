import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import { moneyBetween } from "../../../shared/quantity/money.ts";
import { LIFE_years } from "./ageing.ts";
import type { NewModules, PackLife } from "./packLife.ts";

/** Prices of cells are known to two figures at best. */
const DIGITS = 2;

/** How long a pack does the usual day in winter, and where that ends within the years looked at, what can be done then; in sentences. */
export function packLifeWords(life: PackLife, currency = ""): Message[] {
  const lasts = lastsWords(life);
  return isReplaced(life) ? [lasts, replaceWords(life.modules, currency), replaceCaution(life.modules)] : [lasts];
}

/** Whether age ends what the pack does within the years looked at. */
export function isReplaced({ earliest_years }: Pick<PackLife, "earliest_years">): boolean {
  return earliest_years !== undefined && earliest_years > 0;
}

function lastsWords({ name, day_km, earliest_years, latest_years }: PackLife): Message {
  const day = message`the usual day of ${q("distance", day_km)} in winter`;
  if (earliest_years === undefined)
    return message`By the published laws of ageing ${name} still does ${day} after ${LIFE_years} years.`;
  if (earliest_years === 0) return message`${name} does not do ${day} when new, so age does not decide.`;
  const no = message`By the published laws of ageing ${name} no longer does ${day}`;
  if (latest_years === undefined)
    return message`${no} after ${yearCount(earliest_years)} at the earliest; at best it still does after ${LIFE_years} years.`;
  if (latest_years === earliest_years) return message`${no} after ${yearCount(earliest_years)}.`;
  return message`${no} after ${yearCount(earliest_years)} at the earliest, ${yearCount(latest_years)} at the latest.`;
}

function replaceWords({ count, layout = "", mass_kg, cost }: NewModules, currency: string): Message {
  const mass = whole("mass", mass_kg, "nearest");
  const price = cost
    ? message`, ${moneyBetween(cost, currency, DIGITS)} at today’s price`
    : message`, their price not entered`;
  return count === undefined
    ? message`Then its cells can be replaced by others of the same kind and layout: ${mass} with boxes${price}.`
    : message`Then its ${count} modules can be replaced by others of the same kind and layout, ${layout}: ${mass}${price}. Where that module is still made, boxes, cables and settings stay.`;
}

/** What is to be minded where modules are replaced. */
export function replaceCaution({ full_V, strings }: NewModules): Message {
  const others = strings > 1 ? ", nor a new string beside aged ones" : "";
  return message`Never mix aged and new modules in one string${others}, without the maker’s word. The pack is at traction voltage, ${q("voltage", full_V)} when full: licensed practice and local codes decide who may open it.`;
}

function yearCount(years: number): string {
  return years === 1 ? "one year" : `${years} years`;
}
