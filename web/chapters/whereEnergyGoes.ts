import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { energyLedger, type LedgerEntry, ledgerNames } from "../charts/energyLedger.ts";
import { defineChapter } from "./parts/chapter.ts";

/** What does the energy of the pack go into? */
export default defineChapter({
  name: "whereEnergyGoes",
  title: "Where the energy goes",
  working: "energyPerKm",
  inputs: ["runs", "packIndex", "units"],
  compute: ({ runs, packIndex, units }) => {
    const run = runs.candidates[packIndex] ?? runs.candidates[0];
    const isDriven = run !== undefined && run.distance_km > 0 && run.ledger_Wh.total > 0;
    const parts = isDriven
      ? (Object.keys(ledgerNames) as LedgerEntry[])
          .map((entry) => ({ name: ledgerNames[entry], frac: run.ledger_Wh[entry] / run.ledger_Wh.total }))
          .toSorted((a, b) => b.frac - a.frac)
      : [];
    return {
      run: isDriven ? run : undefined,
      name: run?.name ?? "",
      use: isDriven ? writeQuantity("energyUse", run.ledger_Wh.total / run.distance_km, units, 2) : "",
      parts,
    };
  },
  sentence: ({ run, name, use, parts }) => {
    const [first, second] = parts;
    if (!run || !first || !second) return `With ${name} the car does not get along this road, so no energy is shown.`;
    const both = Math.round(100 * (first.frac + second.frac));
    return `With ${name} the car takes ${use} out of its cells. The two largest parts, ${first.name.toLowerCase()} and ${second.name.toLowerCase()}, take ${both} % of it.`;
  },
  plot: ({ run, name }, drawing) =>
    run && { caption: `Out of the cells for each distance driven, with ${name}`, chart: energyLedger([run], drawing) },
});
