import type { PackModel } from "../battery/packModel.ts";
import type { LimitedHeat } from "../math/heatLump.ts";
import type { Envelope } from "../motor/envelope.ts";
import type { Loss } from "../motor/loss.ts";
import type { Gear } from "../vehicle/gear.ts";
import type { Grip } from "../vehicle/grip.ts";
import type { RoadLoad } from "../vehicle/roadLoad.ts";

export interface MotorModel {
  readonly envelope: Envelope;
  readonly loss: Loss;
  readonly rotorInertia_kgm2: number;
  readonly max_radps: number;
  readonly rollBack_radps: number;
  readonly heat: LimitedHeat;
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
