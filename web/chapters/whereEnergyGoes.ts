import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { energyLedger, fromPack_Wh, type LedgerEntry, ledgerNames } from "../charts/energyLedger.ts";
import { defineChapter } from "./parts/chapter.ts";

/** What does the energy of the pack go into? */
export default defineChapter({
  name: "whereEnergyGoes",
  title: "Where the energy goes",
  working: "energyPerKm",
  inputs: ["runs", "packIndex", "units"],
  compute: ({ runs, packIndex, units }) => {
    const run = runs.candidates[packIndex] ?? runs.candidates[0];
    const isDriven = run !== undefined && run.distance_km > 0 && fromPack_Wh(run.ledger_Wh) > 0;
    const parts = isDriven
      ? (Object.keys(ledgerNames) as LedgerEntry[])
          .map((entry) => ({ name: ledgerNames[entry], frac: run.ledger_Wh[entry] / fromPack_Wh(run.ledger_Wh) }))
          .toSorted((a, b) => b.frac - a.frac)
      : [];
    return {
      run: isDriven ? run : undefined,
      name: run?.name ?? "",
      use: isDriven ? writeQuantity("energyUse", run.battery_Whpkm, units) : "",
      parts,
    };
  },
  sentence: ({ run, name, use, parts }) => {
    const [first, second] = parts;
    if (!run || !first || !second) return `With ${name} the car does not get along this road, so no energy is shown.`;
    const both = Math.round(100 * (first.frac + second.frac));
    return `With ${name} the car takes ${use} from its pack. The two largest parts, ${first.name.toLowerCase()} and ${second.name.toLowerCase()}, take ${both} % of it.`;
  },
  plot: ({ run, name }, drawing) =>
    run && {
      caption: `Where does the energy go that leaves the pack? Its parts over a distance, with ${name}`,
      chart: energyLedger([run], drawing),
    },
});
