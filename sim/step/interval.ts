/** One interval of a run as it was driven, or as it is being tried: what `balance` works out for an end speed. Made once a run. */
export interface Interval {
  /** Time under way: shorter than the interval where the car stops inside it. */
  moving_s: number;
  end_mps: number;
  mean_mps: number;
  accel_mps2: number;
  distance_m: number;
  sinSlope: number;
  cosSlope: number;
  drag_N: number;
  rolling_N: number;
  climb_N: number;
  inertia_N: number;
  /** Most that the driven tyres pass to the road; infinite where it is not known where the weight sits. */
  grip_N: number;
  /** What the tyres pass to the road, brakes included; negative slows the car. */
  wheel_N: number;
  /** The part of it that comes through the driveline, and the part the friction brakes take (not above zero). */
  driveline_N: number;
  brake_N: number;
  motor_radps: number;
  /** Torque at the motor shaft that speeds the rotor up. */
  rotor_Nm: number;
  motor_Nm: number;
  loss_W: number;
  controller_W: number;
  terminal_W: number;
  current_A: number;
  /** What the current met on its way from the cells to the terminals. */
  resistance_ohm: number;
  terminal_V: number;
  /** Which limit holds the car back; index into LIMITS. */
  limit: number;
  /** How much of it was driven before the pack was empty: all of it but in the last one. Set by `finishInterval`. */
  driven_frac: number;
  driven_s: number;
  driven_m: number;
}

/** All nought until a step fills it. */
export function createInterval(): Interval {
  return {
    moving_s: 0,
    end_mps: 0,
    mean_mps: 0,
    accel_mps2: 0,
    distance_m: 0,
    sinSlope: 0,
    cosSlope: 1,
    drag_N: 0,
    rolling_N: 0,
    climb_N: 0,
    inertia_N: 0,
    grip_N: 0,
    wheel_N: 0,
    driveline_N: 0,
    brake_N: 0,
    motor_radps: 0,
    rotor_Nm: 0,
    motor_Nm: 0,
    loss_W: 0,
    controller_W: 0,
    terminal_W: 0,
    current_A: 0,
    resistance_ohm: 0,
    terminal_V: 0,
    limit: 0,
    driven_frac: 0,
    driven_s: 0,
    driven_m: 0,
  };
}
