import { gripForce_N } from "../vehicle/grip.ts";
import { driveExcess_Nm } from "./driveLimits.ts";
import { motorDemand_Nm } from "./motorDemand.ts";
import { brakeByMotor } from "./regen.ts";
import { setRoadDemand } from "./roadDemand.ts";
import type { RunContext } from "./runContext.ts";
import { solveElectrical } from "./solveElectrical.ts";

/**
 * Works the interval out as if the car ended it at `end_mps`, `moving_s` after its start, and writes all of it into `interval`: what
 * the road asks, what the motor must give for it, what that asks of controller and pack. Returns by how much that breaks the worst
 * limit, as a torque at the motor shaft in Nm: not above zero where the car can do it.
 *
 * Voltage under load is that of this same interval, so that one search for the end speed settles motor, controller and pack
 * together. Where the motor is asked to brake, regen takes what it may and the friction brakes the rest: nothing is broken then.
 */
export function balance(context: RunContext, end_mps: number, moving_s: number): number {
  const wanted_Nm = wantedOfMotor_Nm(context, end_mps, moving_s);
  if (wanted_Nm >= 0) return driveByMotor(context, wanted_Nm);
  brakeByMotor(context, wanted_Nm);
  return belowLimits_Nm(context, wanted_Nm);
}

/**
 * What `balance` returns, for a search among end speeds: how an interval that brakes is shared out is not worked out, which takes longer
 * than all the rest, and its end speed is then no number, so that it cannot pass for one that is.
 */
export function excess_Nm(context: RunContext, end_mps: number, moving_s: number): number {
  const wanted_Nm = wantedOfMotor_Nm(context, end_mps, moving_s);
  if (wanted_Nm >= 0) return driveByMotor(context, wanted_Nm);
  context.interval.end_mps = Number.NaN;
  return belowLimits_Nm(context, wanted_Nm);
}

/** Torque that the road and the rotor ask of the motor, below zero where it is to brake; writes what they ask, and the grip. */
function wantedOfMotor_Nm(context: RunContext, end_mps: number, moving_s: number): number {
  const { model, interval } = context;
  interval.end_mps = end_mps;
  interval.moving_s = moving_s;
  setRoadDemand(context);
  const wanted_Nm = motorDemand_Nm(context);
  interval.grip_N =
    model.grip === undefined
      ? Number.POSITIVE_INFINITY
      : gripForce_N(model.grip, interval.accel_mps2, interval.sinSlope, interval.cosSlope);
  return wanted_Nm;
}

function driveByMotor(context: RunContext, wanted_Nm: number): number {
  const { interval } = context;
  solveElectrical(context, wanted_Nm);
  interval.driveline_N = interval.wheel_N;
  interval.brake_N = 0;
  return driveExcess_Nm(context);
}

/** A car can always be braked: a number below zero that falls with the torque, so that a search finds its way. */
function belowLimits_Nm({ model }: RunContext, wanted_Nm: number): number {
  return wanted_Nm - model.motor.envelope.peakTorque_Nm;
}
