import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { smallMultiples } from "../charts/smallMultiples.ts";
import { socAlongRoad } from "../charts/socAlongRoad.ts";
import { defineSection } from "./parts/section.ts";

/** How full is each pack along the road? */
export default defineSection({
  name: "stateOfCharge",
  title: "State of charge",
  question: "How full is each pack along the road, and how far would it go?",
  explains: ["range_km"],
  inputs: ["machine", "runs", "along", "units"],
  compute: ({ machine, runs, along, units }) => ({
    along,
    packs: runs.candidates.map((run, index) => ({
      name: run.name,
      index,
      channels: run.channels,
      floor_frac: machine.packs[index]?.floor_frac ?? 0,
      ceiling_frac: machine.packs[index]?.ceiling_frac ?? 1,
      end_frac: run.soc.end_frac,
      end: writeQuantity("fraction", run.soc.end_frac, units),
      reachedFloor: run.reachedFloor,
      range_km: run.range_km,
      range: `${run.rangeEnd === "time" ? "at least " : ""}${writeQuantity("distance", run.range_km, units)}`,
      current: writeQuantity("current", run.peak.battery_A, units),
      lowest: writeQuantity("voltage", run.peak.min_V, units),
    })),
  }),
  plot: ({ packs, along }, drawing) => {
    const drawn = packs.flatMap(({ channels, ...pack }) => (channels ? [{ ...pack, channels }] : []));
    return [
      {
        name: "charge",
        caption: "State of charge along the road, all packs",
        chart: socAlongRoad({ packs: drawn, along }, drawing),
      },
      {
        name: "power",
        caption: "Power at the pack along the road, one strip a pack; below the line the pack is charged by braking",
        chart: smallMultiples({ packs: drawn, channel: "batteryPower", along }, drawing),
      },
      {
        caption: "At the end of the road, and driving on until the floor",
        columns: "Pack,Charge at the end,Range,Most current,Lowest volts".split(",").map((title) => ({ title })),
        rows: packs.map(({ name, end, range, current, lowest }) => [name, end, range, current, lowest]),
        note: "Range is driven out on this road again and again, not divided out of an energy. State of charge is the share of the tested capacity.",
      },
    ];
  },
  sentence: ({ packs }) => {
    const fullest = packs.toSorted((a, b) => b.end_frac - a.end_frac)[0];
    const emptiest = packs.toSorted((a, b) => a.end_frac - b.end_frac)[0];
    if (packs.length === 1)
      return `${fullest.name} ends the road at ${fullest.end} and would go ${fullest.range} on it.`;
    return `After one drive of the road ${emptiest.name} is at ${emptiest.end} and ${fullest.name} at ${fullest.end}; they would go ${emptiest.range} and ${fullest.range}.`;
  },
  summary: ({ packs }) => {
    const lowest = packs.toSorted((a, b) => a.end_frac - b.end_frac)[0];
    return `${lowest.name} ends the road at ${lowest.end}`;
  },
  attention: ({ packs }) =>
    packs
      .filter(({ reachedFloor }) => reachedFloor)
      .map(({ name }) => `${name} is down to its floor before the road ends.`),
});
