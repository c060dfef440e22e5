import { rect, ruleX } from "@observablehq/plot";
import { greys, highlight, ink, inkSoft, paper } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { fromUnit, inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px, wrapped } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";

export interface GearSpeedsInput {
  readonly gears: readonly { readonly name: string; readonly speedPerRpm_mps: number; readonly isUsed: boolean }[];
  readonly maxSpeed_rpm: number;
  /** The fastest that the road asks for. */
  readonly roadTop_mps: number;
}

const ROW_PX = 34;
const BAR_PX = 16;

/** The road speeds that each gear serves, from rest to the motor's top speed, a bar a gear, with the road's top speed marked. */
export function gearSpeeds({ gears, maxSpeed_rpm, roadTop_mps }: GearSpeedsInput, drawing: Drawing): Chart {
  if (gears.length === 0 || maxSpeed_rpm <= 0)
    return emptyFigure(drawing, "No gear is known, so there is nothing to show.");
  const unit = (drawing.units ?? METRIC).speed;
  const format = (speed_mps: number) => `${Math.round(inUnit(unit, speed_mps))} ${unit.sign}`;
  const rows = gears.map((gear) => ({ ...gear, top_mps: gear.speedPerRpm_mps * maxSpeed_rpm }));
  const names = rows.map(({ name, isUsed }) =>
    wrapped(isUsed ? `${name}, used` : name, drawing.width_px * 0.25, FONT_PX, 1).join(""),
  );
  const left = 16 + Math.max(...names.map((name) => textWidth_px(name, FONT_PX)));
  const right = drawing.width_px - 18 - textWidth_px(format(999), FONT_PX);
  const top = 34;
  const bottom = top + rows.length * ROW_PX;
  const furthest_mps = Math.max(roadTop_mps, ...rows.map(({ top_mps }) => top_mps));
  const frame: Frame = {
    left,
    right,
    top,
    bottom,
    height: bottom + BELOW_PX,
    x: [0, inUnit(unit, furthest_mps) || 1],
    y: [bottom - top, 0],
  };
  const road = inUnit(unit, roadTop_mps);
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: `Road speed (${unit.sign})`, ticks: ticksFor(right - left) }),
    rect(rows, {
      x1: 0,
      x2: (row: (typeof rows)[number]) => inUnit(unit, row.top_mps),
      y1: (_: unknown, i: number) => i * ROW_PX + (ROW_PX - BAR_PX) / 2,
      y2: (_: unknown, i: number) => i * ROW_PX + (ROW_PX + BAR_PX) / 2,
      fill: (row: (typeof rows)[number]) => (row.isUsed ? highlight : (greys[2] ?? inkSoft)),
    }),
    ruleX([0], { stroke: ink }),
    ruleX([road], { stroke: paper, strokeWidth: 4 }),
    ruleX([road], { stroke: ink, strokeWidth: 1.6, strokeDasharray: "5 3" }),
  ]);
  rows.forEach((row, i) => {
    const y = top + (i + 0.5) * ROW_PX;
    const fill = row.isUsed ? ink : inkSoft;
    writeWords(svg, { x: left - 8, y, lines: [names[i] ?? ""], anchor: "end", fill });
    writeWords(svg, {
      x: xPixel(frame, inUnit(unit, row.top_mps)) + 6,
      y,
      lines: [format(row.top_mps)],
      fill,
      isHaloed: true,
    });
  });
  const words = `the road's top speed ${format(roadTop_mps)}`;
  const half = textWidth_px(words, FONT_PX) / 2;
  const middle = Math.min(drawing.width_px - half - 4, Math.max(half + 4, xPixel(frame, road)));
  writeWords(svg, { x: middle, y: top - 14, lines: [words], anchor: "middle" });

  const used = rows.filter(({ isUsed }) => isUsed).map(({ name }) => name);
  const serving = rows.filter(({ top_mps }) => top_mps >= roadTop_mps).map(({ name }) => name);
  const alt =
    `Road speed at the motor's top speed of ${threeFigures(maxSpeed_rpm)} rpm: ${rows.map(({ name, top_mps }) => `${name} ${format(top_mps)}`).join(", ")}. ` +
    `The road's top speed is ${format(roadTop_mps)}, reached in ${serving.length > 0 ? serving.join(", ") : "no gear"}. ` +
    `In use: ${used.length > 0 ? used.join(", ") : "none"}.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "speed_mps", 1 / unit.perBase);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "gear", label: "Gear" },
        { name: `top_${unit.suffix}`, label: `Road speed at the motor's top speed (${unit.sign})` },
        { name: `per1000rpm_${unit.suffix}`, label: `Road speed at 1000 rpm (${unit.sign})` },
        { name: "used", label: "In use" },
      ],
      rows: rows.map(({ name, top_mps, isUsed }) => {
        const shown = inUnit(unit, top_mps);
        return [name, shown, (shown * 1000) / maxSpeed_rpm, isUsed ? "yes" : "no"];
      }),
    },
    position,
    read(at) {
      const shown = inUnit(unit, within(position, at));
      return {
        where: `${threeFigures(shown)} ${unit.sign}`,
        values: rows.map((row) => {
          const rpm = fromUnit(unit, shown) / row.speedPerRpm_mps;
          return {
            label: row.name,
            text: rpm > maxSpeed_rpm * 1.0001 ? "beyond the motor's top speed" : `${threeFigures(rpm)} rpm`,
          };
        }),
      };
    },
  };
}
