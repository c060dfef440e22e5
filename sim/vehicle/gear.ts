/** One gear with everything between motor shaft and road that depends on it. */
export interface Gear {
  readonly name: string;
  /** Motor speed over road speed: overall ratio over rolling radius. */
  readonly motor_radpm: number;
  /** Torque efficiency from gearbox input to tyre. */
  readonly efficiency_frac: number;
  /** What the weakest old part lets in at the gearbox input, driving and on the overrun: motor torque less the rotor's inertia. */
  readonly drive_Nm: number;
  readonly overrun_Nm: number;
  /** Motor torque that gives the greatest braking force asked of it at the tyres. */
  readonly regen_Nm: number;
  /** Road speed at the motor's top speed. */
  readonly top_mps: number;
}

/** The same gear with other parts, in the same shape. */
export function gearWith(gear: Gear, parts: Partial<Gear>): Gear {
  return {
    name: parts.name ?? gear.name,
    motor_radpm: parts.motor_radpm ?? gear.motor_radpm,
    efficiency_frac: parts.efficiency_frac ?? gear.efficiency_frac,
    drive_Nm: parts.drive_Nm ?? gear.drive_Nm,
    overrun_Nm: parts.overrun_Nm ?? gear.overrun_Nm,
    regen_Nm: parts.regen_Nm ?? gear.regen_Nm,
    top_mps: parts.top_mps ?? gear.top_mps,
  };
}

/**
 * Torque at the gearbox input, its no-load drag apart, for a force at the tyres, in Nm; the efficiency divides when driving and
 * multiplies on the overrun.
 *
 *   T = F r / (G η)  driving,  T = F η r / G  on the overrun      [GTR15, Annex 7]; efficiency by sense common practice, no source
 */
export function inputTorque_Nm(gear: Gear, wheel_N: number): number {
  const { motor_radpm, efficiency_frac } = gear;
  return wheel_N >= 0 ? wheel_N / (motor_radpm * efficiency_frac) : (wheel_N * efficiency_frac) / motor_radpm;
}

/** Force at the tyres for a torque at the gearbox input, its no-load drag apart: the other way round. */
export function wheelForce_N(gear: Gear, input_Nm: number): number {
  const { motor_radpm, efficiency_frac } = gear;
  return input_Nm >= 0 ? input_Nm * motor_radpm * efficiency_frac : (input_Nm * motor_radpm) / efficiency_frac;
}

/** Force lost between gearbox input and tyre, at the tyre, not negative: driving the tyre gets less, on the overrun the input does. */
export function meshLoss_N(gear: Gear, wheel_N: number): number {
  const { efficiency_frac } = gear;
  return wheel_N >= 0 ? wheel_N * (1 / efficiency_frac - 1) : -wheel_N * (1 - efficiency_frac);
}
