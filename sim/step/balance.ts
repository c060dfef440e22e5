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
  const { model, interval } = context;
  interval.end_mps = end_mps;
  interval.moving_s = moving_s;
  setRoadDemand(context);
  const wanted_Nm = motorDemand_Nm(context);
  interval.grip_N =
    model.grip === undefined
      ? Number.POSITIVE_INFINITY
      : gripForce_N(model.grip, interval.accel_mps2, interval.sinSlope, interval.cosSlope);
  if (wanted_Nm < 0) return brakeByMotor(context, wanted_Nm);

  solveElectrical(context, wanted_Nm);
  interval.driveline_N = interval.wheel_N;
  interval.brake_N = 0;
  return driveExcess_Nm(context);
}
