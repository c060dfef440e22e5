import { ruleX, ruleY } from "@observablehq/plot";
import { weekdayNames } from "../../shared/job/weekdays.ts";
import { dayAndTime, momentOf, WEEK_h } from "../../shared/job/weekTimes.ts";
import { heed, inkSoft } from "../look/tokens.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { positionAlong, within, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { type PackStyle, packStyle } from "./parts/figure/packStyle.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

/** One pack through a week in one condition; hours count from Monday 0:00. */
export interface WeekLine {
  readonly condition: string;
  readonly floor_frac: number;
  readonly lowest: { readonly soc_frac: number; readonly at_h: number };
  readonly course: { readonly at_h: readonly number[]; readonly soc_frac: readonly number[] };
}

const DAY_h = 24;
const TOP_PX = 34;
const PLOT_PX = 130;
/** Middle of the first of the lines above the figure, below what the scale is called. */
const FIRST_PX = 28;
/** Of a lowest point's words, each above the figure. */
const LINE_PX = 18;
/** Below it the names of days have two letters. */
const NARROW_PX = 480;
/** A point this near to the line through its neighbours is left out of what is drawn, as a share of the pack. */
const STRAIGHT_frac = 0.002;

/** State of charge of one pack through a week, a line for each condition, the lowest point of each ringed and said beside its name. */
export function weekCharge(pack: string, weeks: readonly WeekLine[], drawing: Drawing): Chart {
  const lines = weeks.map((week) => ({ ...week, course: thinned(week) }));
  const from_h = Math.min(...lines.map(({ course }) => course.at_h[0] ?? 0));
  const x = [from_h, from_h + WEEK_h] as const;
  const floors = [...new Set(weeks.map(({ floor_frac }) => Math.round(100 * floor_frac)))].sort((a, b) => a - b);
  const days = Array.from({ length: 9 }, (_, day) => day * DAY_h);
  const top_px = TOP_PX + LINE_PX * weeks.length;
  const inFrame = (hour: number) => hour > x[0] && hour < x[1];
  const { svg, frame } = namedLines(drawing, {
    lines: lines.map(({ condition, lowest, course }, i) => ({
      name: condition,
      style: styleOf(i),
      points: course.at_h.map((hour, k) => ({
        x: hour,
        y: 100 * (course.soc_frac[k] ?? 0),
        isHollow: hour === lowest.at_h && course.soc_frac[k] === lowest.soc_frac,
      })),
    })),
    xLabel: "Day of the week, its name at noon",
    xTicks: {
      ticks: days.map((midnight_h) => midnight_h + DAY_h / 2).filter(inFrame),
      tickFormat: (hour) => weekdayNames[momentOf(hour).weekday].slice(0, drawing.width_px < NARROW_PX ? 2 : 3),
    },
    yLabel: "State of charge (%)",
    x,
    y: [0, 100],
    top_px,
    plotHeight_px: PLOT_PX,
    isDotted: false,
    marksBelow: [
      ruleY(floors, { stroke: heed, strokeWidth: 1.2 }),
      ruleX(days.filter(inFrame), { stroke: inkSoft, strokeDasharray: "1 3" }),
    ],
  });
  weeks.forEach(({ condition, lowest }, i) => {
    const words = `Lowest, ${condition}: ${percent(lowest.soc_frac)} % on ${shortMoment(lowest.at_h)}`;
    writeWords(svg, { x: 4, y: FIRST_PX + LINE_PX * i, lines: [words], fill: styleOf(i).colour });
  });
  writeWords(svg, {
    x: frame.right - 6,
    y: yPixel(frame, Math.min(...floors)) + 9,
    lines: [`empty at ${floors.join(" or ")} %`],
    fill: heed,
    anchor: "end",
    isHaloed: true,
  });
  const alt = `State of charge of ${pack} through the week. ${weeks.map(wordsOf).join("; ")}.`;
  nameFigure(svg, alt);
  const position = { ...positionAlong(frame, "week_h", 1, WEEK_h), from_px: top_px };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "condition", label: "Condition" },
        { name: "moment", label: "Day and time" },
        { name: "since_monday_h", label: "Since Monday 0:00 (h)" },
        { name: "soc_percent", label: "State of charge (%)" },
      ],
      rows: lines.flatMap(({ condition, course }) =>
        course.at_h.map((hour, k) => [
          condition,
          dayAndTime(hour),
          Math.round(100 * hour) / 100,
          percent(course.soc_frac[k] ?? 0),
        ]),
      ),
    },
    position,
    read(at) {
      const hour = within(position, at);
      const values = lines.map(({ condition, course }) => ({
        label: condition,
        text: `${percent(lineAt(course.at_h, course.soc_frac, course.at_h.length, hour))} %`,
      }));
      return { where: dayAndTime(hour), values };
    },
  };
}

/** The course without points that lie on the line through their neighbours; the lowest one stays. */
function thinned({ course: { at_h, soc_frac }, lowest }: WeekLine): WeekLine["course"] {
  const kept: number[] = [];
  at_h.forEach((hour, i) => {
    const before = kept.at(-1);
    const next = i + 1;
    const isEnd = before === undefined || next === at_h.length;
    if (isEnd || (hour === lowest.at_h && soc_frac[i] === lowest.soc_frac)) {
      kept.push(i);
      return;
    }
    const [from_h, to_h] = [at_h[before] ?? 0, at_h[next] ?? 0];
    const [from, to] = [soc_frac[before] ?? 0, soc_frac[next] ?? 0];
    const share = to_h > from_h ? (hour - from_h) / (to_h - from_h) : 0;
    if (Math.abs((soc_frac[i] ?? 0) - from - share * (to - from)) > STRAIGHT_frac) kept.push(i);
  });
  return { at_h: kept.map((i) => at_h[i] ?? 0), soc_frac: kept.map((i) => soc_frac[i] ?? 0) };
}

/** The first condition in the highlight and whole, others grey and dashed. */
function styleOf(index: number): PackStyle {
  return index === 0 ? packStyle(0, 0) : packStyle(index);
}

function percent(frac: number): number {
  return Math.round(100 * frac);
}

function shortMoment(at_h: number): string {
  const { weekday, time } = momentOf(at_h);
  return `${weekdayNames[weekday].slice(0, 3)}\u00a0${time}`;
}

function wordsOf({ condition, lowest }: WeekLine): string {
  return `${condition}, it is lowest with ${percent(lowest.soc_frac)} % left on ${dayAndTime(lowest.at_h)}`;
}
