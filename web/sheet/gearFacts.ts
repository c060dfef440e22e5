import type { Job } from "../../shared/job/job.ts";
import { transferBox_ratio } from "../../shared/job/transferBoxRatio.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { MM_PER_M, MPS_PER_KMH, RADPS_PER_RPM } from "../../shared/units.ts";

/** Which gears are used and how fast the highest of them goes, and what the gearbox gets. */
export function gearFacts(job: Job, units: UnitHabit): readonly (readonly [string, string | undefined])[] {
  const { gears, finalDrive_ratio, shifting, limits } = job.driveline;
  const used = shifting.kind === "fixed" ? [shifting.gear] : shifting.gears;
  const ratios = gears.filter(({ name }) => used.includes(name)).map(({ gear_ratio }) => gear_ratio);
  const overall_ratio = Math.min(...ratios) * transferBox_ratio(job.driveline) * finalDrive_ratio;
  const radius_m = job.vehicle.tyres.loadedRadius_mm / MM_PER_M;
  const top_kmh = (job.motor.maxSpeed_rpm * RADPS_PER_RPM * radius_m) / overall_ratio / MPS_PER_KMH;
  const torque = (torque_Nm: number) => writeQuantity("torque", torque_Nm, units);
  const cap_Nm = job.controller.torqueCap_Nm;
  const box =
    cap_Nm === undefined
      ? limits.gearboxInput_Nm && `input limit ${torque(limits.gearboxInput_Nm)}; no torque cap is set`
      : `motor held to ${torque(cap_Nm)}${limits.gearboxInput_Nm === undefined ? "" : `; input limit ${torque(limits.gearboxInput_Nm)}`}`;
  return [
    ["Gear, speed", `${used.join(" and ")}; the motor turns no faster at ${writeQuantity("speed", top_kmh, units, 2)}`],
    ["Gearbox", box || undefined],
  ];
}
