import Papa from "papaparse";
import { MPS_PER_KMH, RADPS_PER_RPM, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import type { Candidate } from "../../plan/driveReport.ts";
import type { Channels } from "../../step/channels.ts";
import { LIMITS } from "../../step/limits.ts";

type Cell = string | number;

/** What a spreadsheet's columns hold, in the units people read; forces, torques, volts, amperes and powers are means over the time since the row before. */
const columns: Readonly<Record<string, (run: Channels, row: number, gearNames: readonly string[]) => Cell>> = {
  time_s: (run, row) => run.time_s[row],
  distance_m: (run, row) => run.distance_m[row],
  target_kmh: (run, row) => run.target_mps[row] / MPS_PER_KMH,
  speed_kmh: (run, row) => run.speed_mps[row] / MPS_PER_KMH,
  grade_ratio: (run, row) => run.grade_ratio[row],
  elevation_m: (run, row) => run.elevation_m[row],
  wheelForce_N: (run, row) => run.wheelForce_N[row],
  brakeForce_N: (run, row) => run.brakeForce_N[row],
  // No interval ends at the first row.
  gear: (run, row, gearNames) => (row === 0 ? "" : gearNames[run.gear[row]]),
  motor_rpm: (run, row) => run.motorSpeed_radps[row] / RADPS_PER_RPM,
  motorTorque_Nm: (run, row) => run.motorTorque_Nm[row],
  motorLoss_W: (run, row) => run.motorLoss_W[row],
  controller_W: (run, row) => run.controller_W[row],
  battery_A: (run, row) => run.battery_A[row],
  battery_V: (run, row) => run.battery_V[row],
  battery_W: (run, row) => run.battery_W[row],
  soc_frac: (run, row) => run.soc_frac[row],
  motor_degC: (run, row) => run.motor_K[row] - ZERO_CELSIUS_K,
  pack_degC: (run, row) => run.pack_K[row] - ZERO_CELSIUS_K,
  limit: (run, row) => LIMITS[run.limit[row]],
};

/**
 * Recorded runs as CSV that a spreadsheet opens: one row a sample a pack, the pack's name first. Ten significant digits. A name that
 * a spreadsheet would take for a formula gets a quote before it; names in other than plain letters get the mark by which
 * spreadsheets know UTF-8. Candidates without channels are a mistake of the caller.
 */
export function channelsCsv(candidates: readonly Candidate[], gearNames: readonly string[]): string {
  const parts = candidates.map(({ name, channels }, k) => {
    if (!channels) throw new Error(`the run of ${name} was not recorded`);
    const data = Array.from({ length: channels.length }, (_, row) => [
      name,
      ...Object.values(columns).map((cell) => tidy(cell(channels, row, gearNames))),
    ]);
    return Papa.unparse(
      { fields: ["pack", ...Object.keys(columns)], data },
      { header: k === 0, newline: "\n", escapeFormulae: true },
    );
  });
  const text = `${parts.join("\n")}\n`;
  return /[\u0080-\uffff]/.test(text) ? `\uFEFF${text}` : text;
}

function tidy(cell: Cell): Cell {
  return typeof cell === "number" ? Number(cell.toPrecision(10)) : cell;
}
