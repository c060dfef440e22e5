import type { Job } from "../../../shared/job/job.ts";
import { transferBox_ratio } from "../../../shared/job/transferBoxRatio.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { M_PER_KM, M_PER_MILE, MM_PER_M, MPS_PER_KMH, RADPS_PER_RPM } from "../../../shared/units.ts";
import type { Format, WorkedReason } from "./reasonFacts.ts";

/** The highest speed in the last of the gears used, by turns of the wheel over a kilometre or a mile. */
export function gearSpeedReason({ driveline, vehicle, motor }: Job, format: Format, units: UnitHabit): WorkedReason {
  const { gears, shifting, finalDrive_ratio } = driveline;
  const name = shifting.kind === "fixed" ? shifting.gear : (shifting.gears.at(-1) ?? "");
  const { gear_ratio } = gears.find((gear) => gear.name === name) ?? gears[0];
  const box_ratio = transferBox_ratio(driveline);
  const { loadedRadius_mm } = vehicle.tyres;
  const isMetric = units === "metric";
  const road_mm = (isMetric ? M_PER_KM : M_PER_MILE) * MM_PER_M;
  const turns = road_mm / (2 * Math.PI * loadedRadius_mm);
  const wheel_radps = (motor.maxSpeed_rpm * RADPS_PER_RPM) / (gear_ratio * box_ratio * finalDrive_ratio);
  const top_kmh = (wheel_radps * (loadedRadius_mm / MM_PER_M)) / MPS_PER_KMH;
  const [length, called] = isMetric ? ["1000 × 1000", "kilometre"] : ["1760 × 36", "mile"];
  const value = format("speed", top_kmh);
  return {
    value: `${value} in ${name} at the motor's top speed`,
    lines: [
      `turns of the wheel: ${length} / (2 × 3.14 × ${format("wheelRadius", loadedRadius_mm)}) = ${formatNumber(turns)} a ${called}`,
      `${format("rotation", motor.maxSpeed_rpm)} × 60 / (${formatNumber(gear_ratio)} × ${formatNumber(box_ratio)} × ${formatNumber(finalDrive_ratio)} × ${formatNumber(turns)}) = ${value}`,
    ],
    isOfEveryPack: true,
  };
}
