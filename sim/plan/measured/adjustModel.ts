import type { Loss } from "../../motor/loss.ts";
import { controllerWith, motorWith } from "../../motor/motorModel.ts";
import { type Model, modelWith } from "../../step/model.ts";
import { type Gear, gearWith } from "../../vehicle/gear.ts";
import { roadWith } from "../../vehicle/roadLoad.ts";

/** By how much a car is taken to differ from what the job says; 1 and 0 where it does not. */
export interface Change {
  /** Of everything that resists rolling, brakes that drag among it. */
  readonly rolling_ratio: number;
  /** Of air drag. */
  readonly drag_ratio: number;
  /** Added to what the accessories draw at the pack. */
  readonly accessories_W: number;
  /** Of every limit on braking by the motor. */
  readonly regen_ratio: number;
  /** Of the losses of motor and controller. */
  readonly motorLoss_ratio: number;
  /** Of what gearbox and axles lose: 1 - efficiency. */
  readonly meshLoss_ratio: number;
  readonly mass_ratio: number;
}

export const noChange: Change = {
  rolling_ratio: 1,
  drag_ratio: 1,
  accessories_W: 0,
  regen_ratio: 1,
  motorLoss_ratio: 1,
  meshLoss_ratio: 1,
  mass_ratio: 1,
};

/** The same car with a change, in SI and ready for stepping. */
export function adjustModel(model: Model, change: Change): Model {
  const { road, motor, controller } = model;
  const weight_ratio = change.mass_ratio;
  const rolling_ratio = change.rolling_ratio;
  return modelWith(model, {
    testMass_kg: model.testMass_kg * weight_ratio,
    inertia_kg: model.inertia_kg * weight_ratio,
    road: roadWith(road, {
      mass_kg: road.mass_kg * weight_ratio,
      weight_N: road.weight_N * weight_ratio,
      rollingWeight_N: road.rollingWeight_N * weight_ratio * rolling_ratio,
      rollingWeight_Npmps2: road.rollingWeight_Npmps2 * weight_ratio * rolling_ratio,
      rollingFixed_N: road.rollingFixed_N * weight_ratio * rolling_ratio,
      rolling_Npmps: road.rolling_Npmps * rolling_ratio,
      drag_Npmps2: road.drag_Npmps2 * change.drag_ratio,
    }),
    gears: model.gears.map((gear) => adjustedGear(gear, change)),
    motor: motorWith(motor, { loss: adjustedLoss(motor.loss, change.motorLoss_ratio) }),
    controller: controllerWith(controller, {
      regen_Nm: controller.regen_Nm * change.regen_ratio,
      regen_W: controller.regen_W * change.regen_ratio,
      regen_A: controller.regen_A * change.regen_ratio,
    }),
    accessories_W: Math.max(0, model.accessories_W + change.accessories_W),
  });
}

function adjustedGear(gear: Gear, { meshLoss_ratio, regen_ratio }: Change): Gear {
  return gearWith(gear, {
    efficiency_frac: 1 - meshLoss_ratio * (1 - gear.efficiency_frac),
    regen_Nm: gear.regen_Nm * regen_ratio,
  });
}

function adjustedLoss(loss: Loss, ratio: number): Loss {
  switch (loss.form) {
    case "fourTerm":
      return {
        form: "fourTerm",
        law: {
          copper_coeff: ratio * loss.law.copper_coeff,
          iron_coeff: ratio * loss.law.iron_coeff,
          windage_coeff: ratio * loss.law.windage_coeff,
          constant_W: ratio * loss.law.constant_W,
        },
      };
    case "table":
      return {
        ...loss,
        table: { ...loss.table, coefficients: loss.table.coefficients.map((value) => ratio * value) },
      };
    case "flat":
      return { form: "flat", efficiency_frac: 1 / (1 + ratio * (1 / loss.efficiency_frac - 1)) };
  }
}
