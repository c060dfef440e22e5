import { type Axis, createAxis, intervalOf } from "../math/axis.ts";

/** Peak torque against speed at a reference voltage: by peak torque and power, or by points. */
export interface Envelope {
  readonly reference_V: number;
  readonly peakTorque_Nm: number;
  readonly peakPower_W: number;
  /** Set where the envelope is given by points. */
  readonly points: { readonly speed_radps: Axis; readonly torque_Nm: Float64Array } | undefined;
}

/** An envelope of constant torque up to the peak power and constant power above it. */
export function peakEnvelope(reference_V: number, peakTorque_Nm: number, peakPower_W: number): Envelope {
  return { reference_V, peakTorque_Nm, peakPower_W, points: undefined };
}

/** An envelope through points, straight lines between; constant power beyond the last, constant torque before the first. */
export function pointEnvelope(
  reference_V: number,
  speed_radps: readonly number[],
  torque_Nm: readonly number[],
): Envelope {
  const last = speed_radps.length - 1;
  return {
    reference_V,
    peakTorque_Nm: Math.max(...torque_Nm),
    peakPower_W: speed_radps[last] * torque_Nm[last],
    points: { speed_radps: createAxis(speed_radps), torque_Nm: Float64Array.from(torque_Nm) },
  };
}

/**
 * Most torque at a speed and a DC voltage under load, in Nm, not negative.
 *
 *   T(w, U) = T_ref(w · U_ref / U)
 *
 * Back-EMF and the voltage to overcome it both go with speed, so the speed axis scales with voltage: peak torque stays, base
 * speed and the power above it move (common practice, no source). No torque at no voltage.
 */
export function envelopeTorque_Nm(envelope: Envelope, speed_radps: number, dc_V: number): number {
  if (!(dc_V > 0)) return 0;
  const reference_radps = (speed_radps * envelope.reference_V) / dc_V;
  const { points } = envelope;
  if (points === undefined) {
    return envelope.peakTorque_Nm * reference_radps <= envelope.peakPower_W
      ? envelope.peakTorque_Nm
      : envelope.peakPower_W / reference_radps;
  }
  const { nodes } = points.speed_radps;
  if (reference_radps > nodes[nodes.length - 1]) return envelope.peakPower_W / reference_radps;
  if (reference_radps < nodes[0]) return points.torque_Nm[0];
  const i = intervalOf(points.speed_radps, reference_radps);
  const share = (reference_radps - nodes[i]) / (nodes[i + 1] - nodes[i]);
  return points.torque_Nm[i] + share * (points.torque_Nm[i + 1] - points.torque_Nm[i]);
}
