import { MPS_PER_KMH } from "../../shared/units.ts";
import { distanceAlong_m } from "./distanceAlong.ts";
import { elevationAt_m } from "./profileAlong.ts";
import type { Trace } from "./trace.ts";

/**
 * A trace as the CSV text that `readTraceCsv` reads: `time_s`, `speed_kmh` and, where the height is known, `elevation_m`
 * at each row. Numbers carry 12 significant digits, so nothing read from a file changes on the way back; heights between
 * two rows of the trace are not written.
 */
export function writeTraceCsv(trace: Trace): string {
  const { time_s, speed_mps, profile } = trace;
  const place_m = profile && distanceAlong_m(time_s, speed_mps);
  const lines = [profile ? "time_s,speed_kmh,elevation_m" : "time_s,speed_kmh"];
  for (let i = 0; i < time_s.length; i++) {
    const row = [digits(time_s[i]), digits(speed_mps[i] / MPS_PER_KMH)];
    if (profile && place_m) row.push(digits(elevationAt_m(profile, place_m[i])));
    lines.push(row.join(","));
  }
  return `${lines.join("\n")}\n`;
}

function digits(value: number): string {
  return String(Number(value.toPrecision(12)));
}
