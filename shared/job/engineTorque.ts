import { engineRatings } from "./engineRatings.ts";
import type { Job } from "./job.ts";

/**
 * The most torque that the old engine gave, in Nm: its rated torque as typed, else the best of its curve as typed. Undefined where
 * neither is; nothing that is assumed of an engine is good enough to set a gearbox by.
 */
export function engineTorque_Nm({ engine }: Pick<Job, "engine">): number | undefined {
  return engine?.ratedTorque_Nm ?? (engine?.curve && engineRatings(engine.curve).ratedTorque_Nm);
}
