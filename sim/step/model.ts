import type { PackModel } from "../battery/packModel.ts";
import type { ControllerModel, MotorModel } from "../motor/motorModel.ts";
import type { Gear } from "../vehicle/gear.ts";
import type { Grip } from "../vehicle/grip.ts";
import type { RoadLoad } from "../vehicle/roadLoad.ts";

/** Everything about one car with one pack on one day, in SI, ready for stepping. Never changes during a run. */
export interface Model {
  /** The car with its load and this pack, no trailer behind it. */
  readonly testMass_kg: number;
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
