import { extent } from "d3-array";
import type { MotorSurface } from "../../../../sim/index.ts";
import { threeFigures } from "../figure/threeFigures.ts";
import type { TimedPoint } from "./timeByPoint.ts";
import { peakOf, type TorqueLine } from "./torqueLine.ts";

export interface OperatingPointsWords {
  readonly name: string;
  readonly map: MotorSurface;
  readonly contours: "loss" | "efficiency";
}

/** Where the motor works, said: for how long, where most, how far it goes, and what it is allowed. */
export function operatingPointsInWords(
  { name, map, contours }: OperatingPointsWords,
  points: readonly TimedPoint[],
  driving: TorqueLine,
  formatTorque: (torque_Nm: number) => string,
): string {
  const limits = map.limits
    .map((limit) => `; ${limit.name} allows ${formatTorque(peakOf(limit.points).torque_Nm)}`)
    .join("");
  const allowed = `The envelope allows ${formatTorque(peakOf(driving).torque_Nm)} and ${threeFigures(map.maxSpeed_rpm)} rpm${limits}. Contours show ${contours === "loss" ? "loss in watts" : "efficiency in percent"}.`;
  if (points.length === 0) return `Where the motor works with ${name}: it does not turn in this run. ${allowed}`;
  const time_s = points.reduce((sum, point) => sum + point.time_s, 0);
  const most = points.reduce((a, b) => (b.time_s > a.time_s ? b : a));
  const [slow_rpm = 0, fast_rpm = 0] = extent(points, (point) => point.speed_rpm);
  const [low_Nm = 0, high_Nm = 0] = extent(points, (point) => point.torque_Nm);
  return (
    `Where the motor works with ${name}: it turns for ${threeFigures(time_s)} s, longest near ${threeFigures(most.speed_rpm)} rpm and ` +
    `${formatTorque(most.torque_Nm)} (${threeFigures(most.time_s)} s), between ${threeFigures(slow_rpm)} and ` +
    `${threeFigures(fast_rpm)} rpm and between ${formatTorque(low_Nm)} and ${formatTorque(high_Nm)}. ${allowed}`
  );
}
