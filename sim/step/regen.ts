import { narrowBracket } from "../math/bracketedRoot.ts";
import { share } from "../math/share.ts";
import { envelopeTorque_Nm } from "../motor/envelope.ts";
import type { ControllerModel } from "../motor/motorModel.ts";
import { wheelForce_N } from "../vehicle/gear.ts";
import { torquePerWatt } from "./driveLimits.ts";
import type { RunContext } from "./runContext.ts";
import { solveElectrical, solveWithLoss } from "./solveElectrical.ts";

/** Torque to which a limit that depends on voltage is searched, well below what any instrument shows. */
const TORQUE_TOLERANCE_Nm = 1e-10;
/** Pieces of the asked torque in which the first limit is looked for. */
const PIECES = 16;

/**
 * Shares a braking interval out: drag first, then the motor up to what it may, then the friction brakes; writes it into the interval.
 *
 * The motor may what the driver's regen limit, the controller, the old driveline, the tyres' grip, its own envelope and the pack let it,
 * the first three and the envelope faded to nothing below a low speed. Where all of that leaves more to the pack than it gives beside
 * the accessories, the controller is off: no torque, no loss.
 */
export function brakeByMotor(context: RunContext, wanted_Nm: number): void {
  const { model, start, interval } = context;
  const gear = model.gears[start.gear];
  // What the gearbox takes beside the motor: on the overrun both help to slow the car.
  const beside_Nm = model.noLoadDrag_Nm + interval.rotor_Nm;
  let motor_Nm = Math.min(0, Math.max(wanted_Nm, -askedOfMotor_Nm(context), -passedBack_Nm(context, beside_Nm)));

  const over_Nm = regenExcess_Nm(context, motor_Nm);
  if (over_Nm > 0 && motor_Nm < 0) {
    motor_Nm = firstLimitMet_Nm(context, motor_Nm, over_Nm);
    if (interval.motor_Nm !== motor_Nm) solveElectrical(context, motor_Nm);
  }
  if (interval.terminal_W > start.pack.discharge_W) {
    motor_Nm = 0;
    solveWithLoss(context, 0, 0);
  }
  if (motor_Nm === wanted_Nm) {
    interval.driveline_N = interval.wheel_N;
    interval.brake_N = 0;
  } else {
    interval.driveline_N = wheelForce_N(gear, motor_Nm - beside_Nm);
    interval.brake_N = interval.wheel_N - interval.driveline_N;
  }
}

/**
 * The torque at which braking, built up from nothing, meets its first limit, where the torque that is asked breaks one.
 *
 * There may be several torques at which a limit is just met: a motor that brakes beyond the torque of its greatest output burns more in
 * its windings than the shaft brings, so that less comes back to the pack and its limit holds once more. A controller that raises the
 * torque until the pack takes no more never gets there, and neither does this: the one nearest to nothing is right. What lies before
 * the asked torque is looked at in pieces; a limit that is broken on less than a piece of it is not seen.
 */
function firstLimitMet_Nm(context: RunContext, asked_Nm: number, over_Nm: number): number {
  const { torqueBracket } = context.scratch;
  let lowOver_Nm = regenExcess_Nm(context, 0);
  torqueBracket.low = 0;
  for (let piece = 1; piece <= PIECES; piece++) {
    const torque_Nm = (asked_Nm * piece) / PIECES;
    const pieceOver_Nm = piece < PIECES ? regenExcess_Nm(context, torque_Nm) : over_Nm;
    if (pieceOver_Nm > 0) {
      torqueBracket.high = torque_Nm;
      narrowBracket(regenExcess_Nm, context, torqueBracket, lowOver_Nm, pieceOver_Nm, TORQUE_TOLERANCE_Nm);
      return torqueBracket.low;
    }
    torqueBracket.low = torque_Nm;
    lowOver_Nm = pieceOver_Nm;
  }
  throw new Error(`no limit of braking is met up to ${asked_Nm} Nm, which breaks one by ${over_Nm} Nm`);
}

/** Most torque that driver, controller and motor would brake with at this speed, in Nm, not negative. */
function askedOfMotor_Nm({ model, start, interval }: RunContext): number {
  const { controller, motor } = model;
  const gear = model.gears[start.gear];
  const most_Nm = Math.min(gear.regen_Nm, controller.regen_Nm, controller.torque_Nm, motor.envelope.peakTorque_Nm);
  return most_Nm * fade_frac(controller, interval.mean_mps);
}

/** Most torque that old driveline and tyres pass back to the motor, in Nm. */
function passedBack_Nm({ model, start, interval }: RunContext, beside_Nm: number): number {
  const gear = model.gears[start.gear];
  return Math.min(
    gear.overrun_Nm - interval.rotor_Nm,
    (interval.grip_N * gear.efficiency_frac) / gear.motor_radpm - beside_Nm,
  );
}

/** Share of braking by the motor that is left at a low speed. */
function fade_frac(controller: ControllerModel, mean_mps: number): number {
  return share(mean_mps, controller.fadeNone_mps, controller.fadeFull_mps);
}

/** Share of braking that the controller lets through at a voltage: none at its highest. */
function taken_frac({ max_V, rollBackAbove_V }: ControllerModel, terminal_V: number): number {
  return 1 - share(terminal_V, rollBackAbove_V, max_V);
}

/**
 * By how much braking with a torque (not above zero) breaks the limits that depend on voltage and power, in Nm. Solves the interval
 * electrically.
 */
function regenExcess_Nm(context: RunContext, motor_Nm: number): number {
  const { model, start, interval } = context;
  const { motor, controller } = model;
  solveElectrical(context, motor_Nm);
  const { terminal_V, controller_W, motor_radps } = interval;
  const faded_frac = fade_frac(controller, interval.mean_mps);
  const each_Nm = torquePerWatt(motor_radps);
  const envelope_Nm = envelopeTorque_Nm(motor.envelope, motor_radps, terminal_V) * start.motorDerate_frac;
  return Math.max(
    -motor_Nm - faded_frac * envelope_Nm,
    -motor_Nm - taken_frac(controller, terminal_V) * Math.min(controller.torque_Nm, motor.envelope.peakTorque_Nm),
    (-controller_W - faded_frac * controller.regen_W) * each_Nm,
    (-controller_W - faded_frac * controller.regen_A * terminal_V) * each_Nm,
    (start.pack.charge_W - interval.terminal_W) * each_Nm,
  );
}
