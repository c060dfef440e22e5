import { S_PER_H, S_PER_MIN } from "../../../../shared/units.ts";
import type { Channels } from "../../../../sim/index.ts";
import { type FigureUnits, inUnit, METRIC } from "../figure/figureUnits.ts";
import { threeFigures } from "../figure/threeFigures.ts";

/** Whether a run is laid out by the clock or by the road. */
export type Along = "time" | "distance";

export interface RoadAxis {
  readonly quantity: "time_s" | "distance_m";
  readonly label: string;
  /** Key of the column in a table. */
  readonly name: string;
  /** The channel in its base unit (s or m). */
  column(channels: Channels): Float64Array;
  /** Seconds or metres in one of the unit shown. */
  readonly perShown: number;
  /** Seconds or metres in the unit shown. */
  shown(base: number): number;
  format(base: number): string;
}

/**
 * The horizontal axis of figures along a run that ends at `last` (s or m): in s, min or h, or in the unit of distance.
 * Its time is called `time` where it is not that of the one drive which the other figures show.
 */
export function roadAxis(along: Along, last: number, units: FigureUnits = METRIC, time = "Time"): RoadAxis {
  if (along === "distance") {
    const { sign, suffix } = units.distance;
    const shown = (base: number) => inUnit(units.distance, base);
    return {
      quantity: "distance_m",
      label: `Distance (${sign})`,
      name: `distance_${suffix}`,
      column: (channels) => channels.distance_m,
      perShown: 1 / units.distance.perBase,
      shown,
      format: (base) => `${threeFigures(shown(base))} ${sign}`,
    };
  }
  const [unit, per_s] = last > 3 * S_PER_H ? ["h", S_PER_H] : last > 5 * S_PER_MIN ? ["min", S_PER_MIN] : ["s", 1];
  return {
    quantity: "time_s",
    label: `${time} (${unit})`,
    name: `time_${unit}`,
    column: (channels) => channels.time_s,
    perShown: per_s,
    shown: (base) => base / per_s,
    format: (base) => `${threeFigures(base / per_s)} ${unit}`,
  };
}
