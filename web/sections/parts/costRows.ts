import { moneyBetween } from "../../../shared/quantity/money.ts";
import { inUnits, type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { WH_PER_KWH } from "../../../shared/units.ts";
import type { CostPlan, PackCosts, Quote, Span } from "../../../sim/index.ts";

const NONE = "–";
const G_PER_KG = 1000;

/** The lines of one quote, what is added to them, and what it comes to. */
export function quoteRows({ lines, contingency, vat, total }: Quote, currency: string): string[][] {
  const money = (amount: Span) => (amount.high === 0 ? NONE : moneyBetween(amount, currency));
  const alone = (name: string, amount: Span) => [name, "", "", "", moneyBetween(amount, currency)];
  return [
    ...lines.map(({ name, parts, hours, work }) => {
      const both = { value: 0, low: parts.low + work.low, high: parts.high + work.high };
      return [name, money(parts), hours.high === 0 ? NONE : hoursWords(hours), money(work), money(both)];
    }),
    ...(contingency.high > 0 ? [alone("Contingency", contingency)] : []),
    ...(vat.high > 0 ? [alone("VAT", vat)] : []),
    ...(total ? [alone("Price", total)] : []),
  ];
}

function hoursWords({ low, high }: Span): string {
  return `${low === high ? low : `${low} to ${high}`} h`;
}

/** What every way costs at one of the yearly distances: the packs, then what the client may do instead. */
export function yearRows({ packs, alternatives, currency, running }: CostPlan, k: number): string[][] {
  const years = running?.years ?? 0;
  const money = (amount: Span | undefined, digits?: number) => (amount ? moneyBetween(amount, currency, digits) : NONE);
  return [
    ...packs.map(({ quote, yearly }) => {
      const at = yearly[k];
      return [quote.pack, money(at?.running), money(at?.saves, 2), money(at?.spent[years]), paybackWords(at, years)];
    }),
    ...alternatives.map(({ name, running: first, spent }) => [name, money(first[k]), "", money(spent[k]?.[years]), ""]),
  ];
}

function paybackWords(at: PackCosts["yearly"][number] | undefined, years: number): string {
  if (!at) return NONE;
  const { early_years, value_years, late_years } = at.payback;
  if (early_years === undefined) return `not in ${years}`;
  const late = late_years === undefined ? `over ${years}` : late_years.toFixed(0);
  const middle = value_years === undefined ? "" : `, middle ${value_years.toFixed(0)}`;
  return `${early_years.toFixed(0)} to ${late}${middle}`;
}

/** Energy from the wall and its cost over a distance, at each place where the pack is charged. */
export function electricityRows({ electricity }: PackCosts, currency: string, units: UnitHabit): string[][] {
  const { unit } = inUnits("distance", 1, units);
  const each = `100 ${unit}`;
  const perHundred = (perKm: number) => perKm * (100 / inUnits("distance", 1, units).number);
  return electricity.map(({ supply, wall_kWhpkm, costPerKm }) => [
    supply,
    `${writeQuantity("energyUse", wall_kWhpkm.low * WH_PER_KWH, units)} to ${writeQuantity("energyUse", wall_kWhpkm.high * WH_PER_KWH, units)}`,
    costPerKm
      ? `${moneyBetween({ low: perHundred(costPerKm.low), high: perHundred(costPerKm.high) }, currency)} for ${each}`
      : NONE,
  ]);
}

/** Carbon dioxide of the fuel now and of the pack's electricity, for each distance and for the first of the yearly ones. */
export function carbonRows({ running, fuelCarbon_gpkm }: CostPlan, pack: PackCosts, units: UnitHabit): string[][] {
  const year_km = running?.yearly[0]?.distance_km;
  if (fuelCarbon_gpkm === undefined || year_km === undefined) return [];
  const mass = (each_gpkm: number) => writeQuantity("mass", (each_gpkm * year_km) / G_PER_KG, units, 2);
  const row = (name: string, { low, high }: { low: number; high: number }) => [
    name,
    low === high
      ? writeQuantity("carbon", low, units)
      : `${writeQuantity("carbon", low, units, 2)} to ${writeQuantity("carbon", high, units, 2)}`,
    `${low === high ? "" : `${mass(low)} to `}${mass(high)}`,
  ];
  return [
    row("Fuel, as it is", { low: fuelCarbon_gpkm, high: fuelCarbon_gpkm }),
    ...(pack.carbon_gpkm ? [row(pack.quote.pack, pack.carbon_gpkm)] : []),
  ];
}
