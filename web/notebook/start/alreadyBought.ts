import type { Job } from "../../../shared/job/job.ts";
import { isCellsOpen, isMotorOpen, withoutStart } from "./ownCar.ts";

/** What the client or the workshop has on the shelf, and the answer has to live with. */
export type Bought = "none" | "motor" | "cells" | "both";

export const boughtWords: Readonly<Record<Bought, string>> = {
  none: "Nothing yet",
  motor: "A motor",
  cells: "Battery modules",
  both: "A motor and battery modules",
};

/** What of a job is no longer what it began with. */
export function boughtOf(job: Job): Bought {
  const hasMotor = !isMotorOpen(job);
  const hasCells = !isCellsOpen(job);
  if (hasMotor) return hasCells ? "both" : "motor";
  return hasCells ? "cells" : "none";
}

/** The job with a motor or modules that stay, whatever the car weighs; their figures are then typed over from their plates. */
export function withBought(job: Job, key: string): Job {
  return withoutStart(job, key === "motor" || key === "both", key === "cells" || key === "both");
}

/** The figures of what is bought that stand on its plate and move the answer. */
export function boughtPaths(job: Job, bought: Bought): string[] {
  const { envelope } = job.motor;
  const power = envelope.kind === "peak" ? ["motor.envelope.torque_Nm", "motor.envelope.power_kW"] : [];
  const motor = [...power, "motor.maxSpeed_rpm", "motor.reference_V", "motor.mass_kg"];
  const cells = ["module.seriesCells", "module.capacity_Ah", "module.mass_kg"];
  const strings = job.packs.flatMap((_, i) => [`packs.${i}.seriesModules`, `packs.${i}.parallelModules`]);
  return [...(bought === "cells" ? [] : motor), ...(bought === "motor" ? [] : [...cells, ...strings.slice(0, 2)])];
}
