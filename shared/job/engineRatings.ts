import { RADPS_PER_RPM, W_PER_KW } from "../units.ts";

/** Full-throttle torque of an engine against its speed. */
export interface TorqueCurve {
  readonly speed_rpm: readonly number[];
  readonly torque_Nm: readonly number[];
}

/** Where an engine's torque and its power are best, and how much they are there. */
export interface EngineRatings {
  readonly ratedTorque_Nm: number;
  readonly torque_rpm: number;
  readonly ratedPower_kW: number;
  readonly power_rpm: number;
}

/** The best torque and the best power of a curve, each at the lowest of its speeds that has it; P = T ω. */
export function engineRatings({ speed_rpm, torque_Nm }: TorqueCurve): EngineRatings {
  const power_kW = speed_rpm.map((speed, i) => ((torque_Nm[i] ?? 0) * speed * RADPS_PER_RPM) / W_PER_KW);
  const ratedTorque_Nm = Math.max(...torque_Nm);
  const ratedPower_kW = Math.max(...power_kW);
  return {
    ratedTorque_Nm,
    torque_rpm: speed_rpm[torque_Nm.indexOf(ratedTorque_Nm)] ?? 0,
    ratedPower_kW,
    power_rpm: speed_rpm[power_kW.indexOf(ratedPower_kW)] ?? 0,
  };
}
