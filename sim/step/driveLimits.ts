import { share } from "../math/share.ts";
import { envelopeTorque_Nm } from "../motor/envelope.ts";
import { firstBroken } from "./limits.ts";
import type { RunContext } from "./runContext.ts";

/** Near rest any power is a huge torque: there it counts as at this speed. */
const SLOWEST_radps = 1;

/** Newton metres that a watt counts as at a motor speed: its reciprocal, guarded near rest. */
export function torquePerWatt(motor_radps: number): number {
  return 1 / Math.max(motor_radps, SLOWEST_radps);
}

/**
 * By how much a driving interval, solved electrically, breaks the worst of its limits, as motor torque in Nm; `interval.limit` names
 * the first that is broken. Powers count as torque at this speed.
 */
export function driveExcess_Nm(context: RunContext): number {
  const { model, start, interval } = context;
  const { motor, controller } = model;
  const gear = model.gears[start.gear];
  const { motor_Nm, motor_radps, terminal_V, terminal_W, controller_W } = interval;
  const each_Nm = torquePerWatt(motor_radps);
  // The top speed holds for the interval's end: taken at the mean, a car held there would zigzag around it.
  const rollBack_frac = share(motor.max_radps - interval.end_mps * gear.motor_radpm, 0, motor.rollBack_radps);
  const motorLimit_Nm = envelopeTorque_Nm(motor.envelope, motor_radps, terminal_V) * rollBack_frac;
  const let_frac = share(terminal_V, controller.min_V, controller.rollBackBelow_V) * context.ramp_frac;
  const controllerLimit_Nm = let_frac * Math.min(controller.torque_Nm, motor.envelope.peakTorque_Nm);

  const gripOver_Nm = (interval.wheel_N - interval.grip_N) / (gear.motor_radpm * gear.efficiency_frac);
  const drivelineOver_Nm = motor_Nm - interval.rotor_Nm - gear.drive_Nm;
  const motorOver_Nm = motor_Nm - motorLimit_Nm;
  const controllerOver_Nm = Math.max(
    motor_Nm - controllerLimit_Nm,
    (controller_W - controller.power_W) * each_Nm,
    (controller_W - controller.current_A * terminal_V) * each_Nm,
  );
  const packOver_Nm = (terminal_W - start.pack.coolDischarge_W) * each_Nm;
  const heatOver_Nm = Math.max(
    motor_Nm - motorLimit_Nm * start.motorDerate_frac,
    (terminal_W - start.pack.discharge_W) * each_Nm,
  );
  interval.limit = firstBroken(
    gripOver_Nm,
    drivelineOver_Nm,
    motorOver_Nm,
    controllerOver_Nm,
    packOver_Nm,
    heatOver_Nm,
  );
  return Math.max(gripOver_Nm, drivelineOver_Nm, motorOver_Nm, controllerOver_Nm, packOver_Nm, heatOver_Nm);
}
