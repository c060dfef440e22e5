import type { CostPlan } from "./costPlan.ts";
import type { Quote } from "./quote.ts";
import type { Span } from "./span.ts";

type Row = readonly (string | number)[];

/** Every line of every quote, for a spreadsheet: amounts to hundredths, low and high apart. A quote that is not whole has no total. */
export function quoteTable({ currency, packs }: Pick<CostPlan, "currency" | "packs">) {
  const columns = [
    { name: "pack", label: "Pack" },
    { name: "line", label: "Line" },
    { name: "partsLow_money", label: "Parts, low" },
    { name: "partsHigh_money", label: "Parts, high" },
    { name: "hoursLow_h", label: "Hours, low (h)" },
    { name: "hoursHigh_h", label: "Hours, high (h)" },
    { name: "workLow_money", label: "Work, low" },
    { name: "workHigh_money", label: "Work, high" },
    { name: "totalLow_money", label: "Total, low" },
    { name: "totalHigh_money", label: "Total, high" },
    { name: "currency", label: "Currency" },
  ];
  return { columns, rows: packs.flatMap(({ quote }) => rowsOf(quote, currency)) };
}

function rowsOf({ pack, lines, contingency, vat, total }: Quote, currency: string): Row[] {
  const alone = (name: string, amount: Span): Row => [pack, name, "", "", "", "", "", "", ...ends(amount), currency];
  return [
    ...lines.map(({ name, parts, hours, work }): Row => {
      const whole = { low: parts.low + work.low, high: parts.high + work.high };
      return [pack, name, ...ends(parts), ...ends(hours), ...ends(work), ...ends(whole), currency];
    }),
    alone("Contingency", contingency),
    ...(vat.high > 0 ? [alone("VAT", vat)] : []),
    ...(total ? [alone("Total", total)] : []),
  ];
}

function ends({ low, high }: Pick<Span, "low" | "high">): readonly [number, number] {
  return [hundredths(low), hundredths(high)];
}

function hundredths(amount: number): number {
  return Math.round(amount * 100) / 100;
}
