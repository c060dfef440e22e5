import type { Job } from "../../../shared/job/job.ts";
import { type Envelope, envelopeTorque_Nm } from "../../motor/envelope.ts";

/**
 * Current in a motor's phase (or armature) for a torque, in amperes, from the one at its peak torque. Assumed laws, each exact for the
 * ideal machine of its kind: torque goes with current where magnets make the field, with its square where the current makes it in
 * series [LarminieLowry2012, ch. 7]; an alternating-current machine takes its full current along its envelope, so that a torque takes the
 * share of that which it is of what the envelope gives at this speed and voltage: field weakening is then in it. Nothing at no torque.
 */
export function motorCurrent_A(
  kind: Job["motor"]["kind"],
  envelope: Envelope,
  full_A: number,
  torque_Nm: number,
  speed_radps: number,
  dc_V: number,
): number {
  const size_Nm = Math.abs(torque_Nm);
  if (size_Nm === 0) return 0;
  if (kind === "seriesBrushed") return full_A * Math.sqrt(Math.min(1, size_Nm / envelope.peakTorque_Nm));
  const most_Nm = kind === "magnetBrushed" ? envelope.peakTorque_Nm : envelopeTorque_Nm(envelope, speed_radps, dc_V);
  return full_A * Math.min(1, most_Nm > 0 ? size_Nm / most_Nm : 1);
}
