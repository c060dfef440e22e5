import { line, ruleY } from "@observablehq/plot";
import { figureColours, heed, ink, inkSoft } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX, LINE_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { fromUnit, inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { stairs } from "./parts/lines/stairs.ts";

export interface GearSpeedsInput {
  readonly gears: readonly { readonly name: string; readonly speedPerRpm_mps: number }[];
  readonly maxSpeed_rpm: number;
}

const LEFT_PX = 58;

/** Motor speed over road speed in each gear, up to the motor's top speed. */
export function gearSpeeds({ gears, maxSpeed_rpm }: GearSpeedsInput, drawing: Drawing): Chart {
  if (gears.length === 0 || maxSpeed_rpm <= 0)
    return emptyFigure(drawing, "No gear is known, so there is nothing to show.");
  const units = drawing.units ?? METRIC;
  const topOf = (gear: GearSpeedsInput["gears"][number]) => inUnit(units.speed, gear.speedPerRpm_mps * maxSpeed_rpm);
  const rising = [...gears].sort((a, b) => topOf(a) - topOf(b));
  const right = drawing.width_px - 18;
  const words = rising.map((gear) => `${gear.name} ${threeFigures(topOf(gear))} ${units.speed.sign}`);
  const x: [number, number] = [0, Math.max(...rising.map(topOf)) * 1.02 || 1];
  const step = stairs(
    rising.map((gear, i) => ({
      at: LEFT_PX + (topOf(gear) / x[1]) * (right - LEFT_PX),
      width: textWidth_px(words[i] ?? "", FONT_PX) + 10,
    })),
    right + 12,
  );
  const top = 40 + step.height * LINE_PX;
  const bottom = top + 230;
  // The line of the top speed is the frame's upper edge, so that every gear ends under its name.
  const frame: Frame = { left: LEFT_PX, right, top, bottom, height: bottom + BELOW_PX, x, y: [0, maxSpeed_rpm] };
  const dashes = [undefined, "8 3", "2 3", "10 3 2 3", "5 2 1 2 1 2"];
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: `Road speed (${units.speed.sign})`, ticks: ticksFor(right - LEFT_PX) }),
    leftAxis({ label: `Motor speed (rpm) up to its top speed, ${threeFigures(maxSpeed_rpm)}`, ticks: 6 }, LEFT_PX),
    ruleY([maxSpeed_rpm], { stroke: heed, strokeWidth: 1.4, strokeDasharray: "6 3" }),
    rising.map((gear, i) => {
      const dash = dashes[i % dashes.length];
      const ends = [
        { x: 0, y: 0 },
        { x: topOf(gear), y: maxSpeed_rpm },
      ];
      const stroke = figureColours[i % figureColours.length] ?? ink;
      return line(ends, { x: "x", y: "y", stroke, strokeWidth: 1.8, ...(dash ? { strokeDasharray: dash } : {}) });
    }),
  ]);
  rising.forEach((gear, i) => {
    const at = step.x[i] ?? 0;
    const wordsY = top - 14 - ((step.step[i] ?? 0) + 0.5) * LINE_PX;
    drawPath(
      svg,
      [
        [at, wordsY - 5],
        [at, top - 10],
        [xPixel(frame, topOf(gear)), top],
      ],
      inkSoft,
      0.75,
    );
    writeWords(svg, { x: at + 4, y: wordsY, lines: [words[i] ?? ""] });
  });
  const alt = `Motor speed over road speed: at the motor's top speed of ${threeFigures(maxSpeed_rpm)} rpm the car does ${words.join(", ")}.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "speed_mps", 1 / units.speed.perBase);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "gear", label: "Gear" },
        { name: `top_${units.speed.suffix}`, label: `Road speed at the motor's top speed (${units.speed.sign})` },
        { name: "top_rpm", label: "The motor's top speed (rpm)" },
        { name: `per1000rpm_${units.speed.suffix}`, label: `Road speed at 1000 rpm (${units.speed.sign})` },
      ],
      rows: rising.map((gear) => [gear.name, topOf(gear), maxSpeed_rpm, (topOf(gear) * 1000) / maxSpeed_rpm]),
    },
    position,
    read(at) {
      const shown = inUnit(units.speed, within(position, at));
      return {
        where: `${threeFigures(shown)} ${units.speed.sign}`,
        values: rising.map((gear) => {
          const rpm = fromUnit(units.speed, shown) / gear.speedPerRpm_mps;
          return {
            label: gear.name,
            text: rpm > maxSpeed_rpm * 1.0001 ? "beyond the motor's top speed" : `${threeFigures(rpm)} rpm`,
          };
        }),
      };
    },
  };
}
