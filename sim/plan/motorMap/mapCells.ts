import { NM_PER_LBFT, RADPS_PER_RPM } from "../../../shared/units.ts";
import type { NamedAxes } from "./mapAxes.ts";
import type { Row } from "./mapRows.ts";

/** What a map's words say its values are; nothing if they do not say. */
export type MapValues = "efficiency" | "percent" | "W" | "kW" | undefined;

/** One entry of a motor map, wherever it stood in the file. */
export interface MapCell {
  readonly speed_rpm: number;
  readonly torque_Nm: number;
  readonly value: number;
  readonly line: number;
}

export interface MapCells {
  readonly cells: readonly MapCell[];
  readonly values: MapValues;
  readonly notes: readonly string[];
}

/** The entries with their axes settled: which is speed, in which unit, and what the values are. */
export function settleAxes(
  raw: readonly { down: number; across: number; value: number; line: number }[],
  { downIs, down: downWords, across: acrossWords }: NamedAxes,
  valueWords: string,
  rows: readonly Row[],
): MapCells {
  const notes: string[] = [];
  const downMost = largest(raw.map((cell) => cell.down));
  const acrossMost = largest(raw.map((cell) => cell.across));
  let isDownSpeed = downIs === undefined ? downMost >= acrossMost : downIs === "speed";
  const speedWords = isDownSpeed ? downWords : acrossWords;
  const torqueWords = isDownSpeed ? acrossWords : downWords;
  const perRadian = /rad/i.test(speedWords) ? 1 / RADPS_PER_RPM : 1;
  const perPoundFoot = /lb|ft/i.test(torqueWords) ? NM_PER_LBFT : 1;
  if (downIs === undefined)
    notes.push(
      `no words say which axis is speed: taken as the one ${isDownSpeed ? "down" : "across"}, with the larger numbers`,
    );
  const speedMost_rpm = perRadian * (isDownSpeed ? downMost : acrossMost);
  const torqueMost_Nm = perPoundFoot * (isDownSpeed ? acrossMost : downMost);
  if (downIs !== undefined && speedMost_rpm < torqueMost_Nm) {
    isDownSpeed = !isDownSpeed;
    notes.push(
      `speed and torque stood in each other's place (${short(torqueMost_Nm)} as a torque in Nm, ${short(speedMost_rpm)} as a top speed in rpm): changed over`,
    );
  }
  if (perRadian !== 1) notes.push("speeds read in rad/s");
  if (perPoundFoot !== 1) notes.push("torques read in lb ft");
  const cells = raw.map(({ down, across, value, line }) => ({
    speed_rpm: (isDownSpeed ? down : across) * perRadian,
    torque_Nm: (isDownSpeed ? across : down) * perPoundFoot,
    value,
    line,
  }));
  return { cells, values: valuesOf(valueWords, rows), notes };
}

function valuesOf(text: string, rows: readonly Row[]): MapValues {
  if (/loss|heat/i.test(text)) return /kw/i.test(text) ? "kW" : "W";
  if (rows.some((row) => row.texts.some((cell) => /^[\d.,]+ ?%$/.test(cell)))) return "percent";
  if (/%|percent|per cent/i.test(text)) return "percent";
  return /eff|\beta\b|η/i.test(text) ? "efficiency" : undefined;
}

function largest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

function short(value: number): string {
  return String(Number(value.toPrecision(3)));
}
