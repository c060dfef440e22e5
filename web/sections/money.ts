import { messageIn } from "../../shared/quantity/message.ts";
import { moneyBetween } from "../../shared/quantity/money.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { costNotes, costSentences, quoteTable } from "../../sim/index.ts";
import { priceBars } from "../charts/priceBars.ts";
import { costsForm } from "../forms/costs/costsForm.ts";
import { carbonRows, electricityRows, quoteRows, yearRows } from "./parts/costRows.ts";
import { defineSection } from "./parts/section.ts";

/** What does the conversion cost, what does it save, and does it pay back? */
export default defineSection({
  name: "money",
  title: "Money",
  question: "What does the conversion cost, what does it save, and does it pay back?",
  given: costsForm,
  fields: ["costs"],
  inputs: ["costPlan", "packIndex", "units"],
  compute: ({ costPlan, packIndex, units }) => {
    const pack = costPlan?.packs[packIndex] ?? costPlan?.packs[0];
    if (!costPlan || !pack) return undefined;
    const { packs, alternatives, currency, running } = costPlan;
    const inWords = (sentence: Parameters<typeof messageIn>[0]) => messageIn(sentence, units);
    return {
      chosen: packIndex,
      currency,
      bars: [
        ...packs.flatMap(({ quote }, index) => (quote.total ? [{ name: quote.pack, price: quote.total, index }] : [])),
        ...alternatives.filter(({ isAsItIs }) => !isAsItIs).map(({ name, price }) => ({ name, price })),
      ],
      isPriced: packs.some(({ quote }) => quote.total),
      lines: quoteTable(costPlan),
      pack: pack.quote.pack,
      price: pack.quote.total && moneyBetween(pack.quote.total, currency),
      quote: quoteRows(pack.quote, currency),
      years: (running?.yearly ?? []).map(({ distance_km }, k) => ({
        distance: writeQuantity("distance", distance_km, units),
        rows: yearRows(costPlan, k),
      })),
      horizon: running?.years ?? 0,
      electricity: electricityRows(pack, currency, units),
      carbon: carbonRows(costPlan, pack, units),
      words: costSentences(costPlan, pack).map(inWords),
      notes: costNotes(costPlan).map(inWords),
      missing: packs.flatMap(({ missing }) => missing.map(inWords)),
    };
  },
  plot: (result, drawing) => {
    if (!result) return [];
    const { chosen, bars, isPriced, lines, currency, pack, quote, years, horizon, electricity, carbon, notes } = result;
    return [
      ...(isPriced
        ? [
            {
              caption: "What does each pack cost, beside the alternatives? Its data are every line of the quotes",
              chart: priceBars(bars, lines, currency, { ...drawing, chosen }),
            },
          ]
        : []),
      {
        caption: `The quote with ${pack}`,
        columns: [{ title: "What" }, { title: "Parts" }, { title: "Hours" }, { title: "Work" }, { title: "Together" }],
        rows: quote,
      },
      ...years.map(({ distance, rows }, k) => ({
        caption: `Running and paying back at ${distance} a year`,
        columns: [
          { title: "Way" },
          { title: "Running, first year" },
          { title: "Saves, first year" },
          { title: `All spent in ${horizon} years` },
          { title: "Pays back (years)" },
        ],
        rows,
        ...(k === years.length - 1 && { note: notes.join(" ") }),
      })),
      ...(electricity.length > 0
        ? [
            {
              caption: `Electricity with ${pack}, from the wall`,
              columns: [{ title: "Place" }, { title: "From the wall" }, { title: "Costs" }],
              rows: electricity,
            },
          ]
        : []),
      ...(carbon.length > 0
        ? [
            {
              caption: "Carbon dioxide of driving",
              columns: [{ title: "Way" }, { title: "Each distance" }, { title: "A year" }],
              rows: carbon,
              note: "Of fuel burnt, 2350 g a litre of petrol and 2690 g of diesel (blends are lower), and of electricity at the grid’s figure as entered. Making fuel, car and cells is not in it.",
            },
          ]
        : []),
    ];
  },
  sentence: (result) => result?.words.join(" ") ?? "Not priced yet.",
  summary: (result) =>
    result
      ? result.price === undefined
        ? `${result.pack}: not all priced`
        : `${result.pack} ${result.price}`
      : "not priced yet",
  attention: (result) => [...new Set(result?.missing ?? [])],
});
