import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { type Candidate, usualDays } from "../../sim/index.ts";
import { dayByHour } from "../charts/dayByHour.ts";
import { smallMultiples } from "../charts/smallMultiples.ts";
import { defineSection } from "./parts/section.ts";

/** How full is each pack through a usual day, and on the road? */
export default defineSection({
  name: "stateOfCharge",
  title: "State of charge",
  question: "How full is each pack through a usual day, and how far would it go?",
  explains: ["range_km"],
  inputs: ["job", "machine", "runs", "chargePlan", "packIndex", "along", "units"],
  compute: ({ job, machine, runs, chargePlan, packIndex, along, units }) => ({
    along,
    chosen: packIndex,
    days: usualDays(job, chargePlan, runs.trace),
    place: chargePlan.supplies[0].name,
    packs: runs.candidates.map((run, index) => ({
      name: run.name,
      index,
      channels: run.channels,
      floor_frac: machine.packs[index]?.floor_frac ?? 0,
      end_frac: run.soc.end_frac,
      end: writeQuantity("fraction", run.soc.end_frac, units),
      reachedFloor: run.reachedFloor,
      range_km: run.range_km,
      range: `${run.rangeEnd === "time" ? "at least " : ""}${writeQuantity("distance", run.range_km, units)}`,
      noRange: noRange(run),
      current: writeQuantity("current", run.peak.battery_A, units),
      lowest: writeQuantity("voltage", run.peak.min_V, units),
      label_kWh: run.pack.nominal_kWh,
      held_s: run.limited_s.pack + run.limited_s.heat,
    })),
  }),
  plot: ({ packs, days, place, chosen, along }, drawing) => {
    const drawn = packs.flatMap(({ channels, ...pack }) => (channels ? [{ ...pack, channels }] : []));
    const on = { ...drawing, chosen };
    const largest = drawn.toSorted((a, b) => b.label_kWh - a.label_kWh)[0];
    const heldBack = drawn.toSorted((a, b) => b.held_s - a.held_s)[0];
    const charged = drawn.filter((pack) => pack.index === chosen || pack === largest);
    const without = charged.filter((pack) => !days[pack.index]).map(({ name }) => name);
    const lines = charged.flatMap((pack) => {
      const day = days[pack.index];
      return day ? [{ ...pack, day }] : [];
    });
    const powered = drawn.filter((pack) => pack.index === chosen || (pack === heldBack && pack.held_s >= 1));
    return [
      {
        name: "charge",
        caption: `How full is the pack through a usual day? Charged at ${place}: the chosen pack and the largest${
          without.length === 0 ? "" : `; not ${without.join(", ")}, empty before it is home or not charged there`
        }`,
        chart: dayByHour(lines, on),
      },
      {
        name: "power",
        caption:
          "Does the pack give the power that the road asks for? Below the line braking charges it; a bar marks where a limit holds the car back",
        chart: smallMultiples({ packs: powered, channel: "batteryPower", along }, on),
      },
      {
        caption: "At the end of the road, and driving on until empty",
        columns: "Pack,Charge at the end,Range,Most current,Lowest volts".split(",").map((title) => ({ title })),
        rows: packs.map(({ name, end, range, noRange, current, lowest }) => [
          name,
          end,
          noRange ?? range,
          current,
          lowest,
        ]),
        note: "Range is driven out on this road again and again, not divided out of an energy. State of charge is the share of the tested capacity.",
      },
    ];
  },
  sentence: ({ packs }) => {
    const fullest = packs.toSorted((a, b) => b.end_frac - a.end_frac)[0];
    const emptiest = packs.toSorted((a, b) => a.end_frac - b.end_frac)[0];
    const goes = ({ range, noRange }: typeof fullest) =>
      noRange === undefined ? `would go ${range}` : `has no range: ${noRange}`;
    if (packs.length === 1) return `${fullest.name} ends the road at ${fullest.end} and ${goes(fullest)}.`;
    const ends = `After one drive of the road ${emptiest.name} is at ${emptiest.end} and ${fullest.name} at ${fullest.end}`;
    if (emptiest.noRange === undefined && fullest.noRange === undefined)
      return `${ends}; they would go ${emptiest.range} and ${fullest.range}.`;
    return emptiest.noRange === fullest.noRange
      ? `${ends}; neither has a range: ${fullest.noRange}.`
      : `${ends}; ${emptiest.name} ${goes(emptiest)}, ${fullest.name} ${goes(fullest)}.`;
  },
  summary: ({ packs }) => {
    const lowest = packs.toSorted((a, b) => a.end_frac - b.end_frac)[0];
    return `${lowest.name} ends the road at ${lowest.end}`;
  },
  attention: ({ packs }) =>
    packs.filter(({ reachedFloor }) => reachedFloor).map(({ name }) => `${name} is empty before the road ends.`),
});

/** Why a pack has no range on the road, where it has none: nought would read as an empty pack. */
function noRange({ rangeEnd, distance_km, missed_km }: Candidate): string | undefined {
  if (rangeEnd === "endless") return "this road draws nothing from it";
  return rangeEnd === "stuck" && distance_km < missed_km ? "it comes to a stand" : undefined;
}
