import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import type { Characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import { textTable } from "./table.ts";

/** Characteristics in the units of a table for people and of `--json`; heights that are not known are null. */
export function traceFigures(found: Characteristics) {
  const { climb_m, descent_m } = found;
  return {
    duration_s: found.duration_s,
    distance_km: found.distance_m / M_PER_KM,
    mean_kmh: found.mean_mps / MPS_PER_KMH,
    moving_kmh: found.moving_mps / MPS_PER_KMH,
    max_kmh: found.max_mps / MPS_PER_KMH,
    moving_s: found.duration_s - found.stop_s,
    stop_s: found.stop_s,
    stops: found.stops,
    relativePositiveAcceleration_mps2: found.relativePositiveAcceleration_mps2,
    maxAcceleration_mps2: found.maxAcceleration_mps2,
    maxDeceleration_mps2: found.maxDeceleration_mps2,
    climb_m: climb_m ?? null,
    descent_m: descent_m ?? null,
  };
}

/** One column a trace, since there are more characteristics than traces; a last column for all of several. */
export function tracesTable(
  traces: readonly Trace[],
  found: readonly Characteristics[],
  total: Characteristics,
): string {
  const columns = found.length > 1 ? [...found, total] : found;
  const headings = traces.map(({ id }) => id).concat(found.length > 1 ? ["all of them"] : []);
  const row = (name: string, figure: (of: ReturnType<typeof traceFigures>) => number | null) => [
    name,
    ...columns.map((of) => {
      const value = figure(traceFigures(of));
      return value === null ? "not known" : formatNumber(value);
    }),
  ];
  const hasHeights = found.some(({ climb_m }) => climb_m !== undefined);
  const exactRow = (name: string, figure: (of: Characteristics) => number) => [
    name,
    ...columns.map((of) => formatNumber(Math.round(10 * figure(of)) / 10, 12)),
  ];
  return textTable(
    [{ heading: "" }, ...headings.map((heading) => ({ heading, isNumber: true }))],
    [
      exactRow("time (s)", (of) => of.duration_s),
      row("distance (km)", (of) => of.distance_km),
      row("mean speed (km/h)", (of) => of.mean_kmh),
      row("mean speed while moving (km/h)", (of) => of.moving_kmh),
      row("top speed (km/h)", (of) => of.max_kmh),
      exactRow("standing (s)", (of) => of.stop_s),
      exactRow("stops on the way", (of) => of.stops),
      row("relative positive acceleration (m/s2)", (of) => of.relativePositiveAcceleration_mps2),
      row("hardest acceleration (m/s2)", (of) => of.maxAcceleration_mps2),
      row("hardest braking (m/s2)", (of) => of.maxDeceleration_mps2),
      ...(hasHeights ? [row("climb (m)", (of) => of.climb_m), row("descent (m)", (of) => of.descent_m)] : []),
    ],
  );
}
