import { lineAt } from "../figure/columnAt.ts";

/** A torque over motor speed, rising in speed. */
export type TorqueLine = readonly { readonly speed_rpm: number; readonly torque_Nm: number }[];

/** Torque on the line at a speed, in Nm; 0 where there is no line or it does not reach that speed. */
export function torqueOn(line: TorqueLine, speed_rpm: number): number {
  const first = line[0];
  const last = line.at(-1);
  if (!first || !last || speed_rpm < first.speed_rpm || speed_rpm > last.speed_rpm) return 0;
  return lineAt(
    line.map((point) => point.speed_rpm),
    line.map((point) => point.torque_Nm),
    line.length,
    speed_rpm,
  );
}

/** The point of the greatest torque, the first of several. */
export function peakOf(line: TorqueLine): TorqueLine[number] {
  return line.reduce((a, b) => (b.torque_Nm > a.torque_Nm ? b : a), line[0] ?? { speed_rpm: 0, torque_Nm: 0 });
}
