import { envelopeTorque_Nm } from "../motor/envelope.ts";
import { gripForce_N } from "../vehicle/grip.ts";
import { drag_N, rolling_N } from "../vehicle/roadLoad.ts";
import { share } from "./beginInterval.ts";
import { elevationAt_m, slopeOver } from "./elevation.ts";
import type { Gear } from "./model.ts";
import { brakeByMotor } from "./regen.ts";
import { settle } from "./settle.ts";
import type { Work } from "./state.ts";

/**
 * Works the interval out as if the car ended it at `end_mps`, `moving_s` after its start, and writes all of it into `interval`.
 * Comes back with how far that breaks the limits, as a torque at the motor shaft in Nm: not above zero where the car can do it.
 *
 *   F = rolling + drag + m g sin θ + wheel-side drag + inertia · dv/dt, all at the mean speed       [GTR15, Annex 7, para 5]
 *   driving  T = F r / (G η) + drag torque + J dω/dt;   overrun  T = F η r / G + drag torque + J dω/dt
 *
 * Voltage under load is that of this same interval, so that one search for the end speed settles motor, controller and pack
 * together. Where the motor is asked to brake, regen takes what it may and the friction brakes the rest: nothing is broken then.
 */
export function balance(work: Work, end_mps: number, moving_s: number): number {
  const { model, profile, state, interval } = work;
  const { road } = model;
  const gear = model.gears[interval.gear];
  const mean_mps = 0.5 * (state.speed_mps + end_mps);
  const accel_mps2 = (end_mps - state.speed_mps) / moving_s;
  const distance_m = mean_mps * moving_s;
  let endElevation_m = 0;
  let sinSlope = 0;
  let cosSlope = 1;
  if (profile !== undefined) {
    endElevation_m = elevationAt_m(profile, state.distance_m + distance_m, state.stretch);
    const rise_m = endElevation_m - state.elevation_m;
    sinSlope = slopeOver(rise_m, distance_m, profile, state.stretch);
    cosSlope = Math.sqrt(1 - sinSlope * sinSlope);
  }
  const rolls_N = rolling_N(road, mean_mps, cosSlope);
  const drags_N = drag_N(road, mean_mps);
  const climb_N = road.weight_N * sinSlope;
  const inertia_N = model.inertia_kg * accel_mps2;
  const wheel_N = rolls_N + drags_N + climb_N + road.wheelDrag_N + inertia_N;

  const { motor_radpm, efficiency_frac } = gear;
  const rotor_Nm = model.motor.rotorInertia_kgm2 * accel_mps2 * motor_radpm;
  const input_Nm = wheel_N >= 0 ? wheel_N / (motor_radpm * efficiency_frac) : (wheel_N * efficiency_frac) / motor_radpm;
  const wanted_Nm = input_Nm + model.noLoadDrag_Nm + rotor_Nm;

  interval.moving_s = moving_s;
  interval.end_mps = end_mps;
  interval.mean_mps = mean_mps;
  interval.distance_m = distance_m;
  interval.endElevation_m = endElevation_m;
  interval.sinSlope = sinSlope;
  interval.rolling_N = rolls_N;
  interval.drag_N = drags_N;
  interval.climb_N = climb_N;
  interval.inertia_N = inertia_N;
  interval.wheel_N = wheel_N;
  interval.motor_radps = mean_mps * motor_radpm;
  interval.rotor_Nm = rotor_Nm;

  const grip_N = model.grip === undefined ? Infinity : gripForce_N(model.grip, accel_mps2, sinSlope, cosSlope);
  if (wanted_Nm < 0) return brakeByMotor(work, gear, wanted_Nm, grip_N);

  settle(model, interval, wanted_Nm);
  interval.driveline_N = wheel_N;
  interval.brake_N = 0;
  return driveExcess_Nm(work, gear, grip_N);
}

/**
 * By how much the settled interval breaks the worst of the driving limits, as motor torque in Nm; `interval.limit` names the first
 * that is broken, in the order that settles ties: grip, driveline, motor, controller, pack, heat.
 */
function driveExcess_Nm(work: Work, gear: Gear, grip_N: number): number {
  const { model, interval } = work;
  const { motor, controller } = model;
  const { motor_Nm, motor_radps, terminal_V, controller_W } = interval;
  // Powers count as torque at this speed; near rest, where any power is a huge torque, as at 1 rad/s.
  const perSpeed = 1 / Math.max(motor_radps, 1);
  const envelope_Nm = envelopeTorque_Nm(motor.envelope, motor_radps, terminal_V);
  // The top speed holds for the interval's end: taken at the mean, a car held there would zigzag around it.
  const rollBack_frac = share(motor.max_radps - interval.end_mps * gear.motor_radpm, 0, motor.rollBack_radps);
  const motorLimit_Nm = envelope_Nm * rollBack_frac;
  const sagged_frac = share(terminal_V, controller.min_V, controller.rollBackBelow_V);
  const let_frac = sagged_frac * work.ramp_frac;
  const controllerLimit_Nm =
    let_frac < 1 ? let_frac * Math.min(controller.torque_Nm, motor.envelope.peakTorque_Nm) : controller.torque_Nm;

  const grip_Nm = (interval.wheel_N - grip_N) / (gear.motor_radpm * gear.efficiency_frac);
  const driveline_Nm = motor_Nm - interval.rotor_Nm - gear.drive_Nm;
  const motorOver_Nm = motor_Nm - motorLimit_Nm;
  const controllerOver_Nm = Math.max(
    motor_Nm - controllerLimit_Nm,
    (controller_W - controller.power_W) * perSpeed,
    (controller_W - controller.current_A * terminal_V) * perSpeed,
  );
  const coolPack_Nm = (interval.terminal_W - interval.coolDischarge_W) * perSpeed;
  const heat_Nm = Math.max(
    interval.motorDerate_frac < 1 ? motor_Nm - motorLimit_Nm * interval.motorDerate_frac : -Infinity,
    (interval.terminal_W - interval.discharge_W) * perSpeed,
  );

  interval.limit =
    grip_Nm > 0
      ? 1
      : driveline_Nm > 0
        ? 2
        : motorOver_Nm > 0
          ? 3
          : controllerOver_Nm > 0
            ? 4
            : coolPack_Nm > 0
              ? 5
              : heat_Nm > 0
                ? 6
                : 0;
  return Math.max(grip_Nm, driveline_Nm, motorOver_Nm, controllerOver_Nm, coolPack_Nm, heat_Nm);
}
