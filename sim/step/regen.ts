import { narrowBracket } from "../math/bracketedRoot.ts";
import { envelopeTorque_Nm } from "../motor/envelope.ts";
import { share } from "./beginInterval.ts";
import type { Gear } from "./model.ts";
import { draw, settle } from "./settle.ts";
import type { Work } from "./state.ts";

/** Torque to which a limit that depends on voltage is searched, well below what any instrument shows. */
const TORQUE_TOLERANCE_Nm = 1e-10;

/**
 * Shares a braking interval out: drag first, then the motor up to what it may, then the friction brakes; writes it into the interval.
 *
 * The motor may what the driver's regen limit, the controller, the old driveline, the tyres' grip, its own envelope and the pack let it,
 * the first three and the envelope faded to nothing below a low speed. Where all of that leaves more to the pack than it gives beside
 * the accessories, the controller is off: no torque, no loss. Comes back below zero: a car can always be braked.
 */
export function brakeByMotor(work: Work, gear: Gear, wanted_Nm: number, grip_N: number): number {
  const { model, interval } = work;
  const { controller } = model;
  // What the gearbox takes beside the motor: on the overrun both help to slow the car.
  const beside_Nm = model.noLoadDrag_Nm + interval.rotor_Nm;
  const asked_Nm =
    Math.min(gear.regen_Nm, controller.regen_Nm, controller.torque_Nm, model.motor.envelope.peakTorque_Nm) *
    share(interval.mean_mps, controller.fadeNone_mps, controller.fadeFull_mps);
  const passed_Nm = Math.min(
    gear.overrun_Nm - interval.rotor_Nm,
    (grip_N * gear.efficiency_frac) / gear.motor_radpm - beside_Nm,
  );
  let motor_Nm = Math.min(0, Math.max(wanted_Nm, -asked_Nm, -passed_Nm));

  const over_Nm = regenExcess_Nm(work, motor_Nm);
  if (over_Nm > 0 && motor_Nm < 0) {
    const { torqueBracket } = work;
    torqueBracket.low = 0;
    torqueBracket.high = motor_Nm;
    narrowBracket(regenExcess_Nm, work, torqueBracket, regenExcess_Nm(work, 0), over_Nm, TORQUE_TOLERANCE_Nm);
    motor_Nm = torqueBracket.low;
    settle(model, interval, motor_Nm);
  }

  if (interval.terminal_W > interval.discharge_W) {
    motor_Nm = 0;
    draw(interval, 0, 0);
  }

  const input_Nm = motor_Nm - beside_Nm;
  const { motor_radpm, efficiency_frac } = gear;
  interval.limit = 0;
  if (motor_Nm === wanted_Nm) {
    interval.driveline_N = interval.wheel_N;
    interval.brake_N = 0;
  } else {
    interval.driveline_N =
      input_Nm >= 0 ? input_Nm * motor_radpm * efficiency_frac : (input_Nm * motor_radpm) / efficiency_frac;
    interval.brake_N = interval.wheel_N - interval.driveline_N;
  }
  return wanted_Nm - model.motor.envelope.peakTorque_Nm;
}

/** By how much braking with a torque (not above zero) breaks the limits that depend on voltage and power, in Nm. Settles the interval. */
function regenExcess_Nm(work: Work, motor_Nm: number): number {
  const { model, interval } = work;
  const { motor, controller } = model;
  settle(model, interval, motor_Nm);
  if (motor_Nm === 0) return -1;
  const { terminal_V, controller_W, motor_radps } = interval;
  const fade_frac = share(interval.mean_mps, controller.fadeNone_mps, controller.fadeFull_mps);
  const perSpeed = 1 / Math.max(motor_radps, 1);
  const room_frac =
    controller.max_V > controller.rollBackAbove_V
      ? 1 - share(terminal_V, controller.rollBackAbove_V, controller.max_V)
      : terminal_V <= controller.max_V
        ? 1
        : 0;
  const envelope_Nm = envelopeTorque_Nm(motor.envelope, motor_radps, terminal_V) * interval.motorDerate_frac;
  return Math.max(
    -motor_Nm - fade_frac * envelope_Nm,
    -motor_Nm - room_frac * Math.min(controller.torque_Nm, motor.envelope.peakTorque_Nm),
    (-controller_W - fade_frac * controller.regen_W) * perSpeed,
    (-controller_W - fade_frac * controller.regen_A * terminal_V) * perSpeed,
    (interval.charge_W - interval.terminal_W) * perSpeed,
  );
}
