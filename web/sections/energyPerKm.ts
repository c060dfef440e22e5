import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { WH_PER_KWH } from "../../shared/units.ts";
import { energyLedger, type LedgerEntry, ledgerNames } from "../charts/energyLedger.ts";
import { findingsOf } from "./parts/findingsOf.ts";
import { defineSection } from "./parts/section.ts";

/** How much energy does the car take with each pack, and where does it go? */
export default defineSection({
  name: "energyPerKm",
  title: "Energy",
  question: "How much energy does the car take on this road, and where does it go?",
  explains: ["battery_Whpkm", "wheelPositive_Whpkm", "wall_Whpkm", "regen_Wh"],
  inputs: ["runs", "packIndex", "units"],
  compute: ({ runs, packIndex, units }) => {
    const format = (use_Whpkm: number) => writeQuantity("energyUse", use_Whpkm, units);
    const driven = runs.candidates.filter(({ distance_km }) => distance_km > 0);
    const byUse = driven.toSorted((a, b) => a.battery_Whpkm - b.battery_Whpkm);
    const chosen = runs.candidates[packIndex];
    const spender = chosen && chosen.distance_km > 0 ? chosen : byUse[0];
    const entries = spender ? Object.entries(ledgerNames) : [];
    const largest = entries
      .map(([key, words]) => ({ words, energy_Wh: spender.ledger_Wh[key as LedgerEntry] }))
      .toSorted((a, b) => b.energy_Wh - a.energy_Wh)
      .slice(0, 3)
      .map(({ words, energy_Wh }) => `${words} ${format(energy_Wh / spender.distance_km)}`);
    return {
      candidates: runs.candidates,
      chosen: packIndex,
      isComparable: runs.isComparable,
      flat: findingsOf(runs.candidates, ["flatEfficiency"], units),
      spender: spender?.name ?? "",
      least: byUse[0] && { name: byUse[0].name, use: format(byUse[0].battery_Whpkm) },
      most:
        byUse.length > 1
          ? { name: byUse.at(-1)?.name ?? "", use: format(byUse.at(-1)?.battery_Whpkm ?? 0) }
          : undefined,
      largest,
      overDistance: driven.map((run) => [
        run.name,
        format(run.wheelPositive_Whpkm),
        format(run.battery_Whpkm),
        format(run.ledger_Wh.packHeat / run.distance_km),
        format(run.wall_Whpkm),
      ]),
      ofDrive: driven.map((run) => [
        run.name,
        writeQuantity("distance", run.distance_km, units),
        ...[run.battery_Whpkm * run.distance_km, run.regen_Wh, run.frictionBrake_Wh].map((energy_Wh) =>
          writeQuantity("energy", energy_Wh / WH_PER_KWH, units),
        ),
      ]),
    };
  },
  plot: ({ candidates, chosen, overDistance, ofDrive }, drawing) => [
    {
      caption:
        "Where does the energy go that leaves the pack? The chosen pack in full, the others by how much they differ",
      chart: energyLedger(candidates, { ...drawing, chosen }),
    },
    {
      caption: "Energy over distance, average of the drive",
      columns: columns("Pack", "At the wheels", "From the pack", "Warms the pack itself", "From the socket"),
      rows: overDistance,
      note: "Energy is counted at the pack's terminals everywhere on this page; what warms the pack is lost before them.",
    },
    {
      caption: "Energy of one whole drive of the road",
      columns: columns("Pack", "Driven", "From the pack", "Recovered by braking", "Lost in the wheel brakes"),
      rows: ofDrive,
      note: "From the pack: net of regenerative braking.",
    },
  ],
  sentence: ({ spender, least, most, largest }) => {
    if (!least) return "No pack covers any distance on this road.";
    const spread = most ? `; ${most.name} takes the most, ${most.use}` : "";
    return `${least.name} takes the least, ${least.use}${spread}. With ${spender} most of it goes into ${largest.join(", ")}.`;
  },
  summary: ({ least, most }) =>
    least
      ? `${least.use} with ${least.name}${most ? ` to ${most.use} with ${most.name}` : ""}`
      : "no pack covers any distance",
  attention: ({ isComparable, flat }) =>
    isComparable
      ? flat
      : ["The packs do not cover the same distance, so their figures over distance are of different drives.", ...flat],
});

function columns(...titles: readonly string[]) {
  return titles.map((title) => ({ title }));
}
