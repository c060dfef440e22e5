import type { Job } from "./job.ts";

/** The most torque a motor gives at any speed, at its shaft. */
export function peakTorque_Nm(envelope: Job["motor"]["envelope"]): number {
  return envelope.kind === "peak" ? envelope.torque_Nm : Math.max(...envelope.torque_Nm);
}
