import { inputTorque_Nm } from "../vehicle/gear.ts";
import type { RunContext } from "./runContext.ts";

/**
 * Torque that the motor must give for what the road asks, in Nm; its speed and the torque that speeds its rotor up go into the interval.
 *
 *   T = gearbox input for F + no-load drag + J dω/dt
 */
export function motorDemand_Nm(context: RunContext): number {
  const { model, start, interval } = context;
  const gear = model.gears[start.gear];
  const { motor_radpm } = gear;
  const rotor_Nm = model.motor.rotorInertia_kgm2 * interval.accel_mps2 * motor_radpm;
  interval.motor_radps = interval.mean_mps * motor_radpm;
  interval.rotor_Nm = rotor_Nm;
  return inputTorque_Nm(gear, interval.wheel_N) + model.noLoadDrag_Nm + rotor_Nm;
}
