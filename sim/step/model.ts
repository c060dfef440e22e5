import type { PackModel } from "../battery/packModel.ts";
import type { ControllerModel, MotorModel } from "../motor/motorModel.ts";
import type { Cabin } from "../vehicle/cabin.ts";
import type { Gear } from "../vehicle/gear.ts";
import type { Grip } from "../vehicle/grip.ts";
import { type RoadLoad, roadWith } from "../vehicle/roadLoad.ts";

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
  /** What draws on the pack's terminals at all times while driving; a heater with a thermostat comes on top. */
  readonly accessories_W: number;
  readonly cabin: Cabin | undefined;
  readonly ambient_K: number;
  readonly packStart_K: number;
  /** The wind that is against the car on the way out is with it on the way home. */
  readonly hasWindHome: boolean;
}

/**
 * The same car with other parts. Written out and not spread, as are the parts' own, so that all cars are of one shape: the step is then
 * compiled once, and not anew for each car that was made from another.
 */
export function modelWith(model: Model, parts: Partial<Model>): Model {
  return {
    testMass_kg: parts.testMass_kg ?? model.testMass_kg,
    road: parts.road ?? model.road,
    inertia_kg: parts.inertia_kg ?? model.inertia_kg,
    noLoadDrag_Nm: parts.noLoadDrag_Nm ?? model.noLoadDrag_Nm,
    gears: parts.gears ?? model.gears,
    gearUp_mps: parts.gearUp_mps ?? model.gearUp_mps,
    grip: parts.grip ?? model.grip,
    motor: parts.motor ?? model.motor,
    controller: parts.controller ?? model.controller,
    pack: parts.pack ?? model.pack,
    accessories_W: parts.accessories_W ?? model.accessories_W,
    cabin: parts.cabin ?? model.cabin,
    ambient_K: parts.ambient_K ?? model.ambient_K,
    packStart_K: parts.packStart_K ?? model.packStart_K,
    hasWindHome: parts.hasWindHome ?? model.hasWindHome,
  };
}

/** The same car on its way home: the wind that was against it is with it. */
export function homeward(model: Model): Model {
  const { road } = model;
  return modelWith(model, { road: roadWith(road, { headWind_mps: -road.headWind_mps }) });
}
