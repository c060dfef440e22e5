import { countOf } from "../log/countOf.ts";
import { type Fixes, hasValues } from "../log/fixes.ts";
import type { ColumnGuess, LogGuess } from "../log/logFile.ts";

/** How a GPX file was understood: of speeds, heights and times it says only what the points have. */
export function gpxGuess(encoding: string, isTrack: boolean, fixes: Fixes): LogGuess {
  const parts = [
    ...(hasValues(fixes.time_s) ? ["times in UTC"] : ["no times"]),
    ...(hasValues(fixes.elevation_m) ? ["heights in metres"] : ["no heights"]),
    ...(hasValues(fixes.speed_mps) ? ["speed in m/s"] : ["no recorded speed"]),
  ];
  const points = countOf(fixes.count, isTrack ? "track point" : "route point");
  return { encoding, layout: [`GPX, ${points}`, parts.join(", ")], columns: columnsOf(fixes) };
}

function columnsOf(fixes: Fixes): readonly ColumnGuess[] {
  const column = (index: number, header: string, role: ColumnGuess["role"], unit: string): ColumnGuess => ({
    index,
    header,
    role,
    unit,
    evidence: "laid down by the format",
    sample: "",
  });
  const columns = [column(0, "lat", "lat", "deg"), column(1, "lon", "lon", "deg")];
  if (hasValues(fixes.time_s)) {
    columns.push(column(2, "time", "time", "ISO"));
  }
  if (hasValues(fixes.elevation_m)) {
    columns.push(column(3, "ele", "height", "m"));
  }
  if (hasValues(fixes.speed_mps)) {
    columns.push(column(4, "speed", "speed", "mps"));
  }
  return columns;
}
