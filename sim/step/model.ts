import type { PackModel } from "../battery/packModel.ts";
import type { ControllerModel, MotorModel } from "../motor/motorModel.ts";
import type { Cabin } from "../vehicle/cabin.ts";
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
  /** What draws on the pack's terminals at all times while driving; a heater with a thermostat comes on top. */
  readonly accessories_W: number;
  readonly cabin: Cabin | undefined;
  readonly ambient_K: number;
  readonly packStart_K: number;
  /** The wind that is against the car on the way out is with it on the way home. */
  readonly hasWindHome: boolean;
}

/**
 * The same car on its way home: the wind that was against it is with it. Written out and not spread, so that both ways are of one
 * shape and the step stays as fast as for one of them.
 */
export function homeward(model: Model): Model {
  const { road } = model;
  return {
    testMass_kg: model.testMass_kg,
    road: {
      mass_kg: road.mass_kg,
      weight_N: road.weight_N,
      rollingWeight_N: road.rollingWeight_N,
      rollingWeight_Npmps2: road.rollingWeight_Npmps2,
      rollingFixed_N: road.rollingFixed_N,
      rolling_Npmps: road.rolling_Npmps,
      drag_Npmps2: road.drag_Npmps2,
      headWind_mps: -road.headWind_mps,
      wheelDrag_N: road.wheelDrag_N,
    },
    inertia_kg: model.inertia_kg,
    noLoadDrag_Nm: model.noLoadDrag_Nm,
    gears: model.gears,
    gearUp_mps: model.gearUp_mps,
    grip: model.grip,
    motor: model.motor,
    controller: model.controller,
    pack: model.pack,
    accessories_W: model.accessories_W,
    cabin: model.cabin,
    ambient_K: model.ambient_K,
    packStart_K: model.packStart_K,
    hasWindHome: model.hasWindHome,
  };
}
