import type { MotorSurface } from "../../sim/index.ts";
import type { TorqueLine } from "./torqueLine.ts";

/** Limits that allow the same torque throughout are one line, told by both names. */
export function distinctLimits(limits: MotorSurface["limits"]): { name: string; points: TorqueLine }[] {
  const lines: { name: string; points: TorqueLine }[] = [];
  for (const { name, points } of limits) {
    const same = lines.find(
      (line) =>
        line.points.length === points.length &&
        points.every((point, i) => {
          const other = line.points[i];
          return other?.speed_rpm === point.speed_rpm && Math.abs(other.torque_Nm - point.torque_Nm) < 0.05;
        }),
    );
    if (same) same.name += ` or ${name}`;
    else lines.push({ name, points });
  }
  return lines;
}
