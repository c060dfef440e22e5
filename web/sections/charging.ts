import { html } from "lit-html";
import { message, messageIn, whole } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { chargerForm } from "../forms/pack/chargerForm.ts";
import { suppliesForm } from "../forms/pack/suppliesForm.ts";
import { costWords, hoursCell, paceWords } from "./parts/chargeWords.ts";
import { defineSection } from "./parts/section.ts";

/** How long does a charge take where the car is charged, and what does it cost? */
export default defineSection({
  name: "charging",
  title: "Charging",
  question: "How long does a charge take where the car is charged, and what does it cost?",
  given: (form) => html`${chargerForm(form)}${suppliesForm(form)}`,
  fields: ["charger", "supplies", "currency"],
  inputs: ["job", "chargePlan", "packIndex", "units"],
  compute: ({ job, chargePlan, packIndex, units }) => {
    const { rows, supplies, notes, cautions } = chargePlan;
    const inWords = (sentence: (typeof notes)[number]) => messageIn(sentence, units);
    const chosen = rows[packIndex] ?? rows[0];
    return {
      first: supplies[0].name,
      pack: chosen[0].pack,
      wall: supplies.map(({ wall_kW }) => writeQuantity("electricPower", wall_kW, units, 2)),
      pilot: supplies.map(({ pilotDuty_frac }) =>
        pilotDuty_frac === undefined ? "–" : writeQuantity("fraction", pilotDuty_frac, units),
      ),
      chosen,
      chosenPace: paceWords(chosen[0], job),
      atFirst: rows.map(([row]) => row),
      currency: job.currency,
      km: (distance_km: number | undefined) =>
        distance_km === undefined ? "–" : messageIn(message`${whole("distance", distance_km)}`, units),
      stops: rows.flatMap((each) =>
        each.flatMap(({ pack, supply, stop }) => (stop ? [{ pack, supply, words: inWords(stop) }] : [])),
      ),
      notes: notes.map(inWords),
      cautions: cautions.map(inWords),
    };
  },
  plot: ({ first, pack, wall, pilot, chosen, atFirst, currency, km, notes, cautions }) => [
    {
      caption: `Each pack at ${first}`,
      columns: [
        { title: "Pack" },
        { title: "Usual day" },
        { title: "Winter day" },
        { title: "Empty to full" },
        { title: "Of it at full voltage" },
        { title: "A night" },
        { title: "gives" },
        { title: "Full, from the wall" },
        { title: "costs" },
        { title: "Usual day costs" },
      ],
      rows: atFirst.map((row) => [
        row.pack,
        hoursCell(row.usualDay),
        hoursCell(row.winterDay),
        hoursCell(row.emptyToFull),
        row.emptyToFull && row.emptyToFull.taper_h > 0.01 ? `${row.emptyToFull.taper_h.toFixed(1)} h` : "–",
        row.night ? `${row.night.hours_h.toFixed(1)} h` : "–",
        km(row.night?.gives_km),
        row.emptyToFull ? `${row.emptyToFull.wall_kWh.toFixed(1)} kWh` : "–",
        costWords(row.emptyToFull?.cost, currency),
        costWords(row.usualDay?.cost, currency),
      ]),
      note: notes.join(" "),
    },
    {
      caption: `Each place to charge, with ${pack}`,
      columns: [
        { title: "Place" },
        { title: "From the wall" },
        { title: "Control pilot" },
        { title: "Usual day" },
        { title: "Winter day" },
        { title: "Empty to full" },
        { title: "A night gives" },
        { title: "Usual day costs" },
        { title: "Pace set by", isText: true },
      ],
      rows: chosen.map((row, i) => [
        row.supply,
        wall[i],
        pilot[i],
        hoursCell(row.usualDay),
        hoursCell(row.winterDay),
        hoursCell(row.emptyToFull),
        km(row.night?.gives_km),
        costWords(row.usualDay?.cost, currency),
        row.stop ? "not charged" : (row.limit ?? ""),
      ]),
      note: cautions.join(" "),
    },
  ],
  sentence: ({ first, pack, wall, chosen: [row], chosenPace }) => {
    if (row.stop) return `${pack} is not charged at ${first}: see what is to be changed above.`;
    const day =
      row.usualDay && row.winterDay
        ? `the usual day is back in ${hoursCell(row.usualDay)}, in winter in ${hoursCell(row.winterDay)}; `
        : "";
    return `At ${first}, with ${wall[0]} from the wall, ${day}${pack} takes ${hoursCell(row.emptyToFull)} from empty to full. ${chosenPace}`;
  },
  summary: ({ first, pack, wall, chosen: [row] }) => {
    if (row.stop) return `${pack} is not charged at ${first}`;
    const day = row.usualDay ? `usual day ${hoursCell(row.usualDay)}, ` : "";
    return `${pack} at ${first} (${wall[0]}): ${day}empty to full ${hoursCell(row.emptyToFull)}`;
  },
  attention: ({ stops }) => {
    const all = stops.map(({ pack, words }) => `${pack}: ${words}`);
    return [...new Set(all)];
  },
  caution:
    "Mains kills, and a household socket is not made for hours at full current. A charger’s circuit, its protection and its earth are work for a licensed electrician under the local code. Never charge a new build unattended.",
});
