import { M_PER_KM, MPS_PER_KMH } from "../../shared/units.ts";
import type { SteadyRow } from "../../sim/index.ts";
import { domain } from "./parts/axes/domain.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { positionAlong, within } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { stackFigures } from "./parts/figure/stackFigures.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

export interface SteadyPack {
  readonly name: string;
  readonly index: number;
  readonly rows: readonly SteadyRow[];
}

/** Energy per distance over steady speed, and beneath it the range; hollow marks where the speed can't be held. */
export function steadySpeed(input: readonly SteadyPack[], drawing: Drawing): Chart {
  const packs = input.filter((pack) => pack.rows.length > 0);
  if (packs.length === 0) return emptyFigure(drawing, "No steady speed was worked, so there is nothing to show.");
  const units = drawing.units ?? METRIC;
  const speed = (row: SteadyRow) => inUnit(units.speed, row.speed_kmh * MPS_PER_KMH);
  const consumption = (row: SteadyRow) => inUnit(units.consumption, row.battery_Whpkm);
  const range = (row: SteadyRow) =>
    row.range_km === undefined ? Number.NaN : inUnit(units.distance, row.range_km * M_PER_KM);
  const all = packs.flatMap((pack) => pack.rows);
  const speeds = all.map(speed);
  const x: [number, number] = [Math.min(...speeds), Math.max(...speeds)];
  if (x[1] <= x[0]) x[1] = x[0] + 1;
  const panel = (size: (row: SteadyRow) => number, yLabel: string, xLabel: string | null, top_px: number) =>
    namedLines(drawing, {
      lines: packs.map((pack) => ({
        name: pack.name,
        style: packStyle(pack.index, drawing.chosen),
        // A speed that is not held has no range.
        points: pack.rows
          .map((row) => ({ x: speed(row), y: size(row), isHollow: !row.isHeld }))
          .filter(({ y }) => Number.isFinite(y)),
      })),
      xLabel,
      yLabel,
      x,
      y: domain(0, Math.max(0, ...all.map(size).filter(Number.isFinite)), true),
      top_px,
      plotHeight_px: 170,
      isDotted: true,
    });
  const upper = panel(consumption, `Energy from the battery (${units.consumption.sign})`, null, 34);
  const lower = panel(range, `Range (${units.distance.sign})`, `Steady speed (${units.speed.sign})`, 34);
  const svg = stackFigures(drawing, [upper.svg, lower.svg]);

  const format = (row: SteadyRow) => {
    const far = row.isHeld ? ` and ${threeFigures(range(row))} ${units.distance.sign}` : "";
    const at = `${threeFigures(speed(row))} ${units.speed.sign}${row.isHeld ? "" : " (not held)"}`;
    return `${threeFigures(consumption(row))} ${units.consumption.sign}${far} at ${at}`;
  };
  const ends = packs.map(({ name, rows }) => {
    const [first, last] = [rows[0], rows.at(-1)];
    return `${name} ${[first, ...(last === first ? [] : [last])].map((row) => (row ? format(row) : "")).join(", ")}`;
  });
  const alt = `Energy and range at steady speed: ${ends.join("; ")}.`;
  nameFigure(svg, alt);
  const position = {
    ...positionAlong(upper.frame, "speed_mps", 1 / units.speed.perBase, 70),
    to_px: upper.frame.height + lower.frame.bottom,
  };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        { name: `speed_${units.speed.suffix}`, label: `Steady speed (${units.speed.sign})` },
        { name: `battery_${units.consumption.suffix}`, label: `Energy from the battery (${units.consumption.sign})` },
        { name: `range_${units.distance.suffix}`, label: `Range (${units.distance.sign})` },
        { name: "held", label: "Speed held" },
      ],
      rows: packs.flatMap((pack) =>
        pack.rows.map((row) => [
          pack.name,
          speed(row),
          consumption(row),
          row.isHeld ? range(row) : "",
          row.isHeld ? "yes" : "no",
        ]),
      ),
    },
    position,
    read(at) {
      const shown = inUnit(units.speed, within(position, at));
      return {
        where: `${threeFigures(shown)} ${units.speed.sign}`,
        values: packs.map(({ name, rows }) => {
          const over = (size: (row: SteadyRow) => number) =>
            lineAt(rows.map(speed), rows.map(size), rows.length, shown);
          const farOver = over(range);
          const far = Number.isFinite(farOver) ? `${threeFigures(farOver)} ${units.distance.sign}` : "not held";
          return { label: name, text: `${threeFigures(over(consumption))} ${units.consumption.sign}, ${far}` };
        }),
      };
    },
  };
}
