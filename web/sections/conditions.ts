import type { Job } from "../../shared/job/job.ts";
import { bare, type Message, message, messageIn, quantity as q, whole } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import {
  agedPack,
  type Candidate,
  type ConditionDrive,
  type PackLife,
  packLifeWords,
  packUse,
} from "../../sim/index.ts";
import { conditionsForm } from "../forms/car/conditionsForm.ts";
import { defineSection } from "./parts/section.ts";

/** What do winter, age and other weather make of each pack? */
export default defineSection({
  name: "conditions",
  title: "Conditions",
  question: "What do winter, a heated cabin and ten years make of each pack's range?",
  given: conditionsForm,
  fields: ["conditions", "allowance"],
  inputs: ["job", "judged", "runs", "packLife", "packIndex", "units"],
  compute: ({ job, judged, runs, packLife, packIndex, units }) => {
    const drives = judged.map(({ conditions }) => drivesOf(conditions));
    const chosen = judged[packIndex] ?? judged[0];
    const today = { name: "new, today", battery_Whpkm: chosen.battery_Whpkm, range_km: chosen.range_km };
    const winter = chosen.conditions?.winter;
    const old = chosen.conditions?.tenYearsWinter;
    const km = (range_km: number) => writeQuantity("distance", range_km, units);
    return {
      pack: chosen.name,
      names: drives[0].map(({ name }) => name),
      byPack: judged.map(({ name, range_km }, i) => [
        name,
        km(range_km),
        ...drives[i].map((drive) => rangeWords(drive, units)),
      ]),
      byCondition: [today, ...drivesOf(chosen.conditions)].map((each) => [
        each.name,
        writeQuantity("energyUse", each.battery_Whpkm, units),
        today.battery_Whpkm > 0 ? `× ${(each.battery_Whpkm / today.battery_Whpkm).toFixed(2)}` : "–",
        "heater_kW" in each && each.heater_kW > 0 ? writeQuantity("electricPower", each.heater_kW, units, 2) : "–",
        "fuel_l100km" in each && each.fuel_l100km > 0
          ? writeQuantity("volume", (each.fuel_l100km * each.range_km) / 100, units, 2)
          : "–",
        km(each.range_km),
      ]),
      sentence: messageIn(winterWords(job, chosen), units),
      short:
        winter && old
          ? `${chosen.name}: winter ${rangeWords(winter, units)}, at ten years ${rangeWords(old, units)}`
          : `winter a factor of ${job.allowance.winter_ratio}`,
      ageing: ageingRows(job, Math.min(packIndex, job.packs.length - 1), chosen.range_km, runs.trace.mean_kmh).map(
        (row, i) => [...row, ...winterAfter(packLife, i, units)],
      ),
      hasLife: packLife !== undefined,
      life: packLife ? packLifeWords(packLife, job.currency).map((each) => messageIn(each, units)) : [],
      isNickel: job.module.chemistry === "nickel",
      behind: drives.flatMap((each, i) =>
        each
          .filter(({ isStuck, missed_frac }) => isStuck || missed_frac > 0.02)
          .map(({ name }) => `${judged[i].name} does not keep up with the road in the condition “${name}”.`),
      ),
    };
  },
  plot: ({ pack, names, byPack, byCondition, ageing, hasLife, isNickel }) => [
    ...(names.length === 0
      ? []
      : [
          {
            caption: "How far does each pack go on one charge in each condition?",
            columns: [{ title: "Pack" }, { title: "new, today" }, ...names.map((title) => ({ title }))],
            rows: byPack,
          },
          {
            caption: `${pack} in each condition, over this road once`,
            columns: [
              { title: "Condition" },
              { title: "From the pack" },
              { title: "Times today's" },
              { title: "Heater" },
              { title: "Heater's fuel, on one charge" },
              { title: "Range" },
            ],
            rows: byCondition,
            note: "Heater: what its thermostat lets through on average; one that is on by the hour is in the energy from the pack.",
          },
        ]),
    ...(ageing.length === 0
      ? []
      : [
          {
            caption: `What published laws of ageing leave of ${pack}, on the days of its year`,
            columns: [
              { title: "After", isText: true },
              { title: "Capacity left" },
              { title: "Resistance" },
              ...(hasLife ? [{ title: "Range in winter" }] : []),
            ],
            rows: ageing,
            note: `By two laws each, from single cells in a laboratory: ${isNickel ? "Schmalstieg and others and, as a cross-check, Xu and others" : "Naumann and others, and Wang and others"}. Used modules, heat under a floor and standing full age faster: what is entered above as capacity at ten years is what counts.`,
          },
        ]),
  ],
  sentence: ({ sentence, life }) => [sentence, ...life].join(" "),
  inShort: ({ sentence }) => sentence,
  summary: ({ short }) => short,
  attention: ({ behind }) => behind,
  caution:
    "A heater on the traction voltage needs its own fuse, contactor and thermal cut-out; the law in most places wants a demister. One that burns fuel needs its exhaust outside and its fuel line away from hot parts.",
});

/** What winter makes of the chosen pack's range, and ten years of that. */
function winterWords({ allowance, conditions }: Pick<Job, "allowance" | "conditions">, chosen: Candidate): Message {
  const { winter, tenYearsWinter: old } = chosen.conditions ?? {};
  if (!winter || !old || !conditions?.winter)
    return message`Winter is taken as ${allowance.winter_ratio} times today's energy, on every road and with every pack. With a driven winter it follows from temperature and heater.`;
  if (chosen.range_km <= 0 || winter.range_km <= 0)
    return message`${chosen.name} has no range on this road ${chosen.range_km > 0 ? "in winter" : "today"}, so that nothing can be said of what winter makes of it.`;
  return message`At ${q("temperature", conditions.winter.temperature_degC)}, ${chosen.name} goes ${q("distance", winter.range_km)} in place of ${q("distance", chosen.range_km)}: winter counts ${(chosen.range_km / winter.range_km).toFixed(2)} times. At ten years ${q("distance", old.range_km)} are left of it.`;
}

function drivesOf(
  conditions:
    | { winter?: ConditionDrive; tenYearsWinter?: ConditionDrive; others: readonly ConditionDrive[] }
    | undefined,
): ConditionDrive[] {
  if (!conditions) return [];
  const { winter, tenYearsWinter, others } = conditions;
  return [...(winter ? [winter] : []), ...(tenYearsWinter ? [tenYearsWinter] : []), ...others];
}

function ageingRows(job: Job, packIndex: number, range_km: number, mean_kmh: number): string[][] {
  if (range_km <= 0 || mean_kmh <= 0) return [];
  const percent = (share: number) => Math.round(100 * share);
  return agedPack(job, job.packs[packIndex], packUse(job, job.packs[packIndex], range_km, mean_kmh)).map(
    ({ years, capacity_frac: { low, high }, resistance_ratio }) => [
      years === 0 ? "new" : `${years} years`,
      percent(low) === percent(high) ? `${percent(low)} %` : `${percent(low)} to ${percent(high)} %`,
      resistance_ratio === undefined ? "–" : `× ${resistance_ratio.toFixed(2)}`,
    ],
  );
}

/** A cell more for each of the years: the range in winter that the laws leave, from the least to the most. */
function winterAfter(life: PackLife | undefined, index: number, units: UnitHabit): string[] {
  const at = life?.winter[index];
  if (!at) return [];
  const [low, high] = [whole("distance", at.low_km), whole("distance", at.high_km)];
  const [least, most] = [messageIn(message`${low}`, units), messageIn(message`${high}`, units)];
  return [least === most ? least : messageIn(message`${bare(low)} to ${high}`, units)];
}

function rangeWords({ range_km, rangeEnd, isStuck }: ConditionDrive, units: UnitHabit): string {
  if (isStuck) return "comes to a stand";
  if (rangeEnd === "endless") return "draws nothing";
  return `${rangeEnd === "time" ? "over " : ""}${writeQuantity("distance", range_km, units)}`;
}
