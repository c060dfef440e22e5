import type { HeatLump } from "../math/heatLump.ts";
import type { UniformTable } from "../math/uniformTable.ts";
import type { Envelope } from "../motor/envelope.ts";
import type { Loss } from "../motor/loss.ts";
import type { Grip } from "../vehicle/grip.ts";
import type { RoadLoad } from "../vehicle/roadLoad.ts";

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

/** One lump of heat, cooled towards the air, and the two temperatures between which what it carries falls to nothing. */
export interface Heat extends HeatLump {
  readonly derateFrom_K: number;
  readonly derateTo_K: number;
}

export interface MotorModel {
  readonly envelope: Envelope;
  readonly loss: Loss;
  readonly rotorInertia_kgm2: number;
  readonly max_radps: number;
  readonly rollBack_radps: number;
  readonly heat: Heat;
}

export interface ControllerModel {
  readonly torque_Nm: number;
  readonly power_W: number;
  readonly current_A: number;
  readonly min_V: number;
  readonly max_V: number;
  readonly rollBackBelow_V: number;
  readonly rollBackAbove_V: number;
  readonly regen_Nm: number;
  readonly regen_W: number;
  readonly regen_A: number;
  readonly fadeNone_mps: number;
  readonly fadeFull_mps: number;
}

/** How much current may pass: for ever, and more for a while. */
export interface CurrentLimit {
  readonly continuous_A: number;
  readonly peak_A: number;
  /** How much (I² − continuous²)·t the peak may use up. */
  readonly budget_A2s: number;
}

export interface PackModel {
  readonly capacity_C: number;
  readonly openCircuit_V: UniformTable;
  /** Of the modules at 25 degC when discharging; leads apart. */
  readonly resistance_ohm: UniformTable;
  readonly resistance_ratio: UniformTable;
  readonly charging_ratio: number;
  readonly leads_ohm: number;
  readonly discharge: CurrentLimit;
  readonly charge: CurrentLimit;
  readonly coldChargeNone_K: number;
  readonly coldChargeFull_K: number;
  readonly min_V: number;
  readonly max_V: number;
  /** Charge that a charger leaves, where a drive begins. */
  readonly ceiling_frac: number;
  /** Charge above which braking may not charge the pack. */
  readonly regenTo_frac: number;
  readonly floor_frac: number;
  readonly heat: Heat;
}

/** Everything about one car with one pack on one day, in SI, ready for stepping. Never changes during a run. */
export interface Model {
  readonly road: RoadLoad;
  /** What resists a change of speed at the tyres: mass with wheels, or mass times one factor. */
  readonly inertia_kg: number;
  readonly noLoadDrag_Nm: number;
  readonly gears: readonly Gear[];
  /** Mean of a step's two speeds at which gear i + 1 follows gear i. */
  readonly gearUp_mps: Float64Array;
  readonly grip: Grip | undefined;
  readonly motor: MotorModel;
  readonly controller: ControllerModel;
  readonly pack: PackModel;
  readonly accessories_W: number;
  readonly ambient_K: number;
  readonly packStart_K: number;
}
