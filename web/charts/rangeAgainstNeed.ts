import { rect, ruleX } from "@observablehq/plot";
import type { Enough } from "../../sim/index.ts";
import { ink, inkSoft, paper } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX, LINE_PX } from "./parts/figure/drawPlot.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionByRow, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { textWidth_px, wrapped } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { stairs } from "./parts/lines/stairs.ts";
import { wordsOverLines } from "./parts/lines/wordsOverLines.ts";

export interface RangeAgainstNeedInput {
  readonly packs: readonly {
    readonly name: string;
    readonly index: number;
    readonly range_m: number;
    /** The range ended with the time, so that it is an "at least". */
    readonly isAtLeast: boolean;
    readonly because: Enough["packs"][number]["because"];
  }[];
  readonly day_m: number;
  /** What the usual day asks for today, winter and age allowed for. */
  readonly needed_m: number;
  readonly longest_m?: number | undefined;
}

const BAR_PX = 20;
const ROW_PX = BAR_PX + 28;
const LEFT_PX = 14;

/** How far every pack goes today, a bar each, against the line of what the usual day asks for. */
export function rangeAgainstNeed(input: RangeAgainstNeedInput, drawing: Drawing): Chart {
  const unit = (drawing.units ?? METRIC).distance;
  const format = (distance_m: number) => `${threeFigures(inUnit(unit, distance_m))}\u00a0${unit.sign}`;
  const { packs, day_m, needed_m, longest_m } = input;
  const lines = [
    ...(day_m < needed_m ? [{ name: "usual day", at_m: day_m, colour: inkSoft, width: 1.5, dash: "4 3" }] : []),
    { name: "range needed when new", at_m: needed_m, colour: ink, width: 2.2, dash: undefined },
    ...(longest_m === undefined
      ? []
      : [{ name: "longest day", at_m: longest_m, colour: inkSoft, width: 1.5, dash: "1 3" }]),
  ].sort((a, b) => a.at_m - b.at_m);
  const verdicts = packs.map(({ because, range_m }) =>
    because === "short" ? `${format(needed_m - range_m)} short` : otherVerdicts[because],
  );
  const ranges = packs.map(({ range_m, isAtLeast }) => `${isAtLeast ? "at least " : ""}${format(range_m)}`);

  const right = drawing.width_px - 18;
  const furthest_m = Math.max(...packs.map(({ range_m }) => range_m), ...lines.map(({ at_m }) => at_m));
  const words = lines.map(({ name, at_m }) => `${name} ${format(at_m)}`);
  const across: [number, number] = [0, inUnit(unit, furthest_m) * 1.04 || 1];
  const step = stairs(
    lines.map(({ at_m }, i) => ({
      at: LEFT_PX + (inUnit(unit, at_m) / across[1]) * (right - LEFT_PX),
      width: textWidth_px(words[i] ?? "", FONT_PX) + 10,
    })),
    right + 12,
  );
  const top = 20 + step.height * LINE_PX;
  const bottom = top + packs.length * ROW_PX;
  const frame: Frame = {
    left: LEFT_PX,
    right,
    top,
    bottom,
    height: bottom + BELOW_PX,
    x: across,
    y: [bottom - top, 0],
  };
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: `Range on this road, today (${unit.sign})`, ticks: ticksFor(right - LEFT_PX) }),
    packs.map(({ range_m, index, because }, i) => {
      // A pack whose range does not count is an empty outline.
      const counts = because === "enough" || because === "short";
      const { colour } = packStyle(index, drawing.chosen);
      return rect([0], {
        x1: 0,
        x2: inUnit(unit, range_m),
        y1: i * ROW_PX + 6,
        y2: i * ROW_PX + 6 + BAR_PX,
        ...(counts ? { fill: colour, stroke: paper } : { fill: "none", stroke: colour, strokeDasharray: "4 3" }),
      });
    }),
    ruleX([0], { stroke: ink, strokeWidth: 1 }),
    lines.map(({ at_m, colour, width, dash }) => [
      // A rim of paper keeps the line apart from a bar of its own darkness.
      ruleX([inUnit(unit, at_m)], { stroke: paper, strokeWidth: width + 2.2 }),
      ruleX([inUnit(unit, at_m)], { stroke: colour, strokeWidth: width, ...(dash && { strokeDasharray: dash }) }),
    ]),
  ]);
  lines.forEach(({ at_m, colour }, i) => {
    const at = step.x[i] ?? 0;
    const y = top - 12 - ((step.step[i] ?? 0) + 0.5) * LINE_PX;
    const foot: [number, number] = [xPixel(frame, inUnit(unit, at_m)), top];
    drawPath(svg, [[at, y - 5], [at, top - 9], foot], colour);
    writeWords(svg, { x: at + 4, y, lines: [words[i] ?? ""] });
  });
  const under = (place: number) => top + place * ROW_PX + 6 + BAR_PX;
  packs.forEach(({ name }, i) => {
    const found = `: ${ranges[i]}, ${verdicts[i]}`;
    const space = right - LEFT_PX - 4 - textWidth_px(found, FONT_PX);
    const [short = ""] = wrapped(name, space, FONT_PX, 1);
    wordsOverLines(svg, `${short}${found}`, { x: LEFT_PX + 4, y: under(i) + 10, strip_px: LINE_PX + 3 });
  });

  const alt =
    `Range of each pack on this road today. The usual day is ${format(day_m)} and asks for ${format(needed_m)}, winter and age allowed for` +
    `${longest_m === undefined ? "" : `; the longest day is ${format(longest_m)}`}. ` +
    packs.map(({ name }, i) => `${name}: ${ranges[i]}, ${verdicts[i]}.`).join(" ");
  nameFigure(svg, alt);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        { name: `range_${unit.suffix}`, label: `Range (${unit.sign})` },
        { name: `needed_${unit.suffix}`, label: `Asked for (${unit.sign})` },
        { name: `day_${unit.suffix}`, label: `Usual day (${unit.sign})` },
        ...(longest_m === undefined ? [] : [{ name: `longest_${unit.suffix}`, label: `Longest day (${unit.sign})` }]),
        { name: "verdict", label: "Is it enough?" },
      ],
      rows: packs.map(({ name, range_m }, i) => [
        name,
        inUnit(unit, range_m),
        inUnit(unit, needed_m),
        inUnit(unit, day_m),
        ...(longest_m === undefined ? [] : [inUnit(unit, longest_m)]),
        verdicts[i] ?? "",
      ]),
    },
    position: positionByRow("pack", packs.length, {
      middle_px: under(0),
      row_px: ROW_PX,
      from_px: LEFT_PX,
      to_px: right,
    }),
    read(at) {
      const i = Math.min(packs.length - 1, Math.max(0, Math.round(at)));
      return {
        where: packs[i]?.name ?? "",
        values: [
          { label: "range", text: ranges[i] ?? "" },
          { label: "asked for", text: format(needed_m) },
          { label: "verdict", text: verdicts[i] ?? "" },
        ],
      };
    },
  };
}

const otherVerdicts = {
  enough: "enough",
  behind: "does not keep up with the road",
  unusable: "cannot be used",
} as const;
