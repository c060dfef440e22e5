import { ruleX, ruleY } from "@observablehq/plot";
import type { DayByHour } from "../../sim/index.ts";
import { heed, inkSoft } from "../look/tokens.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { positionAlong, within, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

/** One pack through a usual day, and the charge below which it is empty. */
export interface DayLine {
  readonly name: string;
  readonly index: number;
  readonly day: DayByHour;
  readonly floor_frac: number;
}

const DAY_h = 24;
const PLOT_PX = 250;
const TOP_PX = 34;
/** Of the numbers below: their width with some room. */
const TICK_PX = 70;

/** State of charge through a usual day by the clock, from leaving to leaving. */
export function dayByHour(packs: readonly DayLine[], drawing: Drawing): Chart {
  if (packs.length === 0)
    return emptyFigure(
      drawing,
      "No pack gets home from the usual day and is charged there, so there is no day to show.",
    );
  const from_h = Math.min(...packs.map(({ day }) => day.leaves_h));
  const x = [from_h, from_h + DAY_h] as const;
  const every_h = (drawing.width_px - 150) / TICK_PX >= 9 ? 3 : 6;
  const first_h = Math.ceil(from_h / every_h) * every_h;
  const ticks = Array.from({ length: Math.floor((x[1] - first_h) / every_h) + 1 }, (_, i) => first_h + i * every_h);
  const floors = [...new Set(packs.map(({ floor_frac }) => 100 * floor_frac))];
  const { svg, frame } = namedLines(drawing, {
    lines: packs.map(({ name, index, day }) => ({
      name,
      style: packStyle(index, drawing.chosen),
      points: day.hour_h.map((hour, i) => ({ x: hour, y: 100 * day.soc_frac[i] })),
    })),
    xLabel: "Time of day",
    xTicks: { ticks, tickFormat: clockOf },
    yLabel: "State of charge (%)",
    x,
    y: [0, 100],
    top_px: TOP_PX,
    plotHeight_px: PLOT_PX,
    isDotted: false,
    marksBelow: [
      ruleY(floors, { stroke: heed, strokeWidth: 1.2 }),
      ruleX(
        [DAY_h].filter((midnight) => midnight > x[0] && midnight < x[1]),
        { stroke: inkSoft, strokeDasharray: "1 3" },
      ),
    ],
  });
  for (const floor of floors)
    writeWords(svg, {
      x: frame.left + 6,
      y: yPixel(frame, floor) + 9,
      lines: [`empty at ${Math.round(floor)} %`],
      fill: heed,
      isHaloed: true,
    });
  const alt = `State of charge by the time of day. ${packs.map(wordsOf).join("; ")}.`;
  nameFigure(svg, alt);
  const position = { ...positionAlong(frame, "hour_h", 1, 96), from_px: TOP_PX };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        { name: "time", label: "Time of day" },
        { name: "soc_percent", label: "State of charge (%)" },
      ],
      rows: packs.flatMap(({ name, day }) =>
        day.hour_h.map((hour, i) => [name, clockOf(hour), Math.round(100 * day.soc_frac[i])]),
      ),
    },
    position,
    read(at) {
      const hour_h = within(position, at);
      const values = packs.map(({ name, day }) => ({
        label: name,
        text: `${Math.round(100 * lineAt(day.hour_h, day.soc_frac, day.hour_h.length, hour_h))} %`,
      }));
      return { where: `${clockOf(hour_h)}${hour_h < DAY_h ? "" : " next day"}`, values };
    },
  };
}

/** Hours since midnight as a clock shows them, to the minute. */
export function clockOf(hour_h: number): string {
  const minutes = Math.round(hour_h * 60) % (DAY_h * 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

function wordsOf({ name, day }: DayLine): string {
  const { leaves_h, home_h, home_frac, chargesFrom_h, isFull, soc_frac } = day;
  const home = Math.round(100 * home_frac);
  const plugged =
    chargesFrom_h === undefined ? "is not charged before it leaves again" : `charges from ${clockOf(chargesFrom_h)}`;
  const last = Math.round(100 * soc_frac[soc_frac.length - 1]);
  const end = isFull ? "is full by the morning" : `has ${last} % when it leaves again`;
  return `${name} leaves at ${clockOf(leaves_h)}, is home at ${clockOf(home_h)} with ${home} %, ${plugged} and ${end}`;
}
