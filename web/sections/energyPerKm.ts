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
  inputs: ["runs", "units"],
  compute: ({ runs, units }) => {
    const say = (use_Whpkm: number) => writeQuantity("energyUse", use_Whpkm, units);
    const driven = runs.candidates.filter(({ distance_km }) => distance_km > 0);
    const byUse = driven.toSorted((a, b) => a.battery_Whpkm - b.battery_Whpkm);
    const spender = byUse[0];
    const entries = spender ? Object.entries(ledgerNames) : [];
    const largest = entries
      .map(([key, words]) => ({ words, energy_Wh: spender.ledger_Wh[key as LedgerEntry] }))
      .toSorted((a, b) => b.energy_Wh - a.energy_Wh)
      .slice(0, 3)
      .map(({ words, energy_Wh }) => `${words} ${say(energy_Wh / spender.distance_km)}`);
    return {
      candidates: runs.candidates,
      isComparable: runs.isComparable,
      flat: findingsOf(runs.candidates, ["flatEfficiency"], units),
      least: spender && { name: spender.name, use: say(spender.battery_Whpkm) },
      most:
        byUse.length > 1 ? { name: byUse.at(-1)?.name ?? "", use: say(byUse.at(-1)?.battery_Whpkm ?? 0) } : undefined,
      largest,
      overDistance: driven.map((run) => [
        run.name,
        say(run.wheelPositive_Whpkm),
        say(run.battery_Whpkm),
        say(run.ledger_Wh.total / run.distance_km),
        say(run.wall_Whpkm),
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
  plot: ({ candidates, overDistance, ofDrive }, drawing) => [
    {
      caption: "Where every watt-hour goes, over the distance driven, by pack",
      chart: energyLedger(candidates, drawing),
    },
    {
      caption: "Energy over distance, in the mean of the drive",
      columns: columns("Pack", "At the wheels", "At the pack's terminals", "From the cells", "From the socket"),
      rows: overDistance,
      note: "The figure shares out what comes from the cells; between them and the terminals the pack warms itself.",
    },
    {
      caption: "Energy of one whole drive of the road",
      columns: columns("Pack", "Driven", "From the pack", "Given back by braking", "Lost in the wheel brakes"),
      rows: ofDrive,
      note: "From the pack: what is left to pay after what braking gave back.",
    },
  ],
  sentence: ({ least, most, largest }) => {
    if (!least) return "No pack covers any distance on this road.";
    const spread = most ? `; ${most.name} takes the most, ${most.use}` : "";
    return `${least.name} takes the least, ${least.use}${spread}. Most of it goes into ${largest.join(", ")}.`;
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
