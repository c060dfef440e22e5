import { reach } from "./parts/axes/domain.ts";
import { roadAxis } from "./parts/axes/roadAxis.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { type Frame, positionAlong, within } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { stackFigures } from "./parts/figure/stackFigures.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { annotateSpans } from "./parts/lines/annotateSpans.ts";
import { type LogColumns, logPanel } from "./parts/lines/logPanel.ts";
import { repairsOf } from "./parts/lines/repairsOf.ts";
import { thin } from "./parts/lines/thin.ts";

export interface RawAgainstCleanedInput {
  readonly raw: LogColumns;
  /** `isRepaired[i]` is 1 where the cleaning changed or filled sample i. */
  readonly cleaned: LogColumns & { readonly isRepaired: Uint8Array };
}

/** A recorded speed (and height, where it has one) as it came, thin, under what the cleaning made of it; repairs are shaded. */
export function rawAgainstCleaned({ raw, cleaned }: RawAgainstCleanedInput, drawing: Drawing): Chart {
  const n = cleaned.time_s.length;
  if (n === 0 && raw.time_s.length === 0)
    return emptyFigure(drawing, "The log holds no sample, so there is nothing to show.");
  const units = drawing.units ?? METRIC;
  const ends = [raw.time_s, cleaned.time_s].filter((time) => time.length > 0).map((time) => reach(time, time.length));
  const first = Math.min(...ends.map(([low]) => low));
  const last = Math.max(...ends.map(([, high]) => high));
  const axis = roadAxis("time", last, units);
  const repairs = repairsOf(cleaned.time_s, cleaned.isRepaired, (last - first) * 0.005);
  const hasHeight = raw.elevation_m !== undefined || cleaned.elevation_m !== undefined;
  const x: [number, number] = [axis.shown(first), last > first ? axis.shown(last) : axis.shown(first) + 1];
  const panels = [
    logPanel(drawing, {
      raw,
      cleaned,
      key: "speed_mps",
      label: "Speed",
      unit: units.speed,
      axis,
      x,
      repairs,
      isLast: !hasHeight,
    }),
    ...(hasHeight
      ? [
          logPanel(drawing, {
            raw,
            cleaned,
            key: "elevation_m",
            label: "Height",
            unit: units.height,
            axis,
            x,
            repairs,
            isLast: true,
          }),
        ]
      : []),
  ];
  const svg = stackFigures(
    drawing,
    panels.map((each) => each.svg),
  );
  if (panels[0]) {
    const named = repairs.map(({ from_s, to_s }) => ({
      from: axis.shown(from_s),
      to: axis.shown(to_s),
      words: `repaired ${threeFigures(to_s - from_s)} s`,
    }));
    annotateSpans(panels[0].svg, panels[0].frame, named);
  }
  const repaired_s = repairs.reduce((sum, each) => sum + each.to_s - each.from_s, 0);
  const alt =
    `Speed as recorded (${raw.time_s.length} samples) and as cleaned over ${axis.format(last - first)}: ` +
    (repairs.length === 0
      ? "nothing was repaired."
      : `${repairs.length} ${repairs.length === 1 ? "stretch" : "stretches"} repaired, ${threeFigures(repaired_s)} s in all, first at ${axis.format(repairs[0]?.from_s ?? 0)}.`);
  nameFigure(svg, alt);
  const frame = panels[0]?.frame as Frame;
  const position = {
    ...positionAlong(frame, "time_s", axis.perShown),
    ...(hasHeight ? { to_px: frame.height + (panels[1]?.frame.bottom ?? 0) } : {}),
  };
  const rows = thin(cleaned.time_s, cleaned.speed_mps, n, Math.round(frame.right - frame.left));
  const speed = (mps: number) => inUnit(units.speed, mps);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: axis.name, label: axis.label },
        { name: `raw_${units.speed.suffix}`, label: `As recorded (${units.speed.sign})` },
        { name: `cleaned_${units.speed.suffix}`, label: `Cleaned (${units.speed.sign})` },
        { name: "repaired", label: "Repaired" },
      ],
      rows: rows.map((row) => {
        const at = cleaned.time_s[row] as number;
        const recorded = speed(lineAt(raw.time_s, raw.speed_mps, raw.time_s.length, at));
        return [
          axis.shown(at),
          Number.isFinite(recorded) ? recorded : "",
          speed(cleaned.speed_mps[row] as number),
          cleaned.isRepaired[row] ? "yes" : "no",
        ];
      }),
    },
    position,
    read(at) {
      const inside = within(position, at);
      const format = (log: LogColumns) => {
        const value = lineAt(log.time_s, log.speed_mps, log.time_s.length, inside);
        return Number.isFinite(value) ? `${threeFigures(speed(value))} ${units.speed.sign}` : "nothing recorded";
      };
      return {
        where: axis.format(inside),
        values: [
          { label: "as recorded", text: format(raw) },
          { label: "cleaned", text: format(cleaned) },
        ],
      };
    },
  };
}
