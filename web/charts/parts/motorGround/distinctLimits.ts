import type { MotorSurface } from "../../../../sim/index.ts";
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
    if (same) same.name = eitherOf(same.name, name);
    else lines.push({ name, points });
  }
  return lines;
}

/** "driveline in second or third": what both names begin with is said once. */
function eitherOf(name: string, other: string): string {
  const [first, next] = [name.split(" "), other.split(" ")];
  const alike = next.findIndex((word, i) => word !== first[i]);
  return `${name} or ${next.slice(alike >= 2 ? alike : 0).join(" ")}`;
}
