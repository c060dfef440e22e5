/**
 * What a recorded run keeps: one column a quantity, one row a sample of the trace.
 *
 * Row 0 is the start. In row i time, distance, speeds, height, charge and temperatures are those at its end; forces, torques, motor
 * speed, volts, amperes and powers are all means over the same time: from row i - 1 to row i, as far as that was driven, a rest after
 * a stop included. A product of two means is not the mean of the product: battery power is `battery_W`, not volts times amperes.
 */
export interface Channels {
  /** Rows filled: fewer than the columns are long where the pass met the floor. */
  length: number;
  readonly time_s: Float64Array;
  readonly distance_m: Float64Array;
  readonly target_mps: Float64Array;
  readonly speed_mps: Float64Array;
  readonly grade_ratio: Float64Array;
  readonly elevation_m: Float64Array;
  readonly wheelForce_N: Float64Array;
  readonly brakeForce_N: Float64Array;
  readonly gear: Uint8Array;
  readonly motorSpeed_radps: Float64Array;
  readonly motorTorque_Nm: Float64Array;
  readonly motorLoss_W: Float64Array;
  readonly controller_W: Float64Array;
  readonly battery_A: Float64Array;
  readonly battery_V: Float64Array;
  readonly battery_W: Float64Array;
  readonly soc_frac: Float64Array;
  readonly motor_K: Float64Array;
  readonly pack_K: Float64Array;
  /** What last held the car back in this row: an index into `LIMITS`, 0 for nothing. */
  readonly limit: Uint8Array;
}

/** Empty columns for a trace of `rows` samples. */
export function createChannels(rows: number): Channels {
  return {
    length: 0,
    time_s: new Float64Array(rows),
    distance_m: new Float64Array(rows),
    target_mps: new Float64Array(rows),
    speed_mps: new Float64Array(rows),
    grade_ratio: new Float64Array(rows),
    elevation_m: new Float64Array(rows),
    wheelForce_N: new Float64Array(rows),
    brakeForce_N: new Float64Array(rows),
    gear: new Uint8Array(rows),
    motorSpeed_radps: new Float64Array(rows),
    motorTorque_Nm: new Float64Array(rows),
    motorLoss_W: new Float64Array(rows),
    controller_W: new Float64Array(rows),
    battery_A: new Float64Array(rows),
    battery_V: new Float64Array(rows),
    battery_W: new Float64Array(rows),
    soc_frac: new Float64Array(rows),
    motor_K: new Float64Array(rows),
    pack_K: new Float64Array(rows),
    limit: new Uint8Array(rows),
  };
}
