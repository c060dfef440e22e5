import { ruleY } from "@observablehq/plot";
import { ink } from "../look/tokens.ts";
import { channelNamed } from "./channelQuantities.ts";
import type { Chart, Drawing } from "./chart.ts";
import { domain, reach } from "./domain.ts";
import type { DrawnPack } from "./drawnPack.ts";
import { emptyFigure } from "./emptyFigure.ts";
import { METRIC } from "./figureUnits.ts";
import { nameFigure } from "./nameFigure.ts";
import { packLines } from "./packLines.ts";
import { type Along, roadAxis } from "./roadAxis.ts";
import { threeFigures } from "./threeFigures.ts";

export interface BatteryPowerInput {
  readonly packs: readonly DrawnPack[];
  readonly along: Along;
}

/** Power at the battery's terminals along a run: above zero it leaves the pack, below zero it comes back. */
export function batteryPower(input: BatteryPowerInput, drawing: Drawing): Chart {
  const packs = input.packs.filter((pack) => pack.channels.length > 0);
  if (packs.length === 0) return emptyFigure(drawing, "No pack has been driven, so there is no battery power to show.");
  const units = drawing.units ?? METRIC;
  const quantity = channelNamed("batteryPower");
  const columns = packs.map(({ channels }) => quantity.column(channels, units));
  const reaches = packs.map((pack, i) => reach(columns[i] ?? [], pack.channels.length));
  const ends = packs.map(
    ({ channels }) => reach(input.along === "time" ? channels.time_s : channels.distance_m, channels.length)[1],
  );
  const say = (power: number) => `${threeFigures(power)} ${units.power.sign}`;
  const drawn = packLines(drawing, {
    packs,
    axis: roadAxis(input.along, Math.max(...ends), units),
    columns,
    name: `battery_${units.power.suffix}`,
    say,
    yLabel: `Battery power (${units.power.sign})`,
    yDomain: domain(Math.min(...reaches.map(([low]) => low)), Math.max(...reaches.map(([, high]) => high)), true),
    yTicks: 6,
    height_px: 300,
    curve: "step-before",
    marksBelow: [ruleY([0], { stroke: ink })],
  });
  const alt = `Power at the battery along the road: ${packs
    .map((pack, i) => {
      const [low, high] = reaches[i] ?? [0, 0];
      return `${pack.name} gives at most ${say(high)} and takes at most ${say(Math.max(0, -low))}`;
    })
    .join("; ")}.`;
  nameFigure(drawn.svg, alt);
  return { svg: drawn.svg, alt, table: drawn.table, position: drawn.position, read: drawn.read };
}
