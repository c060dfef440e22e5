import { ruleY } from "@observablehq/plot";
import { heed, inkSoft } from "../look/tokens.ts";
import { reach } from "./parts/axes/domain.ts";
import { type Along, roadAxis } from "./parts/axes/roadAxis.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import type { DrawnPack } from "./parts/figure/drawnPack.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { packLines } from "./parts/lines/packLines.ts";

export interface SocAlongRoadInput {
  readonly packs: readonly (DrawnPack & { readonly floor_frac: number; readonly ceiling_frac: number })[];
  readonly along: Along;
}

/** State of charge of every pack along the road, in percent, from full to the floor. */
export function socAlongRoad(input: SocAlongRoadInput, drawing: Drawing): Chart {
  const packs = input.packs.filter((pack) => pack.channels.length > 0);
  if (packs.length === 0)
    return emptyFigure(drawing, "No pack has been driven, so there is no state of charge to show.");
  const last = Math.max(...packs.map(({ channels }) => lastOf(channels, input.along)));
  const axis = roadAxis(input.along, last, drawing.units);
  const columns = packs.map(({ channels }) => channels.soc_frac.subarray(0, channels.length).map((soc) => soc * 100));
  const floors = marked(packs.map((pack) => pack.floor_frac));
  const ceilings = marked(packs.map((pack) => pack.ceiling_frac));
  const drawn = packLines(drawing, {
    packs,
    axis,
    columns,
    name: "soc_percent",
    say: (soc) => `${threeFigures(soc)} %`,
    yLabel: "State of charge (%)",
    yDomain: [0, 100],
    yTicks: [0, 20, 40, 60, 80, 100],
    height_px: 320,
    endWords: (i) => `${threeFigures(columns[i]?.at(-1) ?? 0)} %`,
    marksBelow: [
      ruleY(floors, { stroke: heed, strokeWidth: 1.2 }),
      ruleY(ceilings, { stroke: inkSoft, strokeWidth: 1.2, strokeDasharray: "1 3" }),
    ],
  });
  const word = (value: number, name: string, fill: string, side: number) =>
    writeWords(drawn.svg, {
      x: side > 0 ? drawn.frame.left + 6 : drawn.frame.right - 4,
      y: yPixel(drawn.frame, value) + side,
      anchor: side > 0 ? "start" : "end",
      lines: [`${name} ${threeFigures(value)} %`],
      fill,
      isHaloed: true,
    });
  for (const floor of floors) word(floor, "empty at", heed, 9);
  for (const ceiling of ceilings) word(ceiling, "full at", inkSoft, -9);

  const ends = packs.map((pack, i) => {
    const end = columns[i]?.at(-1) ?? 0;
    const atFloor = end <= pack.floor_frac * 100 + 0.05 ? " and stops empty" : "";
    return `${pack.name} goes from ${threeFigures(columns[i]?.[0] ?? 0)} % to ${threeFigures(end)} %${atFloor} after ${axis.say(lastOf(pack.channels, input.along))}`;
  });
  const alt = `State of charge along the road: ${ends.join("; ")}.`;
  nameFigure(drawn.svg, alt);
  return { svg: drawn.svg, alt, table: drawn.table, position: drawn.position, read: drawn.read };
}

/** Each different value once. */
function marked(fractions: readonly number[]): number[] {
  return [...new Set(fractions.map((value) => Math.round(value * 1000) / 10))];
}

function lastOf(channels: DrawnPack["channels"], along: Along): number {
  return reach(along === "time" ? channels.time_s : channels.distance_m, channels.length)[1];
}
