import { link, rect, ruleX } from "@observablehq/plot";
import type { Candidate } from "../../sim/index.ts";
import { ink, inkSoft, paper, rule } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX, LINE_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { drawFrame } from "./parts/figure/frame.ts";
import { inkOn, ledgerFills } from "./parts/figure/inks.ts";
import {
  alike,
  type LedgerEntry,
  ledgerEntries,
  ledgerNames,
  middle,
  type Segment,
  stacked,
} from "./parts/figure/ledgerStack.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px, wrapped } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { stairs } from "./parts/lines/stairs.ts";

export { type LedgerEntry, ledgerNames };

export type LedgerCandidate = Pick<Candidate, "name" | "distance_km" | "ledger_Wh">;

/** A segment with the upper edge of its bar below the frame's. */
type Placed = Segment & { readonly top_px: number };

const BAR_PX = 28;
const ROW_PX = BAR_PX + 28;
const LEFT_PX = 14;

/** Where every Wh/km drawn from the cells goes, one bar a pack; what is given back stands left of zero. */
export function energyLedger(candidates: readonly LedgerCandidate[], drawing: Drawing): Chart {
  const packs = candidates.filter((pack) => pack.distance_km > 0);
  if (packs.length === 0)
    return emptyFigure(drawing, "No pack covered any distance, so no energy over distance is shown.");
  const unit = (drawing.units ?? METRIC).consumption;
  const bars = packs.map((pack) => stacked((entry) => inUnit(unit, pack.ledger_Wh[entry] / pack.distance_km)));
  const totals = packs.map((pack) => inUnit(unit, pack.ledger_Wh.total / pack.distance_km));
  const ends = bars.flat().flatMap((each) => [each.from, each.to]);
  const right = drawing.width_px - 16;
  const reach: [number, number] = [Math.min(...ends), Math.max(...ends)];
  if (reach[1] <= reach[0]) reach[1] = reach[0] + 1;
  const x = (value: number) => LEFT_PX + ((value - reach[0]) / (reach[1] - reach[0])) * (right - LEFT_PX);
  const wide = (each: Segment) => Math.abs(x(each.to) - x(each.from));
  const isNumbered = (each: Segment) => textWidth_px(threeFigures(each.value), FONT_PX) + 6 <= wide(each);

  // The first bar carries the names, in steps above it, each led down to its segment.
  const named = (bars[0] ?? []).filter((each) => wide(each) >= 0.5).sort((a, b) => middle(a) - middle(b));
  const words = named.map(
    (each) => `${ledgerNames[each.entry]}${isNumbered(each) ? "" : ` ${threeFigures(each.value)}`}`,
  );
  const step = stairs(
    named.map((each, i) => ({ at: x(middle(each)), width: textWidth_px(words[i] ?? "", FONT_PX) + 10 })),
    right + 12,
  );
  const top = 8 + step.height * LINE_PX + 14;
  const bottom = top + packs.length * ROW_PX;
  const height = bottom + 44;
  const segments = bars.flatMap((bar, i) => bar.map((each): Placed => ({ ...each, top_px: i * ROW_PX })));
  const hairlines = bars
    .slice(1)
    .flatMap((bar, i) => alike(bar, bars[i] ?? []).map((each) => ({ ...each, top_px: i * ROW_PX + BAR_PX })));
  const svg = drawFrame(drawing, { left: LEFT_PX, right, top, bottom, height, x: reach, y: [bottom - top, 0] }, [
    bottomAxis({ label: `Energy from the cells (${unit.sign})`, ticks: ticksFor(right - LEFT_PX) }),
    rect(segments, {
      x1: "from",
      x2: "to",
      y1: "top_px",
      y2: (each: Placed) => each.top_px + BAR_PX,
      fill: (each: Placed) => ledgerFills[each.entry],
      stroke: paper,
      strokeWidth: 0.75,
    }),
    // Hairlines carry each boundary on to the next bar, so that the names above hold for all of them.
    link(hairlines, {
      x1: "above",
      x2: "below",
      y1: "top_px",
      y2: (each: (typeof hairlines)[number]) => each.top_px + ROW_PX - BAR_PX,
      stroke: rule,
    }),
    ruleX([0], { stroke: ink, strokeWidth: 1 }),
  ]);
  named.forEach((each, i) => {
    const at = step.x[i] ?? 0;
    const y = top - 14 - ((step.step[i] ?? 0) + 0.5) * LINE_PX;
    drawPath(
      svg,
      [
        [at, y - 5],
        [at, top - 12],
        [x(middle(each)), top - 1],
      ],
      inkSoft,
      0.75,
    );
    writeWords(svg, { x: at + 4, y, lines: [words[i] ?? ""] });
  });
  bars.forEach((bar, i) => {
    const y = top + i * ROW_PX;
    for (const each of bar.filter(isNumbered)) {
      const fill = inkOn(ledgerFills[each.entry], ink, paper);
      writeWords(svg, {
        x: x(middle(each)),
        y: y + BAR_PX / 2,
        lines: [threeFigures(each.value)],
        anchor: "middle",
        fill,
      });
    }
    const total = `${threeFigures(totals[i] ?? 0)} ${unit.sign}`;
    const [name = ""] = wrapped(packs[i]?.name ?? "", right - x(0) - textWidth_px(total, FONT_PX) - 20, FONT_PX, 1);
    writeWords(svg, { x: x(0) + 4, y: y + BAR_PX + 11, lines: [`${name}: ${total}`], isHaloed: true });
  });

  const alt = `Energy from the cells in ${unit.sign}. ${packs.map((pack, i) => sentence(pack.name, totals[i] ?? 0, bars[i] ?? [])).join(" ")}`;
  nameFigure(svg, alt);
  // Under the bar, so that the line does not strike out its numbers.
  const under = (place: number) => top + place * ROW_PX + BAR_PX + 1;
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        ...ledgerEntries.map((entry) => ({
          name: `${entry}_${unit.suffix}`,
          label: `${ledgerNames[entry]} (${unit.sign})`,
        })),
        { name: `total_${unit.suffix}`, label: `total (${unit.sign})` },
      ],
      rows: packs.map((pack, i) => [pack.name, ...(bars[i] ?? []).map((each) => each.value), totals[i] ?? 0]),
    },
    position: {
      quantity: "pack",
      first: 0,
      last: packs.length - 1,
      step: 1,
      isVertical: true,
      from_px: LEFT_PX,
      to_px: right,
      toPixel: under,
      fromPixel: (pixel) => (pixel - under(0)) / ROW_PX,
    },
    read(at) {
      const i = Math.min(packs.length - 1, Math.max(0, Math.round(at)));
      const say = (value: number) => `${threeFigures(value)} ${unit.sign}`;
      return {
        where: packs[i]?.name ?? "",
        values: [
          ...(bars[i] ?? []).map((each) => ({ label: ledgerNames[each.entry], text: say(each.value) })),
          { label: "total", text: say(totals[i] ?? 0) },
        ],
      };
    },
  };
}

function sentence(name: string, total: number, bar: readonly Segment[]): string {
  const parts = bar
    .filter((each) => threeFigures(each.value) !== "0")
    .sort((a, b) => b.value - a.value)
    .map((each) => `${ledgerNames[each.entry]} ${threeFigures(each.value)}`);
  return `${name}: ${threeFigures(total)} in all${parts.length > 0 ? `, of which ${parts.join(", ")}` : ""}.`;
}
